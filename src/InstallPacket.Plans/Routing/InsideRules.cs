namespace InstallPacket.Plans.Routing;

/// <summary>Runs against the body of the house: indoor points lie in it, and nothing passes a wall or the roof but through an entry.</summary>
internal sealed class InsideRules(Job job, HouseShape shape, FindingList findings)
{
    /// <summary>A tape measure is this good.</summary>
    public const double ToleranceM = 0.05;

    // An entry covers what a leg pierces this near to it: walls have a thickness and eaves stand out.
    private const double ReachM = 1;

    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public void Check()
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var run in job.Routing.Runs)
            foreach (var leg in RunLeg.Of(job.Routing, run))
            {
                if (leg.Indoors)
                    foreach (var point in new[] { leg.From, leg.To }.Where(p => Misplaced(p) is not null && told.Add(p.Name)))
                        findings.Add(Severity.Stop, "point-outside-house", point.At, $"`{point.Name}` is {Misplaced(point)}, and run {run.Id} goes there {Words(leg.Way)}",
                            "a run in attic, wall or crawl space stays within the house", "correct the point, the footprint, or the way of the run");
                if (!told.Contains(leg.From.Name) && !told.Contains(leg.To.Name)) Pierces(run, leg);
            }
    }

    private string? Misplaced(HousePoint p)
    {
        var beyond = shape.BeyondM(p.RightM, p.UpM);
        if (beyond > ToleranceM) return _print.Length(beyond) + " outside the footprint";
        return shape.RoofM(p.RightM, p.UpM) is { } roof && p.HeightM > roof + ToleranceM ? _print.Length(p.HeightM - roof) + " above the roof" : null;
    }

    private void Pierces(Run run, RunLeg leg)
    {
        // What passes under the ground is outside the walls that stand on it.
        foreach (var p in shape.Pierces(leg.From, leg.To).Where(p => p.HeightM >= 0 || !leg.Outdoors))
        {
            if (job.Routing.Entries.Any(e => (e.Point == leg.From.Name || e.Point == leg.To.Name) && Distance(job.Routing.Points[e.Point], p) <= ReachM)) continue;
            var severity = p.ByRoof ? Severity.Stop : Severity.Caution;
            findings.Add(severity, "entry-missing", run.PathAt,
                $"run {run.Id} goes through the {(p.ByRoof ? "roof" : "wall")} between `{leg.From.Name}` and `{leg.To.Name}`, {_print.Length(p.RightM)} right, {_print.Length(p.UpM)} up, {_print.Length(p.HeightM)} high, and there is no entry",
                "cable passes wall and roof only through an entry that is drilled and sealed", $"name the point in `routing.entries` (`{Nearest(leg, p)}: {{ through: {(p.ByRoof ? "roof" : "wall")} }}`), add a point there, or lead the run around");
            return;
        }
    }

    private static string Nearest(RunLeg leg, Pierce p) => Distance(leg.From, p) <= Distance(leg.To, p) ? leg.From.Name : leg.To.Name;

    private static double Distance(HousePoint a, Pierce p) =>
        Math.Sqrt((a.RightM - p.RightM) * (a.RightM - p.RightM) + (a.UpM - p.UpM) * (a.UpM - p.UpM) + (a.HeightM - p.HeightM) * (a.HeightM - p.HeightM));

    private static string Words(CableWay way) => way switch
    {
        CableWay.Attic => "in the attic",
        CableWay.Wall => "in the wall",
        CableWay.CrawlSpace => "in the crawl space",
        CableWay.Outside or CableWay.Conduit or CableWay.Buried or CableWay.Span => throw new InvalidOperationException("Not a way inside."),
    };
}
