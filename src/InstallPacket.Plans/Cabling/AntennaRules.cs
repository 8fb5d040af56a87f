namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about several antennas: one that serves nothing, and two that bring the same channels.</summary>
internal sealed class AntennaRules(Job job, ReceptionPlan reception, ChainView chain, FindingList findings)
{
    public void Check()
    {
        if (chain.Antennas.Count() < 2) return;
        CheckIdle();
        foreach (var e in job.Cabling.Chain.Where(e => e is { Part: CombinerPart, From: not null, Second: not null })) CheckCombiner(e);
    }

    private void CheckIdle()
    {
        if (!reception.Wanted.Any()) return;
        var serving = reception.Wanted.Select(s => chain.AntennaFor(s.FrequencyMhz).Id).ToHashSet(StringComparer.Ordinal);
        foreach (var e in chain.Antennas.Where(e => !serving.Contains(e.Id)))
            findings.Add(Severity.Caution, "antenna-idle", e.At, ("antenna", e.Id), ("part", e.Part.Id),
                ("serving", serving.Order(StringComparer.Ordinal)));
    }

    // Where both inputs and the antennas on both are open to the same frequencies, a channel comes in twice.
    private void CheckCombiner(Element e)
    {
        var part = (CombinerPart)e.Part;
        foreach (var one in Antennas(chain.Feeding(e, 1)!.Value.Element))
            foreach (var other in Antennas(chain.Feeding(e, 2)!.Value.Element))
            {
                double?[] from = [part.FromMHz, part.SecondFromMHz, one.Part.FromMHz, other.Part.FromMHz];
                double?[] to = [part.ToMHz, part.SecondToMHz, one.Part.ToMHz, other.Part.ToMHz];
                if (to.Min() is not { } end || from.Max() is not { } start || start >= end) continue;
                findings.Add(Severity.Caution, "antennas-one-band", e.At, ("combiner", e.Id), ("one", one.Id), ("other", other.Id),
                    ("from_mhz", start), ("to_mhz", end),
                    ("channels", reception.Wanted.Where(s => s.FrequencyMhz >= start && s.FrequencyMhz <= end).Select(s => s.Id)));
            }
    }

    private IEnumerable<Element> Antennas(Element e) => e.Part is AntennaPart ? [e]
        : new[] { chain.Feeding(e, 1), chain.Feeding(e, 2) }.OfType<(Element Element, int Port)>().SelectMany(f => Antennas(f.Element));
}
