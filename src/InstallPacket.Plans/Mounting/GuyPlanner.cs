using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>Guys: angle, pull, wire, anchors, and the push that they put on the mast.</summary>
internal sealed class GuyPlanner(Job job, CodeFamily code, Workings work, FindingList findings, LoadPathLedger ledger)
{
    private static readonly Constant HingedEnds = new("hinged-ends", 1, "aisc-360", Calc.Sources.Provenance.Derived);

    /// <summary>The push down the mast; null without guys.</summary>
    public ColumnPlan? Column { get; private set; }

    private static Given Of(int ring, string key, double number) => MountTerms.LoadPath($"guys[{ring}].{key}", number);

    private static Given Pushed(string key, double number) => MountTerms.LoadPath("column." + key, number);

    public IReadOnlyList<GuySetPlan> Plan(WindPlan wind, double? weightN)
    {
        if (job.Mounting.Guys is not { } guys || job.Mounting.OnePlate)
        {
            AskedFor();
            return [];
        }
        var forces = MastFrame.Guyed(job.Mounting).Forces(wind.ForceN, wind.LineLoadNPerM);
        var sets = guys.Sets.Select((s, i) => Set(guys, s, i + 1, Math.Abs(forces.ReactionsN[i + 2]))).ToArray();
        Wire(guys, sets);
        Push(guys, sets, wind, weightN);
        return sets;
    }

    // Where the family names no height, the strength of the tube decides.
    private void AskedFor()
    {
        var m = job.Mounting;
        if (code.LimitOf("guys-above") is not { } limit || m.FreeLength.Metres <= limit.Value) return;
        findings.Add(Severity.Caution, "guys-asked-for", m.FreeLengthAt, ("free_m", m.FreeLength.Metres), ("most_m", limit.Value));
    }

    private GuySetPlan Set(GuySection guys, GuySet s, int number, double push)
    {
        Subject subject = $"ring {number}";
        var angle = work.Apply(MountingFormulas.GuyAngle, subject, Term.Key("mounting.guys.sets.anchor-radius", s.RadiusM),
            Term.Key("mounting.guys.sets.ring", s.RingM)).Number;
        if (angle < Guys.LeastAngleDeg - 1e-6)
            findings.Add(Severity.Stop, "guy-angle-small", s.At, ("ring_m", s.RingM), ("angle_deg", angle),
                ("least_deg", Guys.LeastAngleDeg),
                ("radius_m", Guys.AnchorRadiusM(s.RingM, Guys.LeastAngleDeg)));
        // Outside 1 to 89 deg the equation runs away; the finding above, or plain sight, stops such guys.
        angle = Math.Clamp(angle, 1, 89);
        var fromWind = work.Apply(Guys.WorstTensionFormula, subject, Of(number, "push_n", push), Of(number, "angle_deg", angle),
            Of(number, "count", s.Count));
        var tension = work.Apply(MountingFormulas.GuyPull, subject, fromWind, Term.Key("mounting.guys.pretension", guys.PretensionN));
        return new(s.RingM, s.Count, s.RadiusM, angle, push, tension, Math.Sqrt(s.RingM * s.RingM + s.RadiusM * s.RadiusM));
    }

    private void Wire(GuySection guys, GuySetPlan[] sets)
    {
        var most = sets.Max(s => s.TensionN);
        if (guys.Part.BreakingN is { } breaking)
            ledger.Force("guy-wire", "the guy wire", most, breaking / Guys.BreakingFactor, "half its breaking strength, common practice",
                guys.Part.ProvenanceOf(PartKeys.Breaking), guys.At);
        else ledger.Unknown("the guy wire", "guy", guys.Part.At, ("guy", guys.Part.Id));
        if (guys.AnchorPullN is { } anchor)
            ledger.Force("guy-anchor", "the anchor of a guy: " + guys.Anchor, most, anchor, guys.Stated
                ?? "stated in the job: name the sheet or the test", "stated", guys.At);
        else ledger.Unknown("the anchor of the guys", "anchor", guys.At);
    }

    private void Push(GuySection guys, GuySetPlan[] sets, WindPlan wind, double? weightN)
    {
        var material = MastTubes.Material(job.Mounting.Mast.Material ?? "") ?? MastTubes.UnknownSteel;
        var tube = new MastSection(job.Mounting.Mast.DiameterM!.Value, job.Mounting.Mast.WallM!.Value);
        var push = sets.Select((s, i) =>
            work.Apply(Guys.WorstCompressionFormula, $"ring {i + 1}", Of(i + 1, "push_n", s.PushN), Of(i + 1, "angle_deg", s.AngleDeg),
            Of(i + 1, "count", s.Count)).Number).Sum();
        var still = sets.Sum(s => s.Count * guys.PretensionN * Math.Cos(s.AngleDeg * Math.PI / 180));
        var total = work.Apply(MountingFormulas.ColumnPush, "mast", Pushed("push_n", push), Pushed("still_n", still),
            Pushed("weight_n", weightN ?? 0));
        var supports = MastFrame.Guyed(job.Mounting).SupportsM;
        var span = supports.Skip(1).Zip(supports, (upper, lower) => upper - lower).Max();
        var euler = work.Apply(Guys.EulerFormula, "mast", MountTerms.Stiffness(tube, material.ModulusPa), Pushed("span_m", span),
            HingedEnds);
        var allowable = work.Apply(Guys.AllowableCompressionFormula, "mast", euler);
        ledger.Force("mast-column", "the mast against buckling under its guys", total, allowable, "Euler, allowable strength", "memory",
            guys.At);
        var use = work.Apply(MountingFormulas.ColumnUse, "mast", MountTerms.Wind("use_share", wind.UseShare),
            Pushed("use_share", total / allowable));
        Column = new(push, still, weightN ?? 0, span, total / allowable);
        ledger.Add(new LoadPathCheck("mast-together", "the mast in bending and push together", use, "straight line between both",
            "derived"), guys.At,
            ("bending_share", wind.UseShare), ("push_share", total / allowable));
    }
}
