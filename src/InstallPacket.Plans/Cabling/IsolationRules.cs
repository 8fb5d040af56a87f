using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Cabling;

/// <summary>How far outlets are kept from each other, and findings where the code family asks for more.</summary>
internal sealed class IsolationRules(
    Job job, CodeFamily code, ReceptionPlan reception, ChainView chain, StepPlanner steps, FindingList findings)
{
    private static readonly Constant NoWay = new("own-socket", 0, "project-notes", Provenance.Derived);
    private readonly double[] _frequencies = [.. reception.Wanted.Select(s => s.FrequencyMhz).Distinct().Order()];

    /// <summary>Two outlets at a frequency: where their ways part, and what lies between.</summary>
    private sealed record Pair(Element One, Element Other, Element Common, double FrequencyMhz, double LossDb,
        double RangeDb, double? IsolationDb)
    {
        public double? TotalDb => IsolationDb + LossDb - RangeDb;
    }

    /// <summary>The worst pair in different dwellings and the worst in one, where the family asks for something and it is known.</summary>
    public IReadOnlyList<IsolationPlan> Check()
    {
        Element[] outlets = [.. chain.Outlets];
        var pairs = outlets.SelectMany((a, i) => outlets.Skip(i + 1).Select(b => (One: a, Other: b))).ToArray();
        return [.. new[] { Judge(pairs.Where(p => p.One.Dwelling != p.Other.Dwelling), true),
            Judge(pairs.Where(p => p.One.Dwelling == p.Other.Dwelling), false) }.OfType<IsolationPlan>()];
    }

    private IsolationPlan? Judge(IEnumerable<(Element One, Element Other)> outlets, bool dwellings)
    {
        if (code.LimitOf(dwellings ? "isolation-dwellings" : "isolation-outlets") is not { } limit) return null;
        var pairs = outlets.Select(p => Worst(p.One, p.Other)).OfType<Pair>().ToArray();
        // Within one dwelling a part that does not say is taken to be good enough.
        if (dwellings) CheckSilent([.. pairs.Where(p => p.TotalDb is null && p.LossDb - p.RangeDb < limit.Value)], limit);
        if (pairs.Where(p => p.TotalDb is not null).MinBy(p => p.TotalDb) is not { } worst) return null;
        var between = dwellings ? "dwellings" : "outlets";
        var isolation = Row(worst, between);
        if (isolation < limit.Value) Low(worst, isolation, pairs.Count(p => p.TotalDb < limit.Value), limit, between);
        return new(between, worst.One.Id, worst.Other.Id, isolation, worst.RangeDb, limit.Value, limit.Document, limit.Provenance);
    }

    private void CheckSilent(Pair[] silent, CodeLimit limit)
    {
        if (silent.Length == 0) return;
        var first = silent[0];
        findings.Add(Severity.Caution, "isolation-unknown", first.Common.At, ("element", first.Common.Id), ("part", first.Common.Part.Id),
            ("one", first.One.Id), ("other", first.Other.Id), ("pairs", silent.Length), ("loss_db", first.LossDb - first.RangeDb),
            ("least_db", limit.Value), ("document", limit.Document), ("source", limit.Provenance));
    }

    private void Low(Pair worst, double isolationDb, int pairs, CodeLimit limit, string between) =>
        findings.Add(Severity.Caution, "isolation-low", between, worst.Common.At, ("one", worst.One.Id), ("other", worst.Other.Id),
            ("one_serves", worst.One.Serves ?? worst.One.Id), ("other_serves", worst.Other.Serves ?? worst.Other.Id),
            ("isolation_db", isolationDb), ("frequency_mhz", worst.FrequencyMhz), ("pairs", pairs), ("least_db", limit.Value),
            ("document", limit.Document), ("source", limit.Provenance), ("element", worst.Common.Id),
            ("part_least_db", Math.Ceiling(limit.Value - worst.LossDb + worst.RangeDb)),
            ("each_db", Math.Ceiling((limit.Value - isolationDb) / 2)));

    // At the frequency where least lies between them.
    private Pair? Worst(Element one, Element other) =>
        _frequencies.Select(f => Between(one, other, f)).OfType<Pair>().MinBy(p => p.TotalDb ?? p.LossDb - p.RangeDb);

    private Pair? Between(Element one, Element other, double frequencyMhz)
    {
        var (a, b) = (chain.PathTo(one, frequencyMhz), chain.PathTo(other, frequencyMhz));
        var shared = a.Zip(b).TakeWhile(p => p.First == p.Second).Count();
        if (shared == 0) return null;
        var common = a[shared - 1];
        // What climbs through an amplifier against its direction is not known and small; the other direction counts then.
        double Loss(Element outlet) => -Branch(common, outlet, frequencyMhz).Sum(s => s.Gain.Number);
        var (tailOne, tailOther) = (a.Skip(shared - 1).ToArray(), b.Skip(shared - 1).ToArray());
        if (HasAmplifier(tailOne) && HasAmplifier(tailOther)) return null;
        var range = steps.UncertaintyDb(tailOne, frequencyMhz) + steps.UncertaintyDb(tailOther, frequencyMhz);
        return new(one, other, common, frequencyMhz, Loss(one) + Loss(other), range,
            (common.Part as DividerPart)?.IsolationDb?.At(frequencyMhz));
    }

    private static bool HasAmplifier(IEnumerable<Element> tail) => tail.Skip(1).Any(e => e.Part is AmplifierPart);

    // Cold cable loses least.
    private ChainStep[] Branch(Element common, Element outlet, double frequencyMhz)
    {
        var path = chain.PathTo(outlet, frequencyMhz);
        var behind = path.SkipWhile(e => e != common).Skip(1).ToHashSet();
        return [.. steps.Steps(path, frequencyMhz, job.Cabling.ColdC).Where(s => behind.Contains(s.Element))];
    }

    private Row Row(Pair p, string between)
    {
        var isolation = ((DividerPart)p.Common.Part).Figure(DividerKeys.Isolation, p.IsolationDb!.Value);
        return steps.Work.Apply(OutletIsolation.PathFormula, $"{p.One.Id} and {p.Other.Id}, {p.FrequencyMhz:0.###} MHz", isolation,
            Loss(p, p.One), Loss(p, p.Other), Term.Plan($"cabling.isolation[{between}].range_db", p.RangeDb));
    }

    private Term Loss(Pair p, Element outlet)
    {
        Term? sum = null;
        foreach (var step in Branch(p.Common, outlet, p.FrequencyMhz))
            sum = sum is null ? step.Gain : steps.Work.Apply(CablingFormulas.ChainGain,
                $"from {p.Common.Id} to {outlet.Id}, {step.Name}, {p.FrequencyMhz:0.###} MHz, {job.Cabling.ColdC:0.###} C", sum, step.Gain);
        return sum?.In(-1) ?? NoWay;
    }
}
