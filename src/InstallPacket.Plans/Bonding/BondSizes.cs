using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Sets each conductor beside the least size of the code family.</summary>
internal sealed class BondSizes(CodeFamily code, Workings work, FindingList findings)
{
    private const double Slack = 1e-9;
    private const string Rod = "the rod";

    /// <summary>All that could be judged.</summary>
    public List<BondSizePlan> Checked { get; } = [];

    /// <summary>Judges one conductor.</summary>
    /// <param name="use">Word in the table of the family.</param>
    /// <param name="what">In words.</param>
    /// <param name="part">The conductor.</param>
    /// <param name="at">Where the job names it.</param>
    public void Check(string use, string what, BondingPart part, SourceSpan at)
    {
        if (part.Metal is not { } metal || ConductorSize.AreaM2(part, work) is not { } area)
        {
            Unknown(part, part.Metal is null ? "metal" : "cross-section` or `gauge", what);
            return;
        }
        var accepted = code.Bonding.Where(b => b.Use == use).ToArray();
        if (accepted.FirstOrDefault(b => b.Metal == Word.Of(metal)) is not { } least)
        {
            findings.Add(Severity.Stop, "bond-metal-unfit", at, ("what", what), ("metal", Word.Of(metal)), ("family", code.Id),
                ("sizes", accepted.Select(a => a.Size.Values())), ("rule", accepted[0].Source()));
            return;
        }
        Add(what, ConductorSize.Of(part), area * 1e6, least, at);
    }

    /// <summary>Judges the section of a rod, where the family states one for its metal.</summary>
    public void CheckRod(BondingPart rod, double areaM2, SourceSpan at)
    {
        if (rod.Metal is { } metal && code.BondingOf("rod-section", Word.Of(metal)) is { } least)
            Add(Rod, new(Math.Round(areaM2 * 1e6), "mm2", Word.Of(metal)), areaM2 * 1e6, least, at);
    }

    /// <summary>A figure that is missing; once for a part.</summary>
    public void Unknown(Part part, string figure, string what) =>
        findings.Add(Severity.Caution, "bond-size-unknown", part.At, ("part", part.Id), ("figure", figure), ("what", what));

    private void Add(string what, BondSize size, double hasMm2, BondingLimit least, SourceSpan at)
    {
        var share = work.Apply(BondingFormulas.BondSize, what, Term.Plan($"bonding.sizes[{what}].least_mm2", least.Mm2),
            Term.Plan($"bonding.sizes[{what}].has_mm2", hasMm2));
        Checked.Add(new(what, size, least.Size, least.Mm2, hasMm2, share, least.Document, least.Edition, least.Provenance));
        if (share > 1 + Slack)
            findings.Add(Severity.Stop, "bond-too-small", what == Rod ? "rod" : "", at, ("what", what), ("size", size.Values()),
                ("has_mm2", hasMm2),
                ("least", least.Size.Values()), ("least_mm2", least.Mm2), ("rule", least.Source()));
    }
}
