using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>What the lines of the route sketch mean; only what the sketch uses.</summary>
internal sealed class RouteLegend(SheetCanvas canvas, SheetPlan plan)
{
    public IEnumerable<LegendEntry> Entries()
    {
        foreach (var way in RouteWay.All.Where(w => plan.Routing.Runs.Any(r => r.GivenM is null && Ways(r).Contains(w))))
            yield return new(plan.Word("way", way), at => RouteWay.Draw(canvas, way, [at, new(at.X + FlowLegend.SampleMm, at.Y)]));
        if (plan.Routing.Runs.Any(r => r.GivenM is not null))
            yield return new(plan.Say("route.by-length"), at => RouteWay.DrawByLength(canvas, [at, new(at.X + FlowLegend.SampleMm, at.Y)]));
        if (plan.Routing.Runs.Any(r => r.DripLoops.Count > 0))
            yield return new(plan.Say("route.drip"), at => ViewPainter.Drip(canvas, new(at.X + FlowLegend.SampleMm / 2, at.Y - 1.6)));
        if (plan.Routing.Entries.Count > 0)
            yield return new(plan.Say("route.entry"), at => ViewPainter.Entry(canvas, new(at.X + FlowLegend.SampleMm / 2, at.Y)));
        if (HousePlace.Antenna(plan) is null) yield break;
        yield return new(plan.Say("route.aim"), at => canvas.Arrow(at, new(at.X + 9, at.Y), 0.5, 2.8, Ink.Line));
        yield return new(plan.Say("route.mast"), at =>
            canvas.Box(new(at.X, at.Y - 1.3, at.X + FlowLegend.SampleMm, at.Y + 1.3), new(Ink.Line, 0.4), Fill.Paper));
    }

    /// <summary>The ways in which a run lies, in turn.</summary>
    public static IReadOnlyList<CableWay> Ways(RunPlan run) => run.Stretches.Count == 0 ? [run.Way] : [.. run.Stretches.Select(s => s.Way)];
}
