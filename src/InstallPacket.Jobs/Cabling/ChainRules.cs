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
            findings.Add(Severity.Stop, "outlet-missing", cabling.ChainAt, "the chain has no outlet", "at least one part of the kind outlet", "add an outlet; a set on a bare cable counts as one");
    }

    private static void CheckRoot(CablingSection cabling, FindingList findings)
    {
        var roots = cabling.Chain.Where(e => e.From is null).ToArray();
        foreach (var e in roots.Where(e => e.Part is not AntennaPart))
            findings.Add(Severity.Stop, "chain-unfed", e.At, $"cabling.chain.{e.Id} ({Word.Of(e.Part.Kind)}) has no `from`", "only the antenna has none", "say which element feeds it");
        foreach (var e in cabling.Chain.Where(e => e.Part is AntennaPart && e.From is not null))
            findings.Add(Severity.Stop, "chain-antenna-fed", e.FromAt, $"cabling.chain.{e.Id} is an antenna with a `from`", "an antenna is the root of the chain", "remove `from`");
        var (antennas, combiners) = (roots.Count(e => e.Part is AntennaPart), cabling.Chain.Count(e => e.Part is CombinerPart));
        if (antennas != combiners + 1)
            findings.Add(Severity.Stop, "chain-antenna-count", cabling.ChainAt, $"{antennas} {(antennas == 1 ? "antenna stands" : "antennas stand")} at the root of the chain, and {combiners} {(combiners == 1 ? "combiner joins" : "combiners join")} antennas",
                "one antenna without `from`, and one more for each combiner", "keep one antenna, or join each further one by the second input of a combiner");
    }

    private static void CheckCombiners(CablingSection cabling, FindingList findings)
    {
        foreach (var e in cabling.Chain.Where(e => e.Part is CombinerPart && e.Second is null))
            findings.Add(Severity.Stop, "combiner-half", e.At, $"cabling.chain.{e.Id} is a combiner without `second`", "a combiner joins two antennas", "say with `second` what feeds its other input, or take it out");
        foreach (var e in cabling.Chain.Where(e => e.Part is not CombinerPart && (e.Second ?? e.SecondRun) is not null))
            findings.Add(Severity.Stop, "combiner-half", e.SecondAt, $"cabling.chain.{e.Id} has a second input and is a part of the kind {Word.Of(e.Part.Kind)}", "only a combiner has two inputs", "remove `second`, or use a combiner");
        foreach (var part in cabling.Chain.Select(e => e.Part).OfType<CombinerPart>().Where(p => (p.FromMHz ?? p.ToMHz ?? p.SecondFromMHz ?? p.SecondToMHz) is null))
            findings.Add(Severity.Stop, "part-figure-missing", part.At, $"the combiner `{part.Id}` does not state its bands", "each station comes through the input whose band holds its channel", "add `from`, `to`, `second-from` and `second-to` from the maker's sheet");
    }

    private static void CheckPorts(CablingSection cabling, FindingList findings)
    {
        var inputs = cabling.Chain.Where(e => e.From is not null).Concat(cabling.Chain.Where(e => e.Second is not null).Select(e => e with { From = e.Second, FromPort = e.SecondPort, FromAt = e.SecondAt }));
        foreach (var port in inputs.GroupBy(e => (e.From, e.FromPort)).Where(g => g.Count() > 1))
            foreach (var e in port.Skip(1))
                findings.Add(Severity.Stop, "port-used-twice", e.FromAt, $"cabling.chain.{e.Id} uses output {e.FromPort} of `{e.From}`, which feeds `{port.First().Id}` already",
                    "one cable on each output", "take another output, or add a splitter");
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
            findings.Add(Severity.Stop, "chain-ring", e.FromAt, $"the chain runs in a ring: {string.Join(" is fed by ", ring)} is fed by {e.Id}", "every way back ends at the antenna",
                "correct the `from` that closes the ring");
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
