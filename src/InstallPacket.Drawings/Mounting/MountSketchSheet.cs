using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting;

/// <summary>The mount from the side, to scale, with the forces of the check on it, and its fixings from the front.</summary>
public static class MountSketchSheet
{
    private const double WidthMm = 170;
    private const double HeightMm = 128;

    /// <summary>Draws it; null in the attic.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (plan.Mounting.Kind == MountKind.Attic) return null;
        var canvas = new SheetCanvas(measure);
        var view = MountView.Of(plan, new PaperBox(38, 14, 92, HeightMm - 12));
        canvas.Text(new(new(2, 5), plan.Say("from-side"), 3.8, Strong: true));
        if (plan.Mounting.Existing) canvas.Text(new(new(2, 9.3), plan.Say("mount.there-what"), 3.2));
        ScaleBar.Draw(canvas, new(34, 3.7), view.Side.MmPerMetre, 26, plan);
        new MountPainter(canvas, plan, view).Draw();
        SideNotes.Draw(canvas, MountNotes.Left(plan, view), new PaperBox(1, 12, 30, HeightMm - 8), rightOfView: false);
        SideNotes.Draw(canvas, MountNotes.Right(plan, view), new PaperBox(98, 10, 128, HeightMm - 8), rightOfView: true);
        new FixingPainter(canvas, plan).Draw(new PaperBox(132, 2, WidthMm - 1, HeightMm - 8));
        canvas.Text(new(new(2, HeightMm - 2), plan.Say("mount.note"), 3.2, Ink.Line));
        return new Drawing("mount-sketch", plan.Say("mount.title"), MountWords.Of(plan), WidthMm, HeightMm, canvas.Shapes);
    }
}
