using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Routing;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans;

/// <summary>Gives every run its length to cut: geometry, drip loops, service loop and termination.</summary>
internal sealed class RoutingPlanner(Job job, CodeFamily code, PartLibrary parts, WorkLog log, FindingList findings)
{
    // Termination at both ends: 25 mm trim and 150 mm for re-termination at each end (memory: trade allowance).
    private const double TerminationM = 2 * (0.025 + 0.150);
    private const double LeastDripM = 0.075;

    public RoutingPlan Plan()
    {
        var r = job.Routing;
        return new RoutingPlan(
            r.PlanUpDeg, [.. (r.House?.Footprint ?? []).Select(c => new PlanCorner(c.Right, c.Up))], r.House?.Eaves.Metres, r.House?.Ridge.Metres,
            [.. r.Points.Values.Select(p => new PointPlan(p.Name, p.RightM, p.UpM, p.HeightM, [.. job.Cabling.Chain.Where(e => e.Point == p.Name).Select(e => e.Id)]))],
            [.. r.Runs.Select((run, i) => Run(run, i + 1))], [.. r.Runs.Select(run => run.Cable).Distinct().Select(Cable)], code.RulesOf("routing"));
    }

    private CablePlan Cable(Part cable)
    {
        var connector = cable.Connector is { } id ? parts.Find(id) : null;
        return new CablePlan(cable.Id, cable.Name, cable.BendRadiusM, connector?.Name ?? "", connector?.TorqueNm, connector?.TorqueNm is null ? "" : connector.ProvenanceOf("torque"));
    }

    private RunPlan Run(Run run, int number)
    {
        var straight = Straight(run);
        var factor = RouteFactor(run.Way);
        var drip = DripExtra(run);
        var service = run.ServiceLoop.Metres;
        var length = log.Record(PlanFormulas.CutLength, run.Id, straight * factor + drip + service + TerminationM, straight, factor, drip, service, TerminationM);
        var step = job.Units == UnitFamily.Us ? 0.5 * Length.MetresPerFoot : 0.1;
        var cut = log.Record(PieceLength.RoundUpFormula, run.Id, PieceLength.RoundUpM(length, step), length, step);
        var clipped = run.Way is "outside" or "attic";
        var to = job.Cabling.Chain.FirstOrDefault(e => e.Run == run.Id || e.SecondRun == run.Id);
        return new RunPlan(
            run.Id, number, run.Cable.Id, run.Cable.Name, run.Way, run.Path, (to?.SecondRun == run.Id ? to.Second : to?.From) ?? "", to?.Id ?? "", straight, factor, run.DripLoops,
            run.DripDepth.Value.Metres, drip, service, TerminationM, cut, clipped ? (int)Math.Ceiling(straight * factor / code.ClipSpacingM) + 1 : 0,
            clipped ? code.ClipSpacingM : null, BendRadius(run), run.Note ?? "") { Existing = run.Existing };
    }

    private double Straight(Run run)
    {
        var points = run.Path.Select(p => job.Routing.Points[p]).ToArray();
        double sum = 0;
        for (var i = 1; i < points.Length; i++)
        {
            var leg = Math.Sqrt(Square(points[i].RightM - points[i - 1].RightM) + Square(points[i].UpM - points[i - 1].UpM) + Square(points[i].HeightM - points[i - 1].HeightM));
            if (leg < 0.001)
                findings.Add(Severity.Stop, "run-leg-zero", run.PathAt, $"routing.runs.{run.Id} goes from `{points[i - 1].Name}` to `{points[i].Name}`, which is the same place",
                    "each leg has a length", "remove one of the two points from the path, or correct its position");
            sum += leg;
        }
        return log.Record(PlanFormulas.StraightLegs, $"{run.Id}: {string.Join(" - ", run.Path)}", sum, points.Length - 1);
    }

    private double DripExtra(Run run)
    {
        if (run.DripLoops.Count == 0) return 0;
        var depth = run.DripDepth.Value.Metres;
        var print = UnitPrinter.Of(job);
        if (BendRadius(run) is not { } radius) return 0;
        if (depth < radius)
        {
            findings.Add(Severity.Stop, "drip-loop-too-tight", run.DripDepth.At,
                $"the drip loops of run {run.Id} are {print.Small(depth)} deep, and {run.Cable.Id} bends to {print.Small(radius)} at least",
                "a loop is at least as deep as the bend radius (geometry)", $"make drip-depth {(job.Units == UnitFamily.Us ? print.AtLeast(radius) : print.Small(Math.Ceiling((radius * 100) - 1e-6) / 100))} or more");
            return 0;
        }
        if (depth < LeastDripM)
            findings.Add(Severity.Caution, "drip-loop-shallow", run.DripDepth.At, $"the drip loops of run {run.Id} are {print.Small(depth)} deep",
                $"{print.Small(LeastDripM)} to {print.Small(2 * LeastDripM)} is usual (memory: trade rule)", "hang the loop lower");
        var one = log.Record(DripLoop.ExtraLengthFormula, run.Id, DripLoop.ExtraLengthM(depth, radius), depth, radius);
        return one * run.DripLoops.Count;
    }

    private double? BendRadius(Run run)
    {
        if (run.Cable.BendRadiusM is { } stated) return stated;
        if (run.DripLoops.Count > 0)
            findings.Add(Severity.Caution, "bend-radius-unknown", run.Cable.At, $"the cable `{run.Cable.Id}` does not state its bend radius", $"without it the drip loops of run {run.Id} have no length",
                "add `bend-radius` to the part from the maker's sheet");
        return null;
    }

    // Allowance for the route as the cable really lies (memory: 1.05 on a visible surface, 1.10 to 1.15 fished through attic or wall).
    private static double RouteFactor(string way) => way switch
    {
        "outside" or "conduit" => 1.05,
        "attic" or "crawl-space" => 1.10,
        _ => 1.15,
    };

    private static double Square(double x) => x * x;
}
