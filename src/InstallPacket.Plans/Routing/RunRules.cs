using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Routing;

namespace InstallPacket.Plans.Routing;

/// <summary>Whether the runs can be laid so: corners, free spans, upright drops, trenches, power wiring.</summary>
internal sealed class RunRules(Job job, CodeFamily code, Workings work, FindingList findings)
{
    // A support every 50 ft: usual in an industrial guide (read).
    private const double DropM = 50 * 0.3048;

    // Beyond this a turn is a way back, which no bend makes.
    private const double MostTurnDeg = 175;

    public void Check()
    {
        foreach (var run in job.Routing.Runs)
        {
            var legs = RunLeg.Of(job.Routing, run).Where(l => l.LengthM > 0.001).ToArray();
            if (run.Cable.BendRadiusM is { } radius && !run.Existing) Corners(run, legs, radius);
            foreach (var leg in legs.Where(l => l.Way == CableWay.Span)) Span(run, leg);
            foreach (var leg in legs.Where(l => l.Way == CableWay.Buried && l.From.HeightM >= 0 && l.To.HeightM >= 0))
                findings.Add(Severity.Caution, "buried-above-ground", run.PathAt, ("run", run.Id), ("from", leg.From.Name),
                    ("to", leg.To.Name));
            Drops(run, legs);
            Power(run, legs);
        }
    }

    // The bend at either end of a leg takes its part of it.
    private void Corners(Run run, RunLeg[] legs, double radius)
    {
        double Takes(int i) => i <= 0 || i >= legs.Length ? 0 : legs[i - 1].TurnDeg(legs[i]) is var turn && turn > MostTurnDeg
            ? double.PositiveInfinity : BendTangent.LengthM(radius, turn);
        for (var i = 0; i < legs.Length; i++)
        {
            var needed = Takes(i) + Takes(i + 1);
            if (legs[i].LengthM >= needed - 1e-9) continue;
            foreach (var corner in new[] { i, i + 1 }.Where(k => Takes(k) is > 0 and < double.PositiveInfinity))
            {
                var turn = legs[corner - 1].TurnDeg(legs[corner]);
                work.Apply(BendTangent.LengthFormula, $"{run.Id} at {legs[corner].From.Name}, corner {UnitText.Number(corner, 0)}",
                    run.Cable.Figure(CablePartKeys.BendRadius, radius), Term.Key($"routing.runs.{run.Id}.path", turn));
            }
            findings.Add(Severity.Caution, "corner-too-tight", run.PathAt, ("run", run.Id), ("length_m", legs[i].LengthM),
                ("from", legs[i].From.Name),
                ("to", legs[i].To.Name), ("needed_m", needed), ("cable", run.Cable.Id), ("bend_radius_m", radius),
                    ("source", run.Cable.ProvenanceOf(CablePartKeys.BendRadius)));
            return;
        }
    }

    private void Span(Run run, RunLeg leg)
    {
        var spacing = code.Limit("clip-spacing");
        if (run.Messenger || leg.LengthM <= spacing.Value) return;
        findings.Add(Severity.Caution, "span-too-long", run.PathAt, ("run", run.Id), ("length_m", leg.LengthM), ("from", leg.From.Name),
            ("to", leg.To.Name),
            ("most_m", spacing.Value), ("rule", spacing.Source()));
    }

    private void Drops(Run run, RunLeg[] legs)
    {
        double[] drops = [.. legs.Where(l => l.Upright && l.Way is CableWay.Wall or CableWay.Conduit).Select(l => Math.Abs(l.RiseM))];
        var needed = drops.Sum(d => (int)Math.Floor(d / DropM));
        if (needed > run.Supports)
            findings.Add(Severity.Caution, "drop-unsupported", run.PathAt, ("run", run.Id), ("drop_m", drops.Max()),
                ("supports", run.Supports),
                ("most_m", DropM), ("needed", needed));
    }

    private void Power(Run run, RunLeg[] legs)
    {
        if (run.FromPower is not { } distance) return;
        var limit = legs.Select(l => code.FromPower(l.Way)).OfType<CodeLimit>().MaxBy(l => l.Value);
        if (limit is null || distance.Value.Metres >= limit.Value - 1e-9) return;
        findings.Add(Severity.Stop, "run-near-power", distance.At, ("run", run.Id), ("distance_m", distance.Value.Metres),
            ("least_m", limit.Value),
            ("rule", limit.Source()));
    }
}
