using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>A mast strapped to a chimney: refused unless the stack is sound and the code allows it.</summary>
internal sealed class ChimneyPlanner(Job job, CodeFamily code, Workings work, FindingList findings, LoadPathLedger ledger)
{
    /// <summary>Density of the masonry that is taken [kg/m3]: light brickwork, on the safe side.</summary>
    private const double DensityKgM3 = 1900;

    /// <summary>What the stack takes; null where it could not be checked.</summary>
    public ChimneyPlan? Plan { get; private set; }

    private static Given Of(string key, double number) => MountTerms.LoadPath("chimney." + key, number);

    public void Check(WindPlan wind)
    {
        if (job.Mounting.Chimney is not { } stack)
        {
            Refuse("unsurveyed", job.Mounting.At);
            return;
        }
        if (stack.State.Value != ChimneyState.Sound) Refuse("state", stack.State.At, ("state", Word.Of(stack.State.Value)));
        if (stack.Allowed.Value != Permission.Yes) Refuse("allowed", stack.Allowed.At, ("allowed", Word.Of(stack.Allowed.Value)));
        var couple = work.Apply(ChimneyStack.StrapFormula, "straps", MountTerms.Wind("moment_nm", wind.MomentNm),
            Term.Key("mounting.chimney.strap-spacing", stack.StrapSpacingM));
        var push = wind.ForceN + wind.LineLoadNPerM * wind.FreeM;
        var strap = work.Apply(MountingFormulas.UpperStrap, "upper strap", couple, Of("push_n", push));
        if (job.Mounting.Mount.BreakingN is { } breaking)
            ledger.Force("strap", "a leg of the strap", strap, breaking / Guys.BreakingFactor, "half the breaking strength of the strap",
                job.Mounting.Mount.ProvenanceOf(PartKeys.Breaking), stack.At);
        else ledger.Unknown("the strap of the chimney", "strap", job.Mounting.Mount.At, ("mount", job.Mounting.Mount.Id));
        Foot(stack, wind, push);
    }

    private void Foot(ChimneySection stack, WindPlan wind, double push)
    {
        var (gust, share) = (code.WeightAgainstGust, code.Limit("weight-share").Value);
        var (top, line) = gust ? (wind.GustForceN, wind.GustLineNPerM) : (wind.ForceN, wind.LineLoadNPerM);
        var force = top + line * wind.FreeM;
        var moment = work.Apply(MountingFormulas.FootMoment, "top of the chimney", MountTerms.Wind(gust ? "gust_force_n" : "force_n", top),
            MountTerms.Wind("free_m", wind.FreeM), MountTerms.Wind(gust ? "gust_line_n_per_m" : "line_load_n_per_m", line));
        Term density = Of("density_kg_m3", share * DensityKgM3), height = Term.Key("mounting.chimney.height", stack.HeightM);
        var weight = work.Apply(MountingFormulas.StackWeight, "chimney", density, height);
        var net = 1e6 * work.Apply(ChimneyStack.TensionFormula, "chimney", moment, Of("force_n", force), height,
            Term.Key("mounting.chimney.side", stack.SideM), density);
        Plan = new ChimneyPlan(push, force, density);
        ledger.Stress("chimney-foot", "the masonry at the foot of the chimney, which bears no tension", net + weight, weight,
            "its own weight; solid stack, flues and the wind on the stack itself are not in it and make it worse", "derived", stack.At);
    }

    private void Refuse(string way, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values) =>
        findings.Add(Severity.Stop, "chimney-refused", way, at, values);
}
