using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting;

/// <summary>The ladder and the overhead wires from the side, to scale: how far everything can fall and how far the wires must be.</summary>
public static class AccessSketchSheet
{
    private const double WidthMm = 170;

    /// <summary>Draws it; null when there is neither ladder nor wire.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (plan.Mounting.Ladder is null && plan.Mounting.PowerLines.Count == 0) return null;
        var canvas = new SheetCanvas(measure);
        var box = new PaperBox(34, 12, WidthMm - 4, 90);
        // A wide scene is low: then the sheet is cut down to it.
        var view = AccessView.Of(plan, box with { Bottom = box.Top + AccessView.Of(plan, box).HeightMm });
        var below = view.Side.Y(0);
        canvas.Text(new(new(2, 5), plan.Say("from-side"), 3.8, Strong: true));
        ScaleBar.Draw(canvas, new(34, 3.7), view.Side.MmPerMetre, 30, plan);
        new AccessPainter(canvas, plan, view).Draw();
        var bottom = AccessMeasures.Draw(canvas, plan, view, below + 8);
        foreach (var line in AccessWords.Notes(plan))
            foreach (var words in TextWrap.Lines(line, 3.2, false, WidthMm - 4, 3, measure))
                canvas.Text(new(new(2, bottom += 4.2), words, 3.2));
        return new Drawing("access-sketch", plan.Say("access.title"), AccessWords.Of(plan), WidthMm, bottom + 2, canvas.Shapes);
    }
}
