using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials;

/// <summary>The cutting plan: a strip for each opened reel, box or length, with the pieces in turn and what is left over.</summary>
public static class CuttingPlanSheet
{
    private const double WidthMm = 170;
    private const double LeftMm = 2;

    /// <summary>Draws all sheets; none when the plan cuts nothing.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static IEnumerable<Drawing?> DrawAll(SheetPlan plan, ITextMeasure measure) =>
        plan.Materials.Cutting is { } cutting ? cutting.Figures.Select(f => Draw(plan, cutting, f, measure)) : [];

    private static Drawing Draw(SheetPlan plan, CuttingPlan cutting, string figure, ITextMeasure measure)
    {
        var canvas = new SheetCanvas(measure);
        double y = 2;
        var cables = cutting.Cables.Select(c => (Cable: c, Strips: c.Strips.Where(s => s.Figure == figure).ToArray())).Where(c =>
            c.Strips.Length > 0).ToArray();
        foreach (var (cable, strips) in cables)
        {
            // One scale for each kind of cable: the longest strip of it fills the sheet.
            var scale = (WidthMm - 2 * LeftMm) / cable.Strips.Max(s => s.LengthM);
            canvas.Text(new(new(LeftMm, y + 4.5), TextWrap.Lines(cable.Name, 3.8, true, 112, 1, measure)[0], 3.8, Strong: true));
            ScaleBar.Draw(canvas, new(118, y + 3.4), scale, 32, plan);
            y += 8;
            var painter = new StripPainter(canvas, plan, scale);
            foreach (var strip in strips) y = painter.Draw(strip, new(LeftMm, y), WidthMm - LeftMm) + 4;
            y += 2;
        }
        var legend = FlowLegend.Draw(canvas, Legend(canvas, plan), new(LeftMm, y + 2), WidthMm - LeftMm);
        return new(figure, plan.Say("cutting.title"), CuttingWords.Of(plan, cables.SelectMany(c => c.Strips)), WidthMm, legend + 1,
            canvas.Shapes);
    }

    private static IEnumerable<LegendEntry> Legend(SheetCanvas canvas, SheetPlan plan)
    {
        PaperBox Sample(PaperPoint at) => new(at.X, at.Y - 1.8, at.X + FlowLegend.SampleMm, at.Y + 1.8);
        yield return new(plan.Say("cutting.piece-legend"), at => StripPainter.Piece(canvas, Sample(at)));
        yield return new(plan.Say("cutting.kept-legend"), at => StripPainter.Left(canvas, Sample(at), keep: true));
        yield return new(plan.Say("cutting.scrap-legend"), at => StripPainter.Left(canvas, Sample(at), keep: false));
    }
}
