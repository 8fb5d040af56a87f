using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Routing;

namespace InstallPacket.Plans.Routing;

/// <summary>Gives a run its length to cut: geometry, drip loops, sag, service loop, slack and termination; and its clips.</summary>
internal sealed class RunPlanner(Job job, CodeFamily code, WorkLog log, FindingList findings)
{
    // Termination at both ends: 25 mm trim and 150 mm for re-termination at each end (memory: trade allowance).
    private const double TerminationM = 2 * (0.025 + 0.150);
    private const double LeastDripM = 0.075;

    // Below this a change of direction is no corner.
    private const double LeastTurnDeg = 10;

    public RunPlan Plan(Run run, int number)
    {
        var legs = RunLeg.Of(job.Routing, run);
        foreach (var leg in legs.Where(l => l.LengthM < 0.001))
            findings.Add(Severity.Stop, "run-leg-zero", run.PathAt, $"routing.runs.{run.Id} goes from `{leg.From.Name}` to `{leg.To.Name}`, which is the same place",
                "each leg has a length", "remove one of the two points from the path, or correct its position");
        var stretches = Stretches(run, legs);
        var (straight, routed) = (stretches.Sum(s => s.StraightM), stretches.Sum(s => s.RoutedM));
        var (drip, sag) = (DripExtra(run), Sag(run, legs));
        var (service, slack) = (run.ServiceLoop.Metres, run.Slack.Metres);
        var length = log.Record(RoutingFormulas.CutLength, run.Id, routed + drip + sag + service + slack + TerminationM, routed, drip, sag, service, slack, TerminationM);
        var step = job.Units == UnitFamily.Us ? 0.5 * Length.MetresPerFoot : 0.1;
        var cut = log.Record(PieceLength.RoundUpFormula, run.Id, PieceLength.RoundUpM(length, step), length, step);
        var to = job.Cabling.Chain.FirstOrDefault(e => e.Run == run.Id || e.SecondRun == run.Id);
        var clips = Clips(run, stretches);
        var corners = Enumerable.Range(1, legs.Count - 1).Count(i => legs[i - 1].LengthM > 0 && legs[i].LengthM > 0 && legs[i - 1].TurnDeg(legs[i]) > LeastTurnDeg);
        return new RunPlan(
            run.Id, number, run.Cable.Id, run.Cable.Name, run.Way, run.Path, (to?.SecondRun == run.Id ? to.Second : to?.From) ?? "", to?.Id ?? "", straight,
            straight > 0 ? routed / straight : Factor(run.Way), run.DripLoops, run.DripDepth.Value.Metres, drip, service, TerminationM, cut, clips,
            clips > 0 ? code.ClipSpacingM : null, run.Cable.BendRadiusM, run.Note ?? "")
        {
            Existing = run.Existing, Stretches = stretches, RoutedM = routed, SagExtraM = sag, SlackM = slack, UprightClipSpacingM = clips > 0 ? code.UprightClipSpacingM : null, Corners = corners,
            CornerReserveM = corners > 0 && run.Cable.BendRadiusM is { } radius ? corners * log.Record(BendCorner.SavingFormula, run.Id + ", each corner; kept in the piece", BendCorner.SavingM(radius), radius) : null,
            FromPowerM = run.FromPower?.Value.Metres, Supports = run.Supports,
        };
    }

    private StretchPlan[] Stretches(Run run, IReadOnlyList<RunLeg> legs)
    {
        var stretches = new List<StretchPlan>();
        for (var first = 0; first < legs.Count;)
        {
            var last = first;
            while (last + 1 < legs.Count && legs[last + 1].Way == legs[first].Way) last++;
            RunLeg[] part = [.. legs.Skip(first).Take(last - first + 1)];
            var subject = $"{run.Id}: {string.Join(" - ", part.Select(l => l.From.Name).Append(part[^1].To.Name))}";
            var straight = log.Record(RoutingFormulas.StraightLegs, subject, part.Sum(l => l.LengthM), part.Length);
            var factor = Factor(part[0].Way);
            stretches.Add(new(part[0].From.Name, part[^1].To.Name, part[0].Way, straight, part.Where(l => l.Upright).Sum(l => l.LengthM), factor, log.Record(RoutingFormulas.RoutedLength, subject, straight * factor, straight, factor)));
            first = last + 1;
        }
        return [.. stretches];
    }

    private int Clips(Run run, StretchPlan[] stretches)
    {
        StretchPlan[] clipped = [.. stretches.Where(s => s.Way is CableWay.Outside or CableWay.Attic)];
        if (clipped.Length == 0) return 0;
        var upright = clipped.Sum(s => s.UprightM * s.RouteFactor);
        var level = clipped.Sum(s => s.RoutedM) - upright;
        var (wide, close) = (code.ClipSpacingM, code.UprightClipSpacingM);
        // A billionth of a clip is binary rounding.
        var count = Math.Ceiling(level / wide - 1e-9) + Math.Ceiling(upright / close - 1e-9) + 1;
        return (int)log.Record(RoutingFormulas.ClipCount, run.Id, count, level, wide, upright, close);
    }

    private double Sag(Run run, IReadOnlyList<RunLeg> legs)
    {
        RunLeg[] spans = [.. legs.Where(l => l.Way == CableWay.Span && l.LengthM > 0)];
        if (spans.Length == 0) return 0;
        if (run.Dip is { } dip)
            return spans.Sum(l => log.Record(Calc.Routing.Sag.LengthFormula, $"{run.Id}: {l.From.Name} - {l.To.Name}", Calc.Routing.Sag.LengthM(l.LengthM, dip.Metres), l.LengthM, dip.Metres) - l.LengthM);
        findings.Add(Severity.Caution, "span-dip-missing", run.At, $"run {run.Id} hangs free from `{spans[0].From.Name}` to `{spans[0].To.Name}`, and its dip is not given",
            "without it the sag adds nothing to the piece", "add `dip` from the table of the cable's maker");
        return 0;
    }

    private double DripExtra(Run run)
    {
        if (run.DripLoops.Count == 0) return 0;
        var depth = run.DripDepth.Value.Metres;
        var print = UnitPrinter.Of(job);
        if (run.Cable.BendRadiusM is not { } radius)
        {
            findings.Add(Severity.Caution, "bend-radius-unknown", run.Cable.At, $"the cable `{run.Cable.Id}` does not state its bend radius", $"without it the drip loops of run {run.Id} have no length",
                "add `bend-radius` to the part from the maker's sheet");
            return 0;
        }
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
        return run.DripLoops.Count * log.Record(DripLoop.ExtraLengthFormula, run.Id, DripLoop.ExtraLengthM(depth, radius), depth, radius);
    }

    // Allowance for the route as the cable really lies (memory: 1.05 on a visible surface, 1.10 to 1.15 fished through attic or wall).
    private static double Factor(CableWay way) => way switch
    {
        CableWay.Outside or CableWay.Conduit or CableWay.Buried => 1.05,
        CableWay.Span => 1.00,
        CableWay.Attic or CableWay.CrawlSpace => 1.10,
        CableWay.Wall => 1.15,
    };
}
