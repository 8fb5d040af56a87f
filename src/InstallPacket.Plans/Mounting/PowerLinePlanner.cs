using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>How far overhead wires must be from the mast, and whether they are.</summary>
internal sealed class PowerLinePlanner(Job job, Workings work, FindingList findings)
{
    private static readonly Constant ToFiftyKv = new("distance-to-wires-to-50-kv", PowerLineDistance.KeepClearM, "osha-1926-1408", Calc.Sources.Provenance.Read);

    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>Distance to keep where nothing is known of the voltage [m].</summary>
    public double RequiredM() => Required("overhead wires", ToFiftyKv);

    /// <summary>The wires of the survey.</summary>
    /// <param name="ladder">The ladder that is raised near them, or null.</param>
    public IReadOnlyList<PowerLinePlan> Lines(LadderSetPlan? ladder)
    {
        if (job.Siting.PowerLines is not { } lines)
        {
            findings.Add(Severity.Caution, "power-lines-unknown", job.Siting.At, "the job does not say whether overhead wires are near", "every survey looks for them",
                "add `siting.power-lines` (`{}` when there are none)");
            return [];
        }
        // Without its length the antenna would count as a point, and the distance come out too small.
        foreach (var antenna in job.Cabling.Antennas.Where(a => a.LengthM is null))
            if (lines.Count > 0)
                findings.Add(Severity.Stop, "part-figure-missing", antenna.At, $"the antenna `{antenna.Id}` does not state `length`", "without it the distance to overhead wires comes out too small", "add it to the part from the maker's sheet");
        return [.. lines.Select(l => Line(l, ladder))];
    }

    private PowerLinePlan Line(PowerLine l, LadderSetPlan? ladder)
    {
        Term clear = l.VoltageKv is { } kv ? work.Apply(PowerLineDistance.KeepClearFormula, l.Name, Term.Key($"siting.power-lines.{l.Name}.voltage", kv)) : ToFiftyKv;
        var required = Required(l.Name, clear);
        if (l.Distance.Metres < required)
            findings.Add(Severity.Stop, "power-line-near", l.At,
                $"{l.What} is {_print.Length(l.Distance.Metres)} from the mast foot",
                $"{_print.AtLeast(required)}: the larger of twice the length of antenna and mast, and the fall radius plus {_print.AtLeast(clear)} (CPSC-style instruction sheets; 29 CFR 1926.1408 table A)",
                "choose another place for the mast, or have the network operator make the line safe before anything is raised");
        else if (ladder is not null && l.Distance.Metres < ladder.RailM + ladder.FootM + clear)
            findings.Add(Severity.Caution, "ladder-near-line", l.At, $"{l.What} is {_print.Length(l.Distance.Metres)} from the mast foot, and the ladder is {_print.AtLeast(ladder.RailM)} long",
                $"a ladder that falls reaches {_print.AtLeast(ladder.RailM + ladder.FootM)}, and {_print.AtLeast(clear)} stay clear of the wire (29 CFR 1926.1408 table A)", "raise the ladder on the side away from the wire, with two people, rails that do not conduct");
        return new PowerLinePlan(l.Name, l.What, l.Distance.Metres, l.Height.Metres, l.Distance.Metres >= required) { RequiredM = required, KeepClearM = clear, VoltageKv = l.VoltageKv };
    }

    private double Required(Subject subject, Term clear)
    {
        var antenna = job.Cabling.Antennas.Max(a => a.LengthM ?? 0);
        Term length = Term.Plan("mounting.longest_antenna_m", antenna), mast = job.MastLength();
        var fall = work.Apply(MountingFormulas.FallRadius, "mast", mast, length);
        return work.Apply(PowerLineDistance.RequiredFormula, subject, length, mast, fall, clear);
    }
}
