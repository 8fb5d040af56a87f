using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Routing;

/// <summary>Names within <c>routing</c> that belong together, and points on walls.</summary>
internal static class RoutingRules
{
    public static void Check(RoutingSection routing, FindingList findings)
    {
        foreach (var p in routing.WallPoints) CheckWallPoint(p, routing, findings);
        foreach (var e in routing.Entries.Where(e => !routing.Points.ContainsKey(e.Point)))
            Unknown(findings, e.At, $"routing.entries names the point `{e.Point}`, which is not defined", "points are defined in routing.points and routing.wall-points", routing.Points.Keys);
        foreach (var room in (routing.House?.Rooms ?? []).Where(r => routing.House!.Storeys.All(s => s.Name != r.Storey.Value)))
            Unknown(findings, room.Storey.At, $"the room `{room.Name}` is on the storey `{room.Storey.Value}`, which is not defined", "storeys are defined in routing.house.storeys", routing.House!.Storeys.Select(s => s.Name));
        foreach (var run in routing.Runs)
            foreach (var change in run.Ways.Where(w => !run.Path.Contains(w.Point)))
                Unknown(findings, change.At, $"the way of run {run.Id} changes at `{change.Point}`, which is not on its path", "the way changes at a point of the path", run.Path);
    }

    private static void CheckWallPoint(WallPoint p, RoutingSection routing, FindingList findings)
    {
        var walls = routing.House?.Footprint.Count ?? 0;
        if (routing.Points[p.Name].At != p.At)
            findings.Add(Severity.Stop, "wall-point-unfit", p.At, $"the point `{p.Name}` stands under `points` and under `wall-points`", "each point once", "remove or rename one of them");
        else if (p.Wall.Value > walls)
            findings.Add(Severity.Stop, "wall-point-unfit", p.Wall.At, $"the point `{p.Name}` is on wall {p.Wall.Value}", walls == 0 ? "the job describes no house" : $"the footprint has {walls} walls", walls == 0 ? "add `house` with its footprint" : "count the walls from the first corner of the footprint");
        else if (Length(routing.House!, p.Wall.Value) is var length && p.AlongM.Value > length + 1e-6)
            findings.Add(Severity.Stop, "wall-point-unfit", p.AlongM.At, $"the point `{p.Name}` is {UnitText.Write(p.AlongM.Value, 2, "m")} along wall {p.Wall.Value}", $"the wall is {UnitText.Write(length, 2, "m")} long", "measure from the corner where the wall starts");
    }

    private static double Length(House house, int wall)
    {
        var (a, b) = (house.Footprint[wall - 1], house.Footprint[wall % house.Footprint.Count]);
        return Math.Sqrt((b.Right - a.Right) * (b.Right - a.Right) + (b.Up - a.Up) * (b.Up - a.Up));
    }

    private static void Unknown(FindingList findings, SourceSpan at, string found, string limit, IEnumerable<string> known) =>
        findings.Add(Severity.Stop, "unknown-reference", at, found, limit, known.Any() ? "name one of: " + string.Join(", ", known.Take(20)) : "define it");
}
