namespace InstallPacket.Jobs.Cabling;

/// <summary>Checks that the chain is one tree with the antenna at its root.</summary>
internal static class ChainRules
{
    public static void Check(CablingSection cabling, FindingList findings)
    {
        CheckRoot(cabling, findings);
        CheckCombiners(cabling, findings);
        CheckPorts(cabling, findings);
        CheckReach(cabling, findings);
        if (!cabling.Chain.Any(e => e.Part is OutletPart))
            findings.Add(Severity.Stop, "outlet-missing", cabling.ChainAt);
    }

    private static void CheckRoot(CablingSection cabling, FindingList findings)
    {
        var roots = cabling.Chain.Where(e => e.From is null).ToArray();
        foreach (var e in roots.Where(e => e.Part is not AntennaPart))
            findings.Add(Severity.Stop, "chain-unfed", e.At, ("element", e.Id), ("kind", Word.Of(e.Part.Kind)));
        foreach (var e in cabling.Chain.Where(e => e.Part is AntennaPart && e.From is not null))
            findings.Add(Severity.Stop, "chain-antenna-fed", e.FromAt, ("element", e.Id));
        var (antennas, combiners) = (roots.Count(e => e.Part is AntennaPart), cabling.Chain.Count(e => e.Part is CombinerPart));
        if (antennas != combiners + 1)
            findings.Add(Severity.Stop, "chain-antenna-count", cabling.ChainAt, ("antennas", antennas), ("combiners", combiners));
    }

    private static void CheckCombiners(CablingSection cabling, FindingList findings)
    {
        foreach (var e in cabling.Chain.Where(e => e.Part is CombinerPart && e.Second is null))
            findings.Add(Severity.Stop, "combiner-half", "combiner", e.At, ("element", e.Id));
        foreach (var e in cabling.Chain.Where(e => e.Part is not CombinerPart && (e.Second ?? e.SecondRun) is not null))
            findings.Add(Severity.Stop, "combiner-half", "other", e.SecondAt, ("element", e.Id), ("kind", Word.Of(e.Part.Kind)));
        foreach (var part in cabling.Chain.Select(e => e.Part).OfType<CombinerPart>().Where(p =>
            (p.FromMHz ?? p.ToMHz ?? p.SecondFromMHz ?? p.SecondToMHz) is null))
            findings.Add(Severity.Stop, "part-figure-missing", "combiner", part.At, ("part", part.Id));
    }

    private static void CheckPorts(CablingSection cabling, FindingList findings)
    {
        var inputs = cabling.Chain.Where(e =>
            e.From is not null).Concat(cabling.Chain.Where(e => e.Second is not null).Select(e =>
            e with { From = e.Second, FromPort = e.SecondPort, FromAt = e.SecondAt }));
        foreach (var port in inputs.GroupBy(e => (e.From, e.FromPort)).Where(g => g.Count() > 1))
            foreach (var e in port.Skip(1))
                findings.Add(Severity.Stop, "port-used-twice", e.FromAt, ("element", e.Id), ("port", e.FromPort), ("from", e.From),
                    ("other", port.First().Id));
    }

    // From every element the way back must end at the antenna. A ring is reported once, at its first element in the file.
    private static void CheckReach(CablingSection cabling, FindingList findings)
    {
        var byId = cabling.Chain.ToDictionary(e => e.Id, StringComparer.Ordinal);
        var reported = new HashSet<string>(StringComparer.Ordinal);
        foreach (var e in cabling.Chain.Where(e => !reported.Contains(e.Id)))
        {
            if (Ring(e, [e.Id], [e.Id]) is not { } ring) continue;
            reported.UnionWith(ring);
            findings.Add(Severity.Stop, "chain-ring", e.FromAt, ("ring", ring.Append(e.Id)));
        }

        // The way back from the last of these elements to the first, over either input; null when none closes.
        List<string>? Ring(Element first, List<string> way, HashSet<string> seen)
        {
            foreach (var feeder in new[] { byId[way[^1]].From, byId[way[^1]].Second }.OfType<string>())
            {
                if (feeder == first.Id) return way;
                if (seen.Add(feeder) && Ring(first, [.. way, feeder], seen) is { } closed) return closed;
            }
            return null;
        }
    }
}
