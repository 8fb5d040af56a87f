using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling;

/// <summary>The chain from left to right and the level behind each step, for the strongest and the weakest channel of an outlet.</summary>
public static class LevelLadderSheet
{
    private const double LeastWidthMm = 170;
    private const double LeftMm = 15;
    private const double AsideMm = 38;

    // Narrower columns would set the turned names into each other.
    private const double LeastColumnMm = 6.5;
    private const double LegendMm = 6;
    private const double ChartMm = 84;

    /// <summary>Draws that of the outlet with the smallest margin; null when no level could be calculated.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure) => plan.Cabling.Ladder is { } ladder
        ? Draw(plan, ladder, plan.Say("ladder.title"), measure) : null;

    /// <summary>Draws those of the other outlets, but for outlets that a figure drawn before serves.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static IEnumerable<Drawing?> DrawOthers(SheetPlan plan, ITextMeasure measure) =>
        plan.Cabling.Ladders.Skip(1).Where(l => l.SameAs.Length == 0).Select(l =>
            Draw(plan, l, plan.Say("ladder.title-to", ("outlet", l.Outlet)), measure));

    private static Drawing? Draw(SheetPlan plan, LadderPlan ladder, string title, ITextMeasure measure)
    {
        if (ladder.Lines.Count == 0 || ladder.Lines.Any(l => l.Steps.Count == 0)) return null;
        var canvas = new SheetCanvas(measure);
        var print = plan.Print;
        var top = 4 + (1 + ladder.Lines.Count) * LegendMm + 6;
        var columns = LadderColumns.Of(ladder);
        var width = Math.Max(LeastWidthMm, LeftMm + columns.Names.Count * LeastColumnMm + AsideMm);
        var scale = LadderScale.Of(new(LeftMm, top, width - AsideMm, top + ChartMm), columns.Ladder, print);
        Legend(canvas, plan, ladder, width);
        new LadderGrid(canvas, scale, print).Draw([.. columns.Names.Select(n => LadderWords.Step(plan, n))]);
        new LadderLines(canvas, scale, plan).Draw(columns);
        return new Drawing(ladder.Figure, title, LadderWords.Of(plan, ladder), width, top + ChartMm + LadderGrid.NamesMm, canvas.Shapes);
    }

    private static void Legend(SheetCanvas canvas, SheetPlan plan, LadderPlan ladder, double width)
    {
        canvas.Text(new(new(2, 6), TextWrap.Lines(LadderWords.Outlet(plan, ladder), 3.8, true, width - 48, 1, canvas.Measure)[0], 3.8,
            Strong: true));
        canvas.Text(new(new(width - 2, 6), plan.Say("ladder.steps", ("reference", plan.Print.Temperature(plan.Cabling.ReferenceC))), 3.2,
            Anchor: Anchor.End));
        for (var i = 0; i < ladder.Lines.Count; i++)
        {
            var y = 6 + (i + 1) * LegendMm;
            canvas.Line(LadderLines.Pen(ladder.Lines[i].Role), new(2, y - 1.1), new(16, y - 1.1));
            canvas.Text(new(new(19, y),
                TextWrap.Lines(LadderWords.Station(plan, ladder.Lines[i]), 3.4, false, width - 22, 1, canvas.Measure)[0], 3.4));
        }
    }
}
