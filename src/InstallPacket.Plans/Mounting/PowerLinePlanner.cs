using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>How far overhead wires must be from the mast, and whether they are.</summary>
internal sealed class PowerLinePlanner(Job job, Workings work, FindingList findings)
{
    private static readonly Constant ToFiftyKv = new("distance-to-wires-to-50-kv", PowerLineDistance.KeepClearM, "osha-1926-1408",
        Calc.Sources.Provenance.Read);

    /// <summary>Distance to keep where nothing is known of the voltage [m].</summary>
    public double RequiredM() => Required("overhead wires", ToFiftyKv);

    /// <summary>The wires of the survey.</summary>
    /// <param name="ladder">The ladder that is raised near them, or null.</param>
    public IReadOnlyList<PowerLinePlan> Lines(LadderSetPlan? ladder)
    {
        if (job.Siting.PowerLines is not { } lines)
        {
            findings.Add(Severity.Caution, "power-lines-unknown", job.Siting.At);
            return [];
        }
        // Without its length the antenna would count as a point, and the distance come out too small.
        foreach (var antenna in job.Cabling.Antennas.Where(a => a.LengthM is null))
            if (lines.Count > 0)
                findings.Add(Severity.Stop, "part-figure-missing", "antenna-length", antenna.At, ("part", antenna.Id));
        return [.. lines.Select(l => Line(l, ladder))];
    }

    private PowerLinePlan Line(PowerLine l, LadderSetPlan? ladder)
    {
        Term clear = l.VoltageKv is { } kv
            ? work.Apply(PowerLineDistance.KeepClearFormula, l.Name, Term.Key($"siting.power-lines.{l.Name}.voltage", kv)) : ToFiftyKv;
        var required = Required(l.Name, clear);
        if (l.Distance.Metres < required)
            findings.Add(Severity.Stop, "power-line-near", l.At, ("wire", l.What), ("distance_m", l.Distance.Metres),
                ("required_m", required),
                ("clear_m", clear.Number));
        else if (ladder is not null && l.Distance.Metres < ladder.RailM + ladder.FootM + clear)
            findings.Add(Severity.Caution, "ladder-near-line", l.At, ("wire", l.What), ("distance_m", l.Distance.Metres),
                ("ladder_m", ladder.RailM),
                ("reach_m", ladder.RailM + ladder.FootM), ("clear_m", clear.Number));
        return new PowerLinePlan(l.Name, l.What, l.Distance.Metres, l.Height.Metres, l.Distance.Metres >= required) { RequiredM = required,
            KeepClearM = clear, VoltageKv = l.VoltageKv };
    }

    private double Required(Subject subject, Term clear)
    {
        var antenna = job.Cabling.Antennas.Max(a => a.LengthM ?? 0);
        Term length = Term.Plan("mounting.longest_antenna_m", antenna), mast = job.MastLength();
        var fall = work.Apply(MountingFormulas.FallRadius, "mast", mast, length);
        return work.Apply(PowerLineDistance.RequiredFormula, subject, length, mast, fall, clear);
    }
}
