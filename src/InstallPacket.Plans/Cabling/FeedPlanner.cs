using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Cabling;

/// <summary>Follows direct current from each power inserter toward the antenna, as a graph: which ports pass, what drops, who gets it.</summary>
internal sealed class FeedPlanner(Job job, ChainView chain, RoutingPlan routing, Workings work, FindingList findings)
{
    // Without a figure of the maker an amplifier is trusted to a tenth below its nominal voltage (common practice).
    private const double LeastShare = 0.9;
    private static readonly Constant BothConductors = new("shield-in-the-loop-already", 0, "project-notes", Calc.Sources.Provenance.Derived);

    public IReadOnlyList<FeedPlan> Plan()
    {
        var feeds = job.Cabling.Chain.Where(e => e.Part.IsAmplifier && e.Part.SupplyV is not null).Select(Feed).OfType<FeedPlan>().ToArray();
        foreach (var inserter in job.Cabling.Chain.Where(e => e.Part.Kind == "power-inserter")) CheckInserter(inserter);
        return feeds;
    }

    private FeedPlan? Feed(Element amplifier)
    {
        var (reached, blocked) = Search(amplifier);
        if (reached.Count > 1)
            findings.Add(Severity.Stop, "two-supplies", reached[1][^1].At, $"{amplifier.Id} is fed by {reached[0][^1].Id} and by {reached[1][^1].Id}", "one supply feeds one amplifier", "take one of the two out, or put a part that blocks power between them");
        if (reached.Count > 0) return Reckon(amplifier, reached[0]);
        if (blocked is { } at)
            findings.Add(Severity.Stop, "power-blocked", at.At, $"the supply of {amplifier.Id} cannot pass {at.Id} ({at.Part.Name})",
                "every part between inserter and amplifier must pass DC", "move the power inserter to the antenna side of this part, or use a part that passes power");
        else
            findings.Add(Severity.Stop, "power-missing", amplifier.At, $"{amplifier.Id} needs {UnitText.Write(amplifier.Part.SupplyV!.Value, 0, "V")}, and no power inserter follows it",
                "a masthead amplifier is fed through its cable", "add a power inserter between it and the first splitter");
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
                else if (next.Part.Kind == "power-inserter") reached.Add([.. way, next]);
                else Visit(next, [.. way, next]);
            }
        }
    }

    private bool HoldsInserter(Element e) => e.Part.Kind == "power-inserter" || chain.FedBy(e).Any(HoldsInserter);

    private FeedPlan Reckon(Element amplifier, IReadOnlyList<Element> way)
    {
        var (inserter, nominal) = (way[^1], amplifier.Part.SupplyV!.Value);
        var supply = inserter.Part.SupplyV ?? nominal;
        if (Math.Abs(supply - nominal) > 0.5)
            findings.Add(Severity.Stop, "supply-mismatch", inserter.At, $"{inserter.Id} gives {UnitText.Write(supply, 0, "V")}, and {amplifier.Id} needs {UnitText.Write(nominal, 0, "V")}",
                "inserter and amplifier belong together", "choose an inserter of the amplifier's voltage");
        if (amplifier.Part.DrawsMa is { } draws && inserter.Part.LargestCurrentMa is { } most && draws > most)
            findings.Add(Severity.Stop, "supply-overloaded", inserter.At, $"{amplifier.Id} draws {UnitText.Write(draws, 0, "mA")}", $"{inserter.Id} gives {UnitText.Write(most, 0, "mA")} ({inserter.Part.ProvenanceOf("largest-current")})", "choose a stronger supply");
        var ohm = LoopOhm(amplifier, way);
        double? arrives = ohm is { } r && amplifier.Part.DrawsMa is { } ma
            ? work.Apply(DcFeed.ConstantCurrentFormula, amplifier.Id, Term.Part(inserter.Part.Id, "supply", supply), Term.Part(amplifier.Part.Id, "draws", ma).In(0.001),
                Term.Plan($"cabling.feeds[{amplifier.Id}].loop_ohm", r)).Number : null;
        var least = amplifier.Part.LeastSupplyV ?? LeastShare * nominal;
        if (arrives is { } v && v < least)
            findings.Add(Severity.Stop, "supply-low", amplifier.At, $"{UnitText.Write(v, 1, "V")} arrive at {amplifier.Id}, {UnitText.Write(supply, 1, "V")} less the drop over {UnitText.Write(ohm!.Value, 1, "ohm")}",
                amplifier.Part.LeastSupplyV is null ? $"{UnitText.Write(least, 1, "V")}, a tenth below {UnitText.Write(nominal, 0, "V")} (common practice; the part does not state `least-supply`)" : $"{amplifier.Part.Id} works from {UnitText.Write(least, 1, "V")} ({amplifier.Part.ProvenanceOf("least-supply")})",
                "shorten the run, use cable with a solid copper centre, or a supply of higher voltage if the amplifier allows it");
        return new FeedPlan(amplifier.Id, inserter.Id, supply, amplifier.Part.DrawsMa, ohm, arrives, least, [.. way.Select(e => e.Id)]);
    }

    // Unknown as soon as one cable on the way does not say its resistance.
    private double? LoopOhm(Element amplifier, IReadOnlyList<Element> way)
    {
        var sum = 0.0;
        foreach (var e in way.Skip(1).Where(e => e.Run is not null))
        {
            var (run, cable) = (routing.Runs.First(r => r.Id == e.Run), job.Routing.Runs.First(r => r.Id == e.Run).Cable);
            if (cable.LoopOhmPerKm is not { } perKm) return null;
            sum += work.Apply(DcFeed.LoopFormula, $"run {run.Id}, supply of {amplifier.Id}",
                Term.Part(cable.Id, "loop-resistance", perKm), BothConductors, Term.Plan($"routing.runs[{run.Id}].length_m", run.LengthM));
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
            if (e.Part.IsAmplifier && e.Part.SupplyV is not null) return;
            if (e.Part.ShortsPower)
            {
                findings.Add(Severity.Stop, "supply-shorted", inserter.At, $"{inserter.Id} feeds its current into {e.Id} ({e.Part.Name}), which is a short for it", "the amplifier must come before any part that shorts DC", "move the amplifier, or leave the inserter out");
                return;
            }
            if (!e.Part.PassesPower(way[i + 1].FromPort)) break;
        }
        if (!way.Any(e => e.Part.IsAmplifier && e.Part.SupplyV is not null))
            findings.Add(Severity.Stop, "supply-unused", inserter.At, $"no amplifier that is fed through its cable stands on the antenna side of {inserter.Id}",
                "an inserter sends its current toward the antenna", "put it on the house side of the amplifier, or leave it out");
    }
}
