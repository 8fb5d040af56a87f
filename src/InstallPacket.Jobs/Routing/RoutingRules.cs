namespace InstallPacket.Jobs.Routing;

/// <summary>Names within <c>routing</c> that belong together, and points on walls.</summary>
internal static class RoutingRules
{
    public static void Check(RoutingSection routing, FindingList findings)
    {
        foreach (var p in routing.WallPoints) CheckWallPoint(p, routing, findings);
        foreach (var e in routing.Entries.Where(e => !routing.Points.ContainsKey(e.Point) && !routing.Unmeasured.ContainsKey(e.Point)))
            Unknown(findings, "entry", e.At, e.Point, "", routing.Points.Keys);
        foreach (var room in (routing.House?.Rooms ?? []).Where(r => routing.House!.Storeys.All(s => s.Name != r.Storey.Value)))
            Unknown(findings, "storey", room.Storey.At, room.Storey.Value, room.Name, routing.House!.Storeys.Select(s => s.Name));
        foreach (var run in routing.Runs)
            foreach (var change in run.Ways.Where(w => !run.Path.Contains(w.Point)))
                Unknown(findings, "way", change.At, change.Point, run.Id, run.Path);
    }

    private static void CheckWallPoint(WallPoint p, RoutingSection routing, FindingList findings)
    {
        var walls = routing.House?.Footprint.Count ?? 0;
        if (routing.Points[p.Name].At != p.At)
            findings.Add(Severity.Stop, "wall-point-unfit", "twice", p.At, ("point", p.Name));
        else if (p.Wall.Value > walls)
            findings.Add(Severity.Stop, "wall-point-unfit", walls == 0 ? "no-house" : "number", p.Wall.At, ("point", p.Name),
                ("wall", p.Wall.Value), ("walls", walls));
        else if (Length(routing.House!, p.Wall.Value) is var length && p.AlongM.Value > length + 1e-6)
            findings.Add(Severity.Stop, "wall-point-unfit", "along", p.AlongM.At, ("point", p.Name), ("along_m", p.AlongM.Value),
                ("wall", p.Wall.Value),
                ("length_m", length));
    }

    private static double Length(House house, int wall)
    {
        var (a, b) = (house.Footprint[wall - 1], house.Footprint[wall % house.Footprint.Count]);
        return Math.Sqrt((b.Right - a.Right) * (b.Right - a.Right) + (b.Up - a.Up) * (b.Up - a.Up));
    }

    private static void Unknown(FindingList findings, string way, SourceSpan at, string name, string of, IEnumerable<string> known) =>
        findings.Add(Severity.Stop, "unknown-reference", way, at, ("name", name), ("of", of), ("near", null),
            ("known", known.Take(NameResolver.MostNames)));
}
