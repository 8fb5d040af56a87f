namespace InstallPacket.Plans.Cabling;

/// <summary>Follows direct current from each power inserter as a net: which ports pass, what adds up, what drops, who gets it.</summary>
internal sealed class FeedPlanner(Job job, ChainView chain, RoutingPlan routing, Workings work, FindingList findings)
{
    // Without a figure of the maker an amplifier is trusted to a tenth below its nominal voltage (common practice).
    private const double LeastShare = 0.9;

    private readonly FeedNet[] _nets =
        [.. job.Cabling.Chain.Where(e => e.Part is PowerInserterPart).Select(e => new FeedNet(chain, e))];

    public IReadOnlyList<FeedPlan> Plan()
    {
        var feeds = job.Cabling.Chain.Where(IsFed).Select(Feed).OfType<FeedPlan>().ToArray();
        foreach (var net in _nets) CheckNet(net);
        return feeds;
    }

    private static bool IsFed(Element e) => e.Part is AmplifierPart && e.Part.SupplyV is not null;

    private bool HasSupply(Element amplifier) => _nets.Any(n => n.Amplifiers.Any(a => a.Element == amplifier));

    private FeedPlan? Feed(Element amplifier)
    {
        var nets = _nets.Where(n => n.Amplifiers.Any(a => a.Element == amplifier)).ToArray();
        if (nets.Length > 1)
            findings.Add(Severity.Stop, "two-supplies", nets[1].Inserter.At, ("amplifier", amplifier.Id), ("one", nets[0].Inserter.Id),
                ("other", nets[1].Inserter.Id));
        if (nets.Length > 0) return Calculate(nets[0], nets[0].Amplifiers.First(a => a.Element == amplifier));
        if (Blocking(amplifier, amplifier) is { } at)
            findings.Add(Severity.Stop, "power-blocked", at.At, ("amplifier", amplifier.Id), ("element", at.Id), ("part", at.Part.Name));
        else
            findings.Add(Severity.Stop, "power-missing", amplifier.At, ("amplifier", amplifier.Id),
                ("supply_v", amplifier.Part.SupplyV!.Value));
        return null;
    }

    // The first part down the line that keeps an inserter off an amplifier.
    private Element? Blocking(Element amplifier, Element at, int input = 1)
    {
        foreach (var (next, port, into) in chain.Feeds(at).OrderBy(f => f.Port))
        {
            var passes = at == amplifier || at.Part.PassesPower(port, input);
            if (!passes && HoldsInserter(next)) return at;
            if (passes && Blocking(amplifier, next, into) is { } further) return further;
        }
        return null;
    }

    private bool HoldsInserter(Element e) => e.Part is PowerInserterPart || chain.FedBy(e).Any(HoldsInserter);

    private FeedPlan Calculate(FeedNet net, FeedNode at)
    {
        var (amplifier, inserter, nominal) = (at.Element, net.Inserter, at.Element.Part.SupplyV!.Value);
        var (part, source, sums) = ((AmplifierPart)amplifier.Part, (PowerInserterPart)inserter.Part, new FeedSums(job, net, routing, work));
        var supply = source.SupplyV ?? nominal;
        if (Math.Abs(supply - nominal) > 0.5)
            findings.Add(Severity.Stop, "supply-mismatch", inserter.At, ("inserter", inserter.Id), ("supply_v", supply),
                ("amplifier", amplifier.Id), ("needs_v", nominal));
        var feed = new FeedPlan(amplifier.Id, inserter.Id, supply, part.DrawsMa, sums.WayOhm(at), sums.VoltageV(at)?.Number,
            part.LeastSupplyV ?? LeastShare * nominal, [.. at.Path.Reverse().Select(n => n.Element.Id)])
        {
            OldCable = sums.OldCable(at),
            Others = [.. net.Amplifiers.Where(a => a != at).Select(a => a.Element.Id)],
            TotalMa = 1000 * sums.CurrentA(net.Amplifiers[0].Path[0])?.Number,
            LargestMa = source.LargestCurrentMa,
            SteeredPorts = at.Path.Count(n => n.Steered),
        };
        if (feed.ArrivesV < feed.LeastV)
            findings.Add(Severity.Stop, "supply-low", part.LeastSupplyV is null ? "unstated" : "stated", amplifier.At,
                ("arrives_v", feed.ArrivesV), ("amplifier", amplifier.Id), ("supply_v", supply), ("loop_ohm", feed.LoopOhm),
                ("others", feed.Others), ("steered", feed.SteeredPorts), ("least_v", feed.LeastV), ("nominal_v", nominal),
                ("part", part.Id), ("source", part.ProvenanceOf(AmplifierPartKeys.LeastSupply)));
        return feed;
    }

    private void CheckNet(FeedNet net)
    {
        var inserter = net.Inserter;
        foreach (var e in net.Shorts.Select(n => n.Element))
            findings.Add(Severity.Stop, "supply-shorted", inserter.At, ("inserter", inserter.Id), ("element", e.Id), ("part", e.Part.Name));
        foreach (var node in net.Outlets)
            findings.Add(Severity.Stop, "supply-at-outlet", inserter.At, ("inserter", inserter.Id), ("outlet", node.Element.Id),
                ("serves", node.Element.Serves ?? node.Element.Id), ("through", node.Before!.Element.Id), ("part", node.Element.Part.Id));
        if (net.Amplifiers.Count == 0 && net.Shorts.Count == 0 && !Before(inserter).Any(e => IsFed(e) && !HasSupply(e)))
            findings.Add(Severity.Stop, "supply-unused", inserter.At, ("inserter", inserter.Id));
        CheckCurrent(net);
    }

    // All that lies toward the antennas.
    private IEnumerable<Element> Before(Element e) => new[] { chain.Feeding(e, 1), chain.Feeding(e, 2) }
        .OfType<(Element Element, int Port)>().SelectMany(f => Before(f.Element).Prepend(f.Element));

    // Several amplifiers add up; of one alone the supply that belongs to it is taken to be enough where nobody states its rating.
    private void CheckCurrent(FeedNet net)
    {
        var (source, amplifiers) = ((PowerInserterPart)net.Inserter.Part, net.Amplifiers.Select(a => a.Element).ToArray());
        var draws = amplifiers.Select(a => ((AmplifierPart)a.Part).DrawsMa).ToArray();
        string[] names = [.. amplifiers.Select(a => a.Id)];
        if (source.LargestCurrentMa is { } most && draws.Sum() is { } sum && sum > most)
            findings.Add(Severity.Stop, "supply-overloaded", net.Inserter.At, ("amplifiers", names), ("draws_ma", sum),
                ("inserter", net.Inserter.Id), ("most_ma", most), ("source", source.ProvenanceOf(PowerInserterPartKeys.LargestCurrent)));
        else if (amplifiers.Length > 1 && (source.LargestCurrentMa is null || draws.Contains(null)))
            findings.Add(Severity.Caution, "supply-sum-unknown", net.Inserter.At, ("inserter", net.Inserter.Id), ("amplifiers", names),
                ("rating", source.LargestCurrentMa is null ? source.Id : ""),
                ("parts", amplifiers.Where((_, i) => draws[i] is null).Select(a => a.Part.Id).Distinct().ToArray()));
    }
}
