using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials;

/// <summary>Labels to print, cut out and fold over the cable: two for each piece, one for each end.</summary>
public static class CableLabelSheet
{
    private const double WidthMm = 170;
    private const double TopMm = 9;
    private const double RowMm = 23;
    private const double GapMm = 3;

    /// <summary>Draws all sheets.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static IEnumerable<Drawing?> DrawAll(SheetPlan plan, ITextMeasure measure) =>
        plan.Materials.LabelSheets.Select(s => Draw(plan, s, measure));

    private static Drawing Draw(SheetPlan plan, LabelSheetPlan sheet, ITextMeasure measure)
    {
        var canvas = new SheetCanvas(measure);
        var pieces = plan.Materials.Pieces.Skip(sheet.First - 1).Take(sheet.Count).ToArray();
        canvas.Text(new(new(2, 6), TextWrap.Lines(plan.Say("labels.heading", ("job", plan.Job.Id)), 3.8, true, 110, 1, measure)[0], 3.8,
            Strong: true));
        canvas.Text(new(new(WidthMm - 2, 6), plan.Say("labels.fold"), 3.2, Anchor: Anchor.End));
        var painter = new LabelPainter(canvas, plan);
        var width = (WidthMm - 4 - GapMm) / 2;
        for (var i = 0; i < pieces.Length; i++)
        {
            var top = TopMm + i * (RowMm + GapMm);
            painter.Draw(pieces[i], new(2, top, 2 + width, top + RowMm), near: true);
            painter.Draw(pieces[i], new(2 + width + GapMm, top, WidthMm - 2, top + RowMm), near: false);
        }
        var words = plan.Say("labels.what", ("count", pieces.Length),
            ("pieces", string.Join("; ", pieces.Select(p => plan.Say("labels.what-piece",
            ("number", p.Number), ("run", plan.Name(p.Run)), ("from", plan.Name(p.From)), ("to", plan.Name(p.To)),
                ("length", plan.Print.Cable(p.LengthM)))))));
        return new(sheet.Figure, plan.Say("labels.title"), words, WidthMm, TopMm + pieces.Length * (RowMm + GapMm), canvas.Shapes);
    }
}
