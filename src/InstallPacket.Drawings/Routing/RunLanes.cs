using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>The line of a run in one view.</summary>
/// <param name="Pieces">Its stretches that lie alike.</param>
internal sealed record RunLine(RunPlan Run, IReadOnlyList<PaperPoint> Points,
    IReadOnlyList<(CableWay Way, IReadOnlyList<PaperPoint> Points)> Pieces);

/// <summary>Lays runs that share a leg side by side, so that each can be followed.</summary>
internal static class RunLanes
{
    /// <summary>Distance between neighbours.</summary>
    public const double LaneMm = 1.5;

    // Shorter than this a leg is a dot: it points at the viewer.
    private const double LeastLegMm = 0.3;

    private sealed record Leg(int Run, PaperPoint A, PaperPoint B, double Lane);

    public static IReadOnlyList<RunLine> Of(RoutingPlan routing, RouteView view)
    {
        var byName = routing.Points.ToDictionary(p => p.Name, StringComparer.Ordinal);
        var laid = new List<Leg>();
        var lines = new List<RunLine>();
        for (var i = 0; i < routing.Runs.Count; i++)
        {
            if (routing.Runs[i].GivenM is not null)
            {
                if (Schematic(routing.Runs[i], byName, view) is { } line) lines.Add(line);
                continue;
            }
            var path = routing.Runs[i].Path.Where(byName.ContainsKey).Select(n => view.Place(byName[n])).ToArray();
            var ways = Ways(routing.Runs[i]);
            var points = new List<PaperPoint>();
            var pieces = new List<(CableWay Way, IReadOnlyList<PaperPoint> Points)>();
            for (var k = 1; k < path.Length; k++)
            {
                if (Polar.Distance(path[k - 1], path[k]) < LeastLegMm) continue;
                var leg = new Leg(i, path[k - 1], path[k], FreeLane(i, path[k - 1], path[k], laid));
                laid.Add(leg);
                points.Add(Shifted(leg.A, leg));
                points.Add(Shifted(leg.B, leg));
                var way = k - 1 < ways.Count ? ways[k - 1] : routing.Runs[i].Way;
                PaperPoint[] drawn = [points[^2], points[^1]];
                if (pieces.Count > 0 && pieces[^1].Way == way) pieces[^1] = (way, [.. pieces[^1].Points, .. drawn]);
                else pieces.Add((way, drawn));
            }
            // A run that points at the viewer has no line here, but its badge must still be found.
            if (path.Length > 0) lines.Add(new(routing.Runs[i], points.Count > 0 ? points : [path[0], path[0]], pieces));
        }
        return lines;
    }

    // Known by its length alone: square from part to part, so that nobody takes it for the way through the house; no line where an end was not
    // measured.
    private static RunLine? Schematic(RunPlan run, Dictionary<string, PointPlan> byName, RouteView view)
    {
        PaperPoint[] ends = [.. run.Path.Where(byName.ContainsKey).Select(n => view.Place(byName[n]))];
        if (ends.Length < 2) return ends.Length == 0 ? null : new(run, [ends[0], ends[0]], []);
        PaperPoint[] line = [ends[0], new(ends[0].X, ends[^1].Y), ends[^1]];
        return new(run, line, [(run.Way, line)]);
    }

    // The way of each leg, from the stretches between its points.
    private static List<CableWay> Ways(RunPlan run)
    {
        var ways = new List<CableWay>();
        var at = 0;
        for (var k = 1; k < run.Path.Count; k++)
        {
            ways.Add(at < run.Stretches.Count ? run.Stretches[at].Way : run.Way);
            if (at + 1 < run.Stretches.Count && run.Path[k] == run.Stretches[at].ToPoint) at++;
        }
        return ways;
    }

    // 0, then one lane to the right, one to the left, two to the right and so on.
    private static double FreeLane(int run, PaperPoint a, PaperPoint b, List<Leg> laid)
    {
        var taken = laid.Where(l => l.Run != run && Share(l, a, b)).Select(l => l.Lane).ToHashSet();
        for (var n = 0; ; n++)
        {
            var lane = n % 2 == 0 ? n / 2 : -(n + 1) / 2;
            if (!taken.Contains(lane)) return lane;
        }
    }

    // Along one line and with a common stretch.
    private static bool Share(Leg leg, PaperPoint a, PaperPoint b)
    {
        var length = Polar.Distance(leg.A, leg.B);
        var (ux, uy) = ((leg.B.X - leg.A.X) / length, (leg.B.Y - leg.A.Y) / length);
        double Off(PaperPoint p) => Math.Abs((p.X - leg.A.X) * uy - (p.Y - leg.A.Y) * ux);
        double Along(PaperPoint p) => (p.X - leg.A.X) * ux + (p.Y - leg.A.Y) * uy;
        if (Off(a) > 0.6 || Off(b) > 0.6) return false;
        return Math.Min(length, Math.Max(Along(a), Along(b))) - Math.Max(0, Math.Min(Along(a), Along(b))) > 0.6;
    }

    // The side must not depend on the direction in which a run passes the leg.
    private static PaperPoint Shifted(PaperPoint p, Leg leg)
    {
        var (a, b) = leg.A.X < leg.B.X - 1e-9 || (Math.Abs(leg.A.X - leg.B.X) <= 1e-9 && leg.A.Y < leg.B.Y) ? (leg.A, leg.B)
            : (leg.B, leg.A);
        var length = Polar.Distance(a, b);
        return new(p.X - (b.Y - a.Y) / length * leg.Lane * LaneMm, p.Y + (b.X - a.X) / length * leg.Lane * LaneMm);
    }
}
