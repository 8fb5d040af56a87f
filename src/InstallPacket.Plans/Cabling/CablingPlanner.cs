using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Follows every station through the chain to every outlet.</summary>
internal sealed class CablingPlanner(Job job, CodeFamily code, ReceptionPlan reception, RoutingPlan routing)
{
    private readonly ChainView _chain = new(job.Cabling);
    private readonly StepPlanner _steps = new(job, routing);
    private AmplifierLoads _loads = null!;

    private Workings Work => _steps.Work;

    private FindingList Findings => _steps.Findings;

    public Planned<CablingPlan> Plan() => new(Chain(), Work, Findings);

    private CablingPlan Chain()
    {
        _loads = new AmplifierLoads(job, reception, _chain, _steps);
        var receiver = job.Cabling.Receiver;
        if (receiver.NoiseFigureDb is null)
            Findings.Add(Severity.Stop, "part-figure-missing", "receiver", receiver.At, ("part", receiver.Id),
                ("figure", PartKeys.NoiseFigure.Name));
        var outlets = _chain.Outlets.Select(Outlet).ToArray();
        new OutletRules(job, code, reception, Findings).Check(outlets);
        new AmplifierRules(job, reception, _chain, _steps, _loads, Findings).Check();
        var ladders = new LadderPlanner(job, reception, _chain, _steps, _loads, Work).Plan(outlets);
        var feeds = new FeedPlanner(job, _chain, routing, Work, Findings).Plan();
        new PortRules(job, _chain, Findings).Check();
        var isolation = new IsolationRules(job, code, reception, _chain, _steps, Findings).Check();
        new TreeRules(job, reception, _chain, _steps, Work, Findings).Check();
        return new CablingPlan(
            job.Cabling.ColdC, job.Cabling.HotC, receiver.Name, receiver.LargestLevel?.Dbm, [.. _chain.InOrder().Select(Element)], outlets,
                TestPoints(), ladders.Count > 0 ? ladders[0] : null)
        {
            NotWanted = NotWanted(),
            Service = ServicePlan.Of(job.Cabling.Internet),
            Ladders = ladders,
            Isolation = isolation,
            Feeds = feeds,
            Amplifiers = [.. _chain.InOrder().Where(e => e.Part is AmplifierPart).Select(Amplifier).OfType<AmplifierPlan>()],
        };
    }

    private void CheckNotWantedTooStrong(StationPlan s, OutletBudget[] budgets)
    {
        if (job.Cabling.Receiver.LargestLevel is not { } largest || budgets.Max(b => b.Channel(s).LevelStrongDbm) is var level
            && level <= largest.Dbm) return;
        Findings.Add(Severity.Caution, "outlet-too-strong", "not-wanted", job.Reception.WantAt, ("station", s.Id), ("level_dbm", level),
            ("most_dbm", largest.Dbm),
            ("source", job.Cabling.Receiver.ProvenanceOf(PartKeys.LargestLevel)), ("receiver", job.Cabling.Receiver.Id));
    }

    private AmplifierPlan? Amplifier(Element e)
    {
        if (_loads.Of(e) is not { } load) return null;
        var all = reception.Stations.Where(s => s.Calculated).Select(s =>
            (s.Id, s.Wanted, Ratio: _loads.CarrierToProductsDb(e, s)!)).Where(p => p.Ratio is not null).ToArray();
        var products = all.Where(p => p.Wanted).OrderBy(p => p.Ratio.Number).ToArray();
        return new(e.Id, load.GainDb, load.TotalDbm, load.TotalDbm + load.GainDb, ((AmplifierPart)e.Part).LargestOutput?.Dbm,
            load.ReserveDb, load.Inputs[0].Station.Id,
            products.Length > 0 ? products[0].Id : "", products.Length > 0 ? products[0].Ratio.Number : null)
        {
            Products = [.. all.Select(p => new AmplifierProducts(p.Id, p.Ratio.Inputs[0], p.Ratio.Inputs[1]))],
        };
    }

    // Below one chance in ten a channel would surprise nobody by staying away.
    private NotWantedChannel[] NotWanted()
    {
        var quiet = new StepPlanner(job, routing, kept: false);
        var budgets = _chain.Outlets.Select(o => new OutletBudget(job, quiet, _loads, _chain, o)).ToArray();
        foreach (var s in reception.Stations.Where(s => !s.Wanted && s.Calculated && budgets.Length > 0)) CheckNotWantedTooStrong(s,
            budgets);
        return [.. reception.Stations.Where(s => !s.Wanted && s.Calculated && budgets.Length > 0)
            .Select(s => (Station: s, Best: budgets.Select(b => b.Channel(s)).MaxBy(c => c.MarginDb)!)).Where(p => p.Best.ChancePct >= 10)
            .OrderByDescending(p => p.Best.MarginDb).ThenBy(p => p.Station.Id, StringComparer.Ordinal)
            .Select(p =>
                new NotWantedChannel(p.Station.Id, p.Station.Name, p.Station.ShowsAs, p.Station.RfChannel, p.Best.MarginDb,
                p.Best.ChancePct))];
    }

    private OutletPlan Outlet(Element outlet)
    {
        var path = _chain.PathTo(outlet);
        var metres = path.Where(e => e.Run is not null).Sum(e => routing.Runs.First(r => r.Id == e.Run).LengthM) + outlet.FlyLead.Metres;
        var budget = new OutletBudget(job, _steps, _loads, _chain, outlet);
        return new OutletPlan(outlet.Id, outlet.Serves ?? outlet.Id, [.. path.Select(e => e.Id)], metres,
            [.. reception.Wanted.Select(budget.Channel)]) { TiltDb = Tilt(outlet) };
    }

    // How much more the chain takes from the highest wanted channel than from the lowest.
    private double? Tilt(Element outlet)
    {
        if (!reception.Wanted.Any()) return null;
        double Gain(double mhz) =>
            _steps.Steps(_chain.PathTo(outlet, mhz), mhz, StepPlanner.ReferenceC).Append(_steps.FlyLead(outlet, mhz)).Sum(s =>
            s.Stage.GainDb);
        return Gain(reception.Wanted.Min(s => s.FrequencyMhz)) - Gain(reception.Wanted.Max(s => s.FrequencyMhz));
    }

    private TestPointPlan[] TestPoints()
    {
        var points = new List<(Element Element, bool AtInput)>(_chain.Antennas.Select(e => (e, false)));
        points.AddRange(_chain.InOrder().Where(e => e.Part is AmplifierPart or GroundingBlockPart or PowerInserterPart).Select(e =>
            (e, false)));
        points.AddRange(_chain.InOrder().Where(e => e.Part is SplitterPart or TapPart).Select(e => (e, true)));
        points.AddRange(_chain.Outlets.Select(e => (e, false)));
        return [.. points.Select((p, i) =>
            new TestPointPlan(i + 1, p.Element.Id, p.AtInput ? "at its input" : p.Element.Part is AntennaPart ? "at its terminals"
            : "at its output",
            [.. reception.Wanted.Where(s => Passes(p.Element, s)).Select(s => new TestLevel(s.Id, LevelAt(p.Element, p.AtInput, s)))]))];
    }

    // A station of one antenna does not pass the branch of the other.
    private bool Passes(Element e, StationPlan s) => _chain.Passes(e, s.FrequencyMhz);

    private double LevelAt(Element e, bool atInput, StationPlan s)
    {
        var steps = _steps.Steps(_chain.PathTo(e, s.FrequencyMhz), s.FrequencyMhz, StepPlanner.ReferenceC);
        var level = Level.FromDbm(s.Budget!.LevelDbm);
        foreach (var step in atInput ? steps.Take(steps.Count - 1) : steps) level += Gain.FromDb(step.Stage.GainDb);
        return level.Dbm;
    }

    // A part with a single output has no number to print.
    private int Port(Element e) => job.Cabling.Chain.FirstOrDefault(f => f.Id == e.From)?.Part.Outputs > 1 ? e.FromPort : 0;

    private ElementPlan Element(Element e) => new(
        e.Id, e.Part.Id, e.Part.Name, e.Part.Kind, e.Point, e.From ?? "", Port(e), e.Run ?? "", e.Serves ?? "", e.Setting?.Db)
    {
        Second = e.Second ?? "", SecondRun = e.SecondRun ?? "", Existing = e.Existing,
        Fixing = e.FixedWith is { } with ? new(with.Part.Id, with.Part.Name, with.Count) : null,
        OpenPorts = OpenOutputs.Of(e, _chain),
    };
}
