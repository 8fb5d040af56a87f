using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>Lists the single changes that are tried, in a fixed order: settings first, then parts in place, then parts added.</summary>
internal sealed class TrialSource(Job job, ChainView chain, PartLibrary parts)
{
    private const string Amplifier = "NEW-A";
    private const string Inserter = "NEW-I";
    private const double UsualMHz = 600;
    private readonly Part[] _library = [.. parts.Parts.Values.OrderBy(p => p.Id, StringComparer.Ordinal)];

    public IEnumerable<Trial> All() =>
        [.. Settings(), .. Exchanges(), .. Removals(), .. Cables(), .. Pads(), .. Filters(), .. AtTheAntenna()];

    private IEnumerable<Trial> Settings() =>
        from e in job.Cabling.Chain
        where e.Part is AmplifierPart { LeastAmplificationDb: not null, AmplificationDb: not null }
        from db in Range((AmplifierPart)e.Part)
        where db != e.Setting?.Db
        select new Trial(Change.Set(e.Id, db), ChainEdit.Exchange(job, e, e.Part, Gain.FromDb(db)), []);

    /// <summary>The settings of a variable amplifier, whole decibels.</summary>
    public static IEnumerable<double> Range(AmplifierPart part)
    {
        for (var db = Math.Ceiling(part.LeastAmplificationDb ?? 0); db <= part.AmplificationDb!.Points.Max(p =>
            p.Value); db++) yield return db;
    }

    // An amplifier for an amplifier with the same supply; a splitter or a tap for either, with enough outputs.
    private IEnumerable<Trial> Exchanges() =>
        from e in job.Cabling.Chain
        where e.Part is AmplifierPart or SplitterPart or TapPart
        from other in _library.OfType<ChainPart>()
        where (other.Kind == e.Part.Kind || (Splits(other) && Splits(e.Part))) && other.Id != e.Part.Id && other.SupplyV == e.Part.SupplyV
            && other.Outputs >= chain.FedBy(e).Select(f => f.FromPort).DefaultIfEmpty(1).Max() && (!Splits(e.Part) || LosesLess(other, e))
        select new Trial(Change.Exchange(e.Id, other.Id), ChainEdit.Exchange(job, e, other), [other]);

    // A splitter is no attenuator: one that takes more is never a remedy.
    private bool LosesLess(ChainPart other, Element e) => chain.FedBy(e).Select(f => f.FromPort).All(port =>
        other.LossTo(port, UsualMHz) <= e.Part.LossTo(port, UsualMHz));

    private static bool Splits(ChainPart part) => part is SplitterPart or TapPart;

    /// <summary>Each amplifier left out, with its inserter where it has one of its own.</summary>
    public IEnumerable<Trial> Removals()
    {
        foreach (var e in job.Cabling.Chain.Where(e => e.Part is AmplifierPart))
            if (Without(e) is { } without) yield return new(Change.LeaveOut(e.Id), without, []);
    }

    // An amplifier that is fed through its cable goes together with its inserter.
    private Job? Without(Element amplifier)
    {
        var inserter = job.Cabling.Chain.FirstOrDefault(i => i.Part is PowerInserterPart && amplifier.Part.SupplyV is not null
            && chain.PathTo(i).Contains(amplifier));
        var shorter = inserter is null ? job : ChainEdit.Remove(job, inserter);
        return shorter is null ? null : ChainEdit.Remove(shorter, shorter.Cabling.Chain.First(e => e.Id == amplifier.Id));
    }

    private IEnumerable<Trial> Cables() =>
        from cable in _library.OfType<CablePart>()
        where cable.AttenuationDbPer100M is not null && cable.TolerancePct == 0
        from run in job.Routing.Runs
        where run.Cable.Id != cable.Id && BetterThan(cable, run.Cable)
        select new Trial(Change.Cable(run.Id, cable.Id),
            job with { Routing = job.Routing with { Runs = [.. job.Routing.Runs.Select(r => r.Id == run.Id ? r with { Cable = cable }
                : r)] } }, [cable]);

    // Nobody lays a worse cable to lose level.
    private static bool BetterThan(CablePart cable, CablePart laid) => laid.AttenuationDbPer100M is not { } today
        || cable.AttenuationDbPer100M!.At(UsualMHz) < today.At(UsualMHz);

    private IEnumerable<Trial> Pads() =>
        from e in job.Cabling.Chain
        where e.Part is AmplifierPart or OutletPart && e.From is not null
        from pad in _library.OfType<AttenuatorPart>()
        select new Trial(Change.PutBefore(e.Id, pad.Id), ChainEdit.InsertBefore(job, e, "NEW-P", pad), [pad]);

    private IEnumerable<Trial> Filters() =>
        from e in job.Cabling.Chain
        where e.Part is AmplifierPart && e.From is not null
        from filter in _library.OfType<FilterPart>()
        select new Trial(Change.PutBefore(e.Id, filter.Id), ChainEdit.InsertBefore(job, e, "NEW-F", filter), [filter]);

    // A mast-mounted amplifier with the inserter that feeds it; one with its own power supply down the cable makes way for it.
    private IEnumerable<Trial> AtTheAntenna()
    {
        var root = chain.Root;
        if (chain.FedBy(root).Any(e => e.Part is AmplifierPart && e.Part.SupplyV is not null)) yield break;
        foreach (var amplifier in _library.OfType<AmplifierPart>().Where(p => p.SupplyV is not null))
        {
            if (_library.OfType<PowerInserterPart>().FirstOrDefault(p => p.SupplyV == amplifier.SupplyV) is not { } inserter) continue;
            if (Fed(ChainEdit.InsertBehind(job, root, Amplifier, amplifier), inserter) is { } added)
                yield return new(Change.Add(amplifier.Id, inserter.Id), added, [amplifier, inserter]);
            foreach (var old in job.Cabling.Chain.Where(e => e.Part is AmplifierPart && e.Part.SupplyV is null))
                if (ChainEdit.Remove(job, old) is { } without
                    && Fed(ChainEdit.InsertBehind(without, root, Amplifier, amplifier), inserter) is { } moved)
                    yield return new(Change.Move(old.Id, amplifier.Id, inserter.Id), moved, [amplifier, inserter]);
        }
    }

    // The inserter goes in front of the first part that would block its current.
    private static Job? Fed(Job job, PowerInserterPart inserter)
    {
        var chain = new ChainView(job.Cabling);
        var at = job.Cabling.Chain.First(e => e.Id == Amplifier);
        while (chain.FedBy(at).ToArray() is [var next])
        {
            if (next.Part is OutletPart || next.Part.Outputs > 1 || !next.Part.PassesPower(1)) return ChainEdit.InsertBefore(job, next,
                Inserter, inserter);
            at = next;
        }
        return null;
    }
}
