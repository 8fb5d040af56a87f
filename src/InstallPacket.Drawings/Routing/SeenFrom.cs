using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>Turns a plan so that one side of it becomes the lower edge; the elevation of that edge is then the elevation of the
/// side.</summary>
internal static class SeenFrom
{
    /// <summary>The plan turned, with the runs that pass in front of that side.</summary>
    public static SheetPlan Side(SheetPlan plan, string side)
    {
        var r = plan.Routing;
        PointPlan Turned(PointPlan p) => PlanSide.Seen(side, p.RightM, p.UpM) is var (right, away) ? p with { RightM = right, UpM = away }
            : p;
        PlanCorner[] outline = [.. r.Outline.Select(c => PlanSide.Seen(side, c.RightM, c.UpM)).Select(c =>
            new PlanCorner(c.RightM, c.AwayM))];
        var face = outline.Min(c => c.UpM) + 0.05;
        var points = r.Points.Select(Turned).ToDictionary(p => p.Name, StringComparer.Ordinal);
        bool InFront(string point) => points.TryGetValue(point, out var p) && p.UpM <= face;
        RunPlan[] runs = [.. r.Runs.Where(run => run.Lies(CableWay.Outside, CableWay.Conduit, CableWay.Buried, CableWay.Span)
            && run.Path.Zip(run.Path.Skip(1)).Any(l => InFront(l.First) && InFront(l.Second)))];
        var shown = runs.SelectMany(run => run.Path).ToHashSet(StringComparer.Ordinal);
        return plan.With(plan.Plan with
        {
            Routing = r with
            {
                Outline = outline, Points = [.. points.Values.Where(p => shown.Contains(p.Name))], Runs = runs,
                    Entries = [.. r.Entries.Where(e => shown.Contains(e.Point))],
                RidgeAlong = side is "right" or "left"
                    ? r.RidgeAlong switch { RidgeAxis.Right => RidgeAxis.Up, RidgeAxis.Up => RidgeAxis.Right, null => null } : r.RidgeAlong,
            },
        });
    }
}
