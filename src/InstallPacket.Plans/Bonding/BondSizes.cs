using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans.Bonding;

/// <summary>Sets each conductor beside the least size of the code family.</summary>
internal sealed class BondSizes(CodeFamily code, Workings work, FindingList findings)
{
    private const double Slack = 1e-9;

    /// <summary>All that could be judged.</summary>
    public List<BondSizePlan> Checked { get; } = [];

    /// <summary>Judges one conductor.</summary>
    /// <param name="use">Word in the table of the family.</param>
    /// <param name="what">In words.</param>
    /// <param name="part">The conductor.</param>
    /// <param name="at">Where the job names it.</param>
    public void Check(string use, string what, Part part, SourceSpan at)
    {
        if (part.Metal is not { } metal || ConductorSize.AreaM2(part, work) is not { } area)
        {
            Unknown(part, part.Metal is null ? "metal" : "cross-section` or `gauge", what);
            return;
        }
        var accepted = code.Bonding.Where(b => b.Use == use).ToArray();
        if (accepted.FirstOrDefault(b => b.Metal == metal) is not { } least)
        {
            findings.Add(Severity.Stop, "bond-metal-unfit", at, $"{what} is of {metal.Replace('-', ' ')}",
                $"the code family `{code.Id}` states a size for {string.Join(", ", accepted.Select(a => a.Words))} ({accepted[0].Source})", "choose a conductor of one of these");
            return;
        }
        Add(what, ConductorSize.Words(part), area * 1e6, least, at, "choose a conductor of that size or larger");
    }

    /// <summary>Judges the section of a rod, where the family states one for its metal.</summary>
    public void CheckRod(Part rod, double areaM2, SourceSpan at)
    {
        if (rod.Metal is { } metal && code.BondingOf("rod-section", metal) is { } least)
            Add("the rod", UnitText.Write(areaM2 * 1e6, 0, "mm²") + " " + metal.Replace('-', ' '), areaM2 * 1e6, least, at, "choose a thicker rod");
    }

    /// <summary>A figure that is missing; once for a part.</summary>
    public void Unknown(Part part, string figure, string what) => findings.Add(Severity.Caution, "bond-size-unknown", part.At,
        $"the part `{part.Id}` does not state `{figure}`", $"without it nothing is said about the size of {what}", "add it to the part from the marking or the maker's sheet");

    private void Add(string what, string size, double hasMm2, BondingLimit least, SourceSpan at, string remedy)
    {
        var share = work.Apply(BondingFormulas.BondSize, what, Term.Plan($"bonding.sizes[{what}].least_mm2", least.Mm2), Term.Plan($"bonding.sizes[{what}].has_mm2", hasMm2));
        Checked.Add(new(what, size, least.Words, least.Mm2, hasMm2, share, least.Document, least.Edition, least.Provenance));
        if (share > 1 + Slack)
            findings.Add(Severity.Stop, "bond-too-small", at, $"{what} is {size}: {UnitText.Write(hasMm2, 2, "mm²")}",
                $"at least {least.Words}, {UnitText.Write(least.Mm2, 2, "mm²")} ({least.Source})", remedy);
    }
}
