namespace InstallPacket.Plans.Reception;

/// <summary>The antennas of the chain. Which one serves a channel, the combiner decides.</summary>
internal sealed class AntennaSet
{
    private readonly ChainView _chain;

    public AntennaSet(Job job, FindingList findings)
    {
        _chain = new ChainView(job.Cabling);
        var first = _chain.Root;
        All = [.. _chain.Antennas.OrderByDescending(e => e == first).Select(e =>
            new AntennaView(e, e == first ? job.Reception.Aim : e.Aim, findings))];
    }

    /// <summary>All antennas, the one at the first inputs first.</summary>
    public IReadOnlyList<AntennaView> All { get; }

    /// <summary>The antenna that serves a frequency.</summary>
    public AntennaView For(double frequencyMHz) => All[IndexOf(frequencyMHz)];

    /// <summary>Its place among all.</summary>
    public int IndexOf(double frequencyMHz)
    {
        var element = _chain.AntennaFor(frequencyMHz);
        for (var i = 0; i < All.Count; i++)
            if (All[i].ElementId == element.Id) return i;
        return 0;
    }
}
