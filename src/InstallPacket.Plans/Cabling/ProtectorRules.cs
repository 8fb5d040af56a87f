namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about surge protectors: behind the grounding block, and bonded by it.</summary>
internal sealed class ProtectorRules(Job job, ChainView chain, FindingList findings)
{
    public void Check()
    {
        foreach (var e in job.Cabling.Chain.Where(e => e.Part is SurgeProtectorPart))
        {
            if (Behind(e).FirstOrDefault(b => b.Part is GroundingBlockPart) is { } block)
                findings.Add(Severity.Caution, "surge-before-block", e.At, ("element", e.Id), ("block", block.Id));
            if (BlockOf(e, job.Cabling) is null)
                findings.Add(Severity.Caution, "surge-unbonded", e.At, ("element", e.Id),
                    ("blocks", job.Cabling.Chain.Where(b => b.Part is GroundingBlockPart).Select(b => b.Id)));
        }
    }

    /// <summary>The grounding block that a protector is screwed to, which bonds it; null where a cable or another part lies between.</summary>
    public static Element? BlockOf(Element protector, CablingSection cabling) => cabling.Chain.FirstOrDefault(b =>
        b.Part is GroundingBlockPart && ((b.Id == protector.From && protector.Run is null) || (b.From == protector.Id && b.Run is null)));

    private IEnumerable<Element> Behind(Element e) => chain.FedBy(e).SelectMany(f => Behind(f).Prepend(f));
}
