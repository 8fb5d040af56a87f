namespace InstallPacket.Jobs.Reading;

/// <summary>Checks that the chain is one tree with the antenna at its root.</summary>
internal static class ChainRules
{
    public static void Check(CablingSection cabling, FindingList findings)
    {
        CheckRoot(cabling, findings);
        CheckPorts(cabling, findings);
        CheckReach(cabling, findings);
        foreach (var e in cabling.Chain.Where(e => e.Part.Kind is "cable" or "receiver" or "connector" or "mount" or "mast" or "fixing" or "bonding" or "sundry"))
            findings.Add(Severity.Stop, "part-unfit", e.At, $"cabling.chain.{e.Id} is a part of the kind {e.Part.Kind}", "a part that a signal passes, from the antenna to the outlets",
                "take it out of the chain; cables are named by `routing.runs`, the receiver by `cabling.receiver`");
        if (!cabling.Chain.Any(e => e.Part.Kind == "outlet"))
            findings.Add(Severity.Stop, "outlet-missing", cabling.ChainAt, "the chain has no outlet", "at least one part of the kind outlet", "add an outlet; a set on a bare cable counts as one");
    }

    private static void CheckRoot(CablingSection cabling, FindingList findings)
    {
        var roots = cabling.Chain.Where(e => e.From is null).ToArray();
        foreach (var e in roots.Where(e => e.Part.Kind != "antenna"))
            findings.Add(Severity.Stop, "chain-unfed", e.At, $"cabling.chain.{e.Id} ({e.Part.Kind}) has no `from`", "only the antenna has none", "say which element feeds it");
        foreach (var e in cabling.Chain.Where(e => e.Part.Kind == "antenna" && e.From is not null))
            findings.Add(Severity.Stop, "chain-antenna-fed", e.FromAt, $"cabling.chain.{e.Id} is an antenna with a `from`", "an antenna is the root of the chain", "remove `from`");
        if (roots.Count(e => e.Part.Kind == "antenna") != 1)
            findings.Add(Severity.Stop, "chain-antenna-count", cabling.ChainAt, $"{roots.Count(e => e.Part.Kind == "antenna")} antennas stand at the root of the chain",
                "exactly one antenna without `from`", "keep one antenna; a second one needs a job of its own");
    }

    private static void CheckPorts(CablingSection cabling, FindingList findings)
    {
        foreach (var port in cabling.Chain.Where(e => e.From is not null).GroupBy(e => (e.From, e.FromPort)).Where(g => g.Count() > 1))
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
            var ring = new List<string> { e.Id };
            var at = e.From;
            while (at is not null && at != e.Id && ring.Count <= byId.Count)
            {
                ring.Add(at);
                at = byId[at].From;
            }
            if (at != e.Id) continue;
            reported.UnionWith(ring);
            findings.Add(Severity.Stop, "chain-ring", e.FromAt, $"the chain runs in a ring: {string.Join(" is fed by ", ring)} is fed by {e.Id}", "every way back ends at the antenna",
                "correct the `from` that closes the ring");
        }
    }
}
