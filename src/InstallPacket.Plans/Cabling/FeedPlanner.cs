using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Follows direct current from each power inserter toward the antenna, as a graph: which ports pass, what drops, who gets
/// it.</summary>
internal sealed class FeedPlanner(Job job, ChainView chain, RoutingPlan routing, Workings work, FindingList findings)
{
    // Without a figure of the maker an amplifier is trusted to a tenth below its nominal voltage (common practice).
    private const double LeastShare = 0.9;

    public IReadOnlyList<FeedPlan> Plan()
    {
        var feeds = job.Cabling.Chain.Where(e => e.Part is AmplifierPart
            && e.Part.SupplyV is not null).Select(Feed).OfType<FeedPlan>().ToArray();
        foreach (var inserter in job.Cabling.Chain.Where(e => e.Part is PowerInserterPart)) CheckInserter(inserter);
        return feeds;
    }

    private FeedPlan? Feed(Element amplifier)
    {
        var (reached, blocked) = Search(amplifier);
        if (reached.Count > 1)
            findings.Add(Severity.Stop, "two-supplies", reached[1][^1].At, ("amplifier", amplifier.Id), ("one", reached[0][^1].Id),
                ("other", reached[1][^1].Id));
        if (reached.Count > 0) return Calculate(amplifier, reached[0]);
        if (blocked is { } at)
            findings.Add(Severity.Stop, "power-blocked", at.At, ("amplifier", amplifier.Id), ("element", at.Id), ("part", at.Part.Name));
        else
            findings.Add(Severity.Stop, "power-missing", amplifier.At, ("amplifier", amplifier.Id),
                ("supply_v", amplifier.Part.SupplyV!.Value));
        return null;
    }

    // All ways down from the amplifier that end at an inserter; and the first part that keeps an inserter off.
    private (List<IReadOnlyList<Element>> Reached, Element? Blocked) Search(Element amplifier)
    {
        var reached = new List<IReadOnlyList<Element>>();
        Element? blocked = null;
        Visit(amplifier, [amplifier]);
        return (reached, blocked);

        void Visit(Element at, Element[] way)
        {
            foreach (var next in chain.FedBy(at).OrderBy(e => e.FromPort))
            {
                if (at != amplifier && !at.Part.PassesPower(next.FromPort))
                {
                    if (HoldsInserter(next)) blocked ??= at;
                }
                else if (next.Part is PowerInserterPart) reached.Add([.. way, next]);
                else Visit(next, [.. way, next]);
            }
        }
    }

    private bool HoldsInserter(Element e) => e.Part is PowerInserterPart || chain.FedBy(e).Any(HoldsInserter);

    private FeedPlan Calculate(Element amplifier, IReadOnlyList<Element> way)
    {
        var (inserter, nominal) = (way[^1], amplifier.Part.SupplyV!.Value);
        var (part, source) = ((AmplifierPart)amplifier.Part, (PowerInserterPart)inserter.Part);
        var supply = inserter.Part.SupplyV ?? nominal;
        if (Math.Abs(supply - nominal) > 0.5)
            findings.Add(Severity.Stop, "supply-mismatch", inserter.At, ("inserter", inserter.Id), ("supply_v", supply),
                ("amplifier", amplifier.Id),
                ("needs_v", nominal));
        if (part.DrawsMa is { } draws && source.LargestCurrentMa is { } most && draws > most)
            findings.Add(Severity.Stop, "supply-overloaded", inserter.At, ("amplifier", amplifier.Id), ("draws_ma", draws),
                ("inserter", inserter.Id),
                ("most_ma", most), ("source", source.ProvenanceOf(PowerInserterPartKeys.LargestCurrent)));
        var ohm = LoopOhm(amplifier, way);
        double? arrives = ohm is { } r && part.DrawsMa is { } ma
            ? work.Apply(DcFeed.ConstantCurrentFormula, amplifier.Id, inserter.Part.Figure(PartKeys.Supply, supply),
                amplifier.Part.Figure(AmplifierPartKeys.Draws, ma).In(0.001),
                Term.Plan($"cabling.feeds[{amplifier.Id}].loop_ohm", r)).Number : null;
        var least = part.LeastSupplyV ?? LeastShare * nominal;
        if (arrives is { } v && v < least)
            findings.Add(Severity.Stop, "supply-low", part.LeastSupplyV is null ? "unstated" : "stated", amplifier.At, ("arrives_v", v),
                ("amplifier", amplifier.Id),
                ("supply_v", supply), ("loop_ohm", ohm), ("least_v", least), ("nominal_v", nominal), ("part", amplifier.Part.Id),
                ("source", part.ProvenanceOf(AmplifierPartKeys.LeastSupply)));
        return new FeedPlan(amplifier.Id, inserter.Id, supply, part.DrawsMa, ohm, arrives, least, [.. way.Select(e => e.Id)])
        {
            OldCable = way.Any(e => job.Routing.Runs.Any(r => r.Id == e.Run && r.Cable.LoopLeastOhmPerKm < r.Cable.LoopMostOhmPerKm)),
        };
    }

    // Unknown as soon as one cable on the way does not say its resistance; the most of a cable of unknown kind.
    private double? LoopOhm(Element amplifier, IReadOnlyList<Element> way)
    {
        var sum = 0.0;
        foreach (var e in way.Skip(1).Where(e => e.Run is not null))
        {
            var (run, cable) = (routing.Runs.First(r => r.Id == e.Run), job.Routing.Runs.First(r => r.Id == e.Run).Cable);
            if (cable.LoopMostOhmPerKm is not { } perKm) return null;
            sum += CableLoop.Ohm(work, $"run {run.Id}, supply of {amplifier.Id}", cable, cable.LoopMostKey, perKm, run.Id, run.LengthM);
        }
        return sum;
    }

    // The inserter sends its current toward the antenna. What it meets there first must want it.
    private void CheckInserter(Element inserter)
    {
        var way = chain.PathTo(inserter);
        for (var i = way.Count - 2; i >= 0; i--)
        {
            var e = way[i];
            if (e.Part is AmplifierPart && e.Part.SupplyV is not null) return;
            if (e.Part.ShortsPower)
            {
                findings.Add(Severity.Stop, "supply-shorted", inserter.At, ("inserter", inserter.Id), ("element", e.Id),
                    ("part", e.Part.Name));
                return;
            }
            if (!e.Part.PassesPower(way[i + 1].FromPort)) break;
        }
        if (!way.Any(e => e.Part is AmplifierPart && e.Part.SupplyV is not null))
            findings.Add(Severity.Stop, "supply-unused", inserter.At, ("inserter", inserter.Id));
    }
}
