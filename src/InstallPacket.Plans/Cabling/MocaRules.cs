namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about a home network over coax on the tree of the antenna.</summary>
internal sealed class MocaRules(Job job, ChainView chain, FindingList findings)
{
    private const double FromMhz = 1125;
    private const double ToMhz = 1675;

    /// <summary>Checks the tree.</summary>
    /// <param name="at">Where the job says that the network is there.</param>
    public void Check(SourceSpan at)
    {
        if (job.Cabling.Chain.FirstOrDefault(e => e.Part is AmplifierPart) is { } amplifier)
        {
            if (!chain.FedBy(amplifier).Any(e => Stops(e.Part)))
                findings.Add(Severity.Caution, "moca-amplifier", at, ("amplifier", amplifier.Id));
        }
        else if (!Common().Any(e => Stops(e.Part)))
            findings.Add(Severity.Caution, "moca-antenna", at, ("antennas", chain.Antennas.Select(e => e.Id)));
        var narrow = job.Cabling.Chain.Where(e => e.Part is SplitterPart or TapPart && !(e.Part.ToMHz >= ToMhz)).ToArray();
        if (narrow.Length > 0)
            findings.Add(Severity.Caution, "moca-splitter", narrow[0].At, ("elements", narrow.Select(e => e.Id)),
                ("parts", narrow.Select(e => e.Part.Id).Distinct(StringComparer.Ordinal)));
    }

    // From the antenna to the first part with several outputs.
    private IEnumerable<Element> Common() => chain.Outlets.FirstOrDefault() is { } outlet
        ? chain.PathTo(outlet).TakeWhile(e => e.Part.Outputs == 1) : [];

    private static bool Stops(Part part) => part is FilterPart { ToMHz: null or < FromMhz };
}
