namespace InstallPacket.Plans.Routing;

/// <summary>Runs against the body of the house: indoor points lie in it, and nothing passes a wall or the roof but through an
/// entry.</summary>
internal sealed class InsideRules(Job job, HouseShape shape, FindingList findings)
{
    /// <summary>A tape measure is this good.</summary>
    public const double ToleranceM = 0.05;

    // An entry covers what a leg pierces this near to it: walls have a thickness and eaves stand out.
    private const double ReachM = 1;

    public void Check()
    {
        var reported = new HashSet<string>(StringComparer.Ordinal);
        foreach (var run in job.Routing.Runs)
            foreach (var leg in RunLeg.Of(job.Routing, run))
            {
                if (leg.Indoors)
                    foreach (var point in new[] { leg.From, leg.To }.Where(p => Misplaced(p) is not null && reported.Add(p.Name)))
                        findings.Add(Severity.Stop, "point-outside-house", Misplaced(point)!.Value.Case, point.At, ("point", point.Name),
                            ("by_m", Misplaced(point)!.Value.ByM),
                            ("run", run.Id), ("way", Word.Of(leg.Way)));
                if (!reported.Contains(leg.From.Name) && !reported.Contains(leg.To.Name)) Pierces(run, leg);
            }
    }

    // Where a point lies and by how much; null when it lies in the house.
    private (string Case, double ByM)? Misplaced(HousePoint p)
    {
        var beyond = shape.BeyondM(p.RightM, p.UpM);
        if (beyond > ToleranceM) return ("footprint", beyond);
        return shape.RoofM(p.RightM, p.UpM) is { } roof && p.HeightM > roof + ToleranceM ? ("roof", p.HeightM - roof) : null;
    }

    private void Pierces(Run run, RunLeg leg)
    {
        // What passes under the ground is outside the walls that stand on it.
        foreach (var p in shape.Pierces(leg.From, leg.To).Where(p => p.HeightM >= 0 || !leg.Outdoors))
        {
            if (job.Routing.Entries.Any(e => (e.Point == leg.From.Name || e.Point == leg.To.Name)
                && Distance(job.Routing.Points[e.Point], p) <= ReachM)) continue;
            var severity = p.ByRoof ? Severity.Stop : Severity.Caution;
            findings.Add(severity, "entry-missing", run.PathAt, ("run", run.Id), ("through", p.ByRoof ? "roof" : "wall"),
                ("from", leg.From.Name),
                ("to", leg.To.Name), ("right_m", p.RightM), ("up_m", p.UpM), ("height_m", p.HeightM), ("nearest", Nearest(leg, p)));
            return;
        }
    }

    private static string Nearest(RunLeg leg, Pierce p) => Distance(leg.From, p) <= Distance(leg.To, p) ? leg.From.Name : leg.To.Name;

    private static double Distance(HousePoint a, Pierce p) =>
        Math.Sqrt((a.RightM - p.RightM) * (a.RightM - p.RightM) + (a.UpM - p.UpM) * (a.UpM - p.UpM)
            + (a.HeightM - p.HeightM) * (a.HeightM - p.HeightM));
}
