using InstallPacket.Calc.Routing;

namespace InstallPacket.Plans.Routing;

/// <summary>The holes through wall and roof: drill, slope, fall, and the drip loop before them.</summary>
internal sealed class EntryPlanner(Job job, HouseShape? shape, Workings work, FindingList findings)
{
    // Trade rules, recalled: the cable and 2 to 3 mm; 5 to 10 degrees.
    private const double LeastRoomM = 0.002;
    private const double LeastSlopeDeg = 5;

    public IReadOnlyList<EntryPlan> Plan() =>
        [.. job.Routing.Entries.Where(e => job.Routing.Points.ContainsKey(e.Point) || job.Routing.Unmeasured.ContainsKey(e.Point))
            .Select((e, i) => Entry(e, i + 1))];

    private EntryPlan Entry(CableEntry e, int number)
    {
        var runs = Through(e);
        Slope(e);
        var cable = runs.Select(r => r.Cable.DiameterM).Max();
        var hole = Hole(e, cable);
        var thickness = (e.Thickness ?? (e.Through == EntrySurface.Wall ? job.Routing.House?.Wall : null))?.Metres;
        var sloped = thickness is not null && e.SlopeDeg.Value >= 0;
        var (wall, slope) = (Term.Plan($"routing.entries[{e.Point}].thickness_m", thickness ?? 0),
            Term.Key($"routing.entries.{e.Point}.slope", e.SlopeDeg.Value));
        double? length = sloped ? work.Apply(WallHole.LengthFormula, e.Point, wall, slope).Number : null;
        double? fall = sloped ? work.Apply(WallHole.FallFormula, e.Point, wall, slope).Number : null;
        Drips(e);
        var loop = job.Routing.Runs.FirstOrDefault(r => r.DripLoops.Contains(e.Point));
        var radius = (loop ?? runs.FirstOrDefault())?.Cable.BendRadiusM;
        return new(e.Point, number, e.Through, [.. runs.Select(r => r.Id)], hole, e.SlopeDeg.Value, thickness, length, fall, cable,
            loop?.DripDepth.Value.Metres,
            radius, e.Through == EntrySurface.Wall && fall is not null && hole is not null && radius is not null ? "entry-" + e.Point : "")
        {
            Existing = e.Existing,
        };
    }

    // The runs that go on indoors from here; where the house is not described, all that touch the point and do not stay outdoors.
    private Run[] Through(CableEntry e) => [.. job.Routing.Runs.Where(r => (ByLength(r, e) && !Outdoors(r)) || RunLeg.Of(job.Routing, r).Any(l =>
        (l.From.Name == e.Point || l.To.Name == e.Point) && (shape is null ? !l.Outdoors : shape.Pierces(l.From, l.To).Count > 0)))];

    private static bool ByLength(Run run, CableEntry e) => run.Given is not null && run.Path.Contains(e.Point);

    private static bool Outdoors(Run run) => run.Way is CableWay.Outside or CableWay.Span or CableWay.Buried;

    private void Slope(CableEntry e)
    {
        var slope = e.SlopeDeg.Value;
        if (slope <= 0)
            findings.Add(Severity.Stop, "hole-slopes-inward", e.SlopeDeg.At, ("point", e.Point), ("slope_deg", slope));
        else if (slope < LeastSlopeDeg - 1e-9)
            findings.Add(Severity.Note, "hole-slope-small", e.SlopeDeg.At, ("point", e.Point), ("slope_deg", slope));
    }

    private double? Hole(CableEntry e, double? cable)
    {
        if (e.Hole is not { } stated) return cable is { } d
            ? work.Apply(RoutingFormulas.EntryHole, e.Point, Term.Plan($"routing.entries[{e.Point}].cable_m", d)).Number : null;
        if (cable is { } outside && stated.Value.Metres < outside + LeastRoomM - 1e-6)
            findings.Add(Severity.Caution, "hole-too-small", stated.At, ("point", e.Point), ("hole_m", stated.Value.Metres),
                ("cable_m", outside));
        return stated.Value.Metres;
    }

    // Water that runs down the cable must drip off before the hole; cable that rises to the hole sheds it by itself.
    private void Drips(CableEntry e)
    {
        foreach (var run in job.Routing.Runs)
        {
            var legs = RunLeg.Of(job.Routing, run).Where(l => l.Way is CableWay.Outside or CableWay.Span);
            if (run.DripLoops.Contains(e.Point) || run.Existing
                || !(ByLength(run, e) && Outdoors(run)) && !legs.Any(l => (l.To.Name == e.Point && l.RiseM <= 0) || (l.From.Name == e.Point && l.RiseM >= 0))) continue;
            findings.Add(Severity.Caution, "entry-drip-missing", run.At, ("run", run.Id), ("point", e.Point));
        }
    }
}
