using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling;

/// <summary>What feeds what: the parts from the antenna to every outlet, the outputs that they hang on and the runs between.</summary>
public static class ChainDiagramSheet
{
    private const double WidthMm = 170;
    private const double MarginMm = 2;
    private const double TopMm = 14;

    // A taller sheet would be made smaller to fit a page, and its words with it.
    private const double PageMm = 205;

    /// <summary>Draws it; null when the plan has no chain.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (Layout(plan, measure) is not { } found) return null;
        var (setting, layout) = found;
        var canvas = new SheetCanvas(measure);
        var width = layout.Right + MarginMm;
        canvas.Text(new(new(2, 6), ChainWords.Heading(plan), 3.8, Strong: true));
        canvas.Text(new(new(width - 2, 6), plan.Say("chain.cut"), 3.2, Anchor: Anchor.End));
        new ChainPainter(canvas, plan, setting).Draw(layout);
        var legend = FlowLegend.Draw(canvas, Legend(canvas, plan), new(2, layout.Bottom + 6), width - 2);
        return new Drawing("chain-diagram", plan.Say("chain.title"), ChainWords.Of(plan), width, legend + 1, canvas.Shapes);
    }

    /// <summary>Where everything stands: as roomy as one page allows.</summary>
    internal static (ChainSetting Setting, ChainLayout Layout)? Layout(SheetPlan plan, ITextMeasure measure)
    {
        var roots = ChainNode.Of(plan);
        if (roots.Count == 0) return null;
        ChainLayout Of(ChainSetting setting) =>
            ChainLayout.Of(roots, new(MarginMm, TopMm), WidthMm - MarginMm, node => ChainSize.Of(node, setting, plan, measure));
        var roomy = Of(ChainSetting.Roomy);
        return roomy.Bottom <= PageMm ? (ChainSetting.Roomy, roomy) : (ChainSetting.Dense, Of(ChainSetting.Dense));
    }

    private static IEnumerable<LegendEntry> Legend(SheetCanvas canvas, SheetPlan plan)
    {
        void Line(Pen pen, PaperPoint at) => canvas.Line(pen, at, new(at.X + FlowLegend.SampleMm, at.Y));
        yield return new(plan.Cabling.Elements.Any(e => (e.From.Length > 0 && e.Run.Length == 0)
            || (e.Second.Length > 0 && e.SecondRun.Length == 0)) ? plan.Say("chain.cable-direct") : plan.Say("chain.cable"), at =>
            Line(ChainPainter.Signal, at));
        if (plan.Cabling.Elements.Any(e => e.Existing) || plan.Routing.Runs.Any(r => r.Existing))
            yield return new(plan.Say("chain.there"), at => canvas.Box(new(at.X, at.Y - 1.6, at.X + FlowLegend.SampleMm, at.Y + 1.6), ChainPainter.There, Fill.Paper));
        foreach (var feed in plan.Cabling.Feeds) yield return new(ChainWords.Supply(plan, feed), at => Line(ChainPainter.Supply, at));
    }
}
