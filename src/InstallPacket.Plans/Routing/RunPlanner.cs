using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Routing;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Routing;

/// <summary>Gives a run its length to cut: geometry, drip loops, sag, service loop, slack and termination; and its clips.</summary>
internal sealed class RunPlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    // Termination at both ends: 25 mm trim and 150 mm for re-termination at each end (memory: trade allowance).
    private static readonly Constant TerminationM = new("termination-at-both-ends", 2 * (0.025 + 0.150), "project-notes",
        Provenance.Memory);
    private static readonly Constant OnSurface = Allowance("on-surface", 1.05);
    private static readonly Constant Free = Allowance("free-span", 1.00);
    private static readonly Constant InAttic = Allowance("in-attic", 1.10);
    private static readonly Constant Fished = Allowance("fished", 1.15);
    private static readonly Constant AsMeasured = Allowance("as-measured", 1.00);
    private const double LeastDripM = 0.075;

    // Below this a change of direction is no corner.
    private const double LeastTurnDeg = 10;

    private static Constant Allowance(string where, double factor) =>
        new("route-factor-" + where, factor, "project-notes", Provenance.Memory);

    public RunPlan Plan(Run run, int number)
    {
        var legs = RunLeg.Of(job.Routing, run);
        foreach (var leg in legs.Where(l => l.LengthM < 0.001))
            findings.Add(Severity.Stop, "run-leg-zero", run.PathAt, ("run", run.Id), ("from", leg.From.Name), ("to", leg.To.Name));
        var stretches = run.Given is { } given ? [Stretch(run, given)] : Stretches(run, legs);
        var (straight, routed) = (stretches.Sum(s => s.StraightM), stretches.Sum(s => s.RoutedM));
        var (drip, sag) = (DripExtra(run), Sag(run, legs));
        var (service, slack) = (run.ServiceLoop.Metres, run.Slack.Metres);
        Term Of(string key, double metres) => Term.Plan($"routing.runs[{run.Id}].{key}", metres);
        var length = work.Apply(RoutingFormulas.CutLength, run.Id, Of("routed_m", routed), Of("drip_extra_m", drip), Of("sag_extra_m", sag),
            Term.Key($"routing.runs.{run.Id}.service-loop", service), Term.Key($"routing.runs.{run.Id}.slack", slack), TerminationM);
        var cut = work.Apply(PieceLength.RoundUpFormula, run.Id, length, job.Units == UnitFamily.Us ? PieceLength.UsStep
            : PieceLength.MetricStep);
        var to = job.Cabling.Chain.FirstOrDefault(e => e.Run == run.Id || e.SecondRun == run.Id);
        var (upright, level) = Clipped(stretches);
        var clips = upright + level > 0 ? Clips(run, upright, level) : 0;
        var corners = Enumerable.Range(1, Math.Max(0, legs.Count - 1)).Count(i => legs[i - 1].LengthM > 0 && legs[i].LengthM > 0
            && legs[i - 1].TurnDeg(legs[i]) > LeastTurnDeg);
        return CableLoop.Expected(new RunPlan(
            run.Id, number, run.Cable.Id, run.Cable.Name, run.Way, run.Path, (to?.SecondRun == run.Id ? to.Second : to?.From) ?? "", to?.Id
                ?? "", straight,
            straight > 0 ? routed / straight : Factor(run.Way).Number, run.DripLoops, run.DripDepth.Value.Metres, drip, service,
                TerminationM, cut, clips,
            clips > 0 ? code.Limit("clip-spacing").Value : null, run.Cable.BendRadiusM, run.Note ?? "")
        {
            Existing = run.Existing, GivenM = run.Given?.Metres, NewConnectors = run.NewConnectors, ClippedLevelM = level, ClippedUprightM = upright, Stretches = stretches, RoutedM = routed,
                SagExtraM = sag, SlackM = slack, UprightClipSpacingM = clips > 0 ? code.Limit("clip-spacing-upright").Value : null,
                Corners = corners,
            CornerReserveM = corners > 0 && run.Cable.BendRadiusM is { } radius
                ? corners * work.Apply(BendCorner.SavingFormula, $"{run.Id}, each corner; kept in the piece",
                run.Cable.Figure(CablePartKeys.BendRadius, radius)) : null,
            FromPowerM = run.FromPower?.Value.Metres, Supports = run.Supports,
        }, run.Cable, work);
    }

    // Measured along the way: nothing is allowed for what was not seen.
    private StretchPlan Stretch(Run run, Length given) => new(run.Path[0], run.Path[^1], run.Way, given.Metres, 0, AsMeasured,
        work.Apply(RoutingFormulas.RoutedLength, run.Id, Term.Key($"routing.runs.{run.Id}.length", given.Metres), AsMeasured));

    private StretchPlan[] Stretches(Run run, IReadOnlyList<RunLeg> legs)
    {
        var stretches = new List<StretchPlan>();
        for (var first = 0; first < legs.Count;)
        {
            var last = first;
            while (last + 1 < legs.Count && legs[last + 1].Way == legs[first].Way) last++;
            RunLeg[] part = [.. legs.Skip(first).Take(last - first + 1)];
            Subject subject = $"{run.Id}: {string.Join(" - ", part.Select(l => l.From.Name).Append(part[^1].To.Name))}";
            double[] metres = [.. part.Select(l => l.LengthM)];
            var straight = work.Apply(RoutingFormulas.StraightLegs, metres, subject, Term.Key($"routing.runs.{run.Id}.path", part.Length));
            var factor = Factor(part[0].Way);
            stretches.Add(new(part[0].From.Name, part[^1].To.Name, part[0].Way, straight, part.Where(l => l.Upright).Sum(l => l.LengthM),
                factor, work.Apply(RoutingFormulas.RoutedLength, subject, straight, factor)));
            first = last + 1;
        }
        return [.. stretches];
    }

    private static (double UprightM, double LevelM) Clipped(StretchPlan[] stretches)
    {
        StretchPlan[] clipped = [.. stretches.Where(s => s.Way is CableWay.Outside or CableWay.Attic)];
        var upright = clipped.Sum(s => s.UprightM * s.RouteFactor);
        return (upright, clipped.Sum(s => s.RoutedM) - upright);
    }

    private int Clips(Run run, double uprightM, double levelM)
    {
        Term Of(string key, double metres) => Term.Plan($"routing.runs[{run.Id}].{key}", metres);
        return (int)work.Apply(RoutingFormulas.ClipCount, run.Id, Of("clipped_level_m", levelM),
            Of("clip_spacing_m", code.Limit("clip-spacing").Value),
            Of("clipped_upright_m", uprightM), Of("upright_clip_spacing_m", code.Limit("clip-spacing-upright").Value)).Number;
    }

    private double Sag(Run run, IReadOnlyList<RunLeg> legs)
    {
        RunLeg[] spans = [.. legs.Where(l => l.Way == CableWay.Span && l.LengthM > 0)];
        if (spans.Length == 0) return 0;
        if (run.Dip is { } dip)
            return spans.Sum(l => work.Apply(Calc.Routing.Sag.LengthFormula, $"{run.Id}: {l.From.Name} - {l.To.Name}",
                Term.Key($"routing.runs.{run.Id}.path", l.LengthM), Term.Key($"routing.runs.{run.Id}.dip", dip.Metres)) - l.LengthM);
        findings.Add(Severity.Caution, "span-dip-missing", run.At, ("run", run.Id), ("from", spans[0].From.Name), ("to", spans[0].To.Name));
        return 0;
    }

    private double DripExtra(Run run)
    {
        if (run.DripLoops.Count == 0) return 0;
        var depth = run.DripDepth.Value.Metres;
        if (run.Cable.BendRadiusM is not { } radius)
        {
            findings.Add(Severity.Caution, "bend-radius-unknown", run.Cable.At, ("cable", run.Cable.Id), ("run", run.Id));
            return 0;
        }
        if (depth < radius)
        {
            findings.Add(Severity.Stop, "drip-loop-too-tight", run.DripDepth.At, ("run", run.Id), ("depth_m", depth),
                ("cable", run.Cable.Id),
                ("bend_radius_m", radius), ("least_m", LeastDepthM(radius)));
            return 0;
        }
        if (depth < LeastDripM)
            findings.Add(Severity.Caution, "drip-loop-shallow", run.DripDepth.At, ("run", run.Id), ("depth_m", depth),
                ("usual_m", LeastDripM), ("deep_m", 2 * LeastDripM));
        return run.DripLoops.Count * work.Apply(
            DripLoop.ExtraLengthFormula, run.Id, Term.Key($"routing.runs.{run.Id}.drip-depth", depth),
                run.Cable.Figure(CablePartKeys.BendRadius, radius));
    }

    // Rounded up to what a person writes: whole inches or centimetres.
    private double LeastDepthM(double radius) => job.Units == UnitFamily.Us ? Math.Ceiling((radius / 0.0254) - 1e-6) * 0.0254
        : Math.Ceiling((radius * 100) - 1e-6) / 100;

    // Allowance for the route as the cable really lies (memory: 1.05 on a visible surface, 1.10 to 1.15 fished through attic or wall).
    private static Constant Factor(CableWay way) => way switch
    {
        CableWay.Outside or CableWay.Conduit or CableWay.Buried => OnSurface,
        CableWay.Span => Free,
        CableWay.Attic or CableWay.CrawlSpace => InAttic,
        CableWay.Wall => Fished,
    };
}
