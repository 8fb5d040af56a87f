using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The one plate of a mount from the front: its holes to scale among each other, the arm in its middle.</summary>
internal sealed class PlatePainter(SheetCanvas canvas, SheetPlan plan)
{
    private const double SizeMm = 3.2;
    private const double MostMm = 22;
    private const double RimMm = 4;

    /// <summary>Draws it and gives the lower end of its words.</summary>
    public double Draw(PaperBox box, double top, PlatePlan plate)
    {
        var scale = MostMm / Math.Max(plate.WidthM, plate.HeightM);
        var (width, height) = (plate.WidthM * scale, plate.HeightM * scale);
        var (left, upper) = (box.Left + 2 + RimMm, top + RimMm);
        canvas.Box(new(left - RimMm, top, left + width + RimMm, upper + height + RimMm), new(Ink.Line, 0.5), Fill.Tint);
        foreach (var (x, y) in Holes(plate)) canvas.Ring(new(left + x * width, upper + y * height), 1.2, new(Ink.Line, 0.5), Fill.Paper);
        if (plate.WidthM > 0) canvas.Ring(new(left + width / 2, upper + height / 2), 2.4, new(Ink.Line, 0.9), Fill.Solid);
        var at = upper + height + RimMm + 4.5;
        var words = plan.Say("mount.one-plate") + ": " + plan.Say("mount.plate-holes", ("assumed", plate.PatternAssumed),
            ("height", plan.Print.Small(plate.HeightM)), ("width", plate.WidthM > 0 ? plan.Print.Small(plate.WidthM) : ""));
        foreach (var line in TextWrap.Lines(words, SizeMm, false, box.Width, 4, canvas.Measure))
        {
            canvas.Text(new(new(box.Left, at), line, SizeMm));
            at += 4;
        }
        return at - 3;
    }

    // Outer holes first; more of them stand between the rows.
    private static IEnumerable<(double X, double Y)> Holes(PlatePlan plate)
    {
        var count = Math.Clamp(plate.Holes ?? plate.Fixings, 1, 12);
        var columns = plate.WidthM > 0 ? 2 : 1;
        var rows = Math.Max(1, (count + columns - 1) / columns);
        for (var i = 0; i < count; i++)
            yield return (columns == 2 ? i % 2 : 0, rows == 1 ? 0.5 : i / columns / (double)(rows - 1));
    }
}
