namespace InstallPacket.Plans.Materials;

/// <summary>Counts what the plan uses: pieces of cable, connectors, parts, fixings.</summary>
internal sealed class MaterialsPlanner(
    Job job, SitingPlan siting, RoutingPlan routing, MountingPlan mounting, PartLibrary parts)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    // A sheet of labels is one page of the packet.
    private const int PiecesOnSheet = 7;
    private readonly Dictionary<string, (Part Part, int Count, double LengthM, List<string> For)> _items = new(StringComparer.Ordinal);

    public Planned<MaterialsPlan> Plan() => new(Materials(), _work, _findings);

    private MaterialsPlan Materials()
    {
        foreach (var e in job.Cabling.Chain.Where(e => !e.Existing)) Add(e.Part, 1, 0, e.Id);
        foreach (var e in job.Cabling.Chain)
            if (e.FixedWith is { } with) Add(with.Part, with.Count, 0, e.Id);
        foreach (var run in routing.Runs.Where(r => !r.Existing)) AddRun(run);
        foreach (var run in routing.Runs.Where(r => r is { Existing: true, NewConnectors: true })) AddConnectors(run);
        foreach (var e in job.Cabling.Chain.Where(e => e.Part is OutletPart)) AddFlyLead(e);
        AddTerminators();
        AddCouplers();
        AddMount(job.Mounting);
        AddBonding(job.Bonding);
        foreach (var x in job.Extras) Add(x.Part, x.Count, 0, x.For);
        var used = _items.Values.OrderBy(Order).ThenBy(i => i.Part.Id, StringComparer.Ordinal).ToArray();
        var pieces = new PiecePlanner(job, routing, mounting, _work).Plan();
        var packs = new PackPlanner(job.Materials, parts, _work);
        ItemPlan[] items = [.. used.Select(Item).Select(packs.Of)];
        PiecePlan[] cut = [.. pieces.Select(p => p.Piece)];
        return new MaterialsPlan(
            cut, items,
                [.. used.Select(i => i.Part).Append(job.Cabling.Receiver).SelectMany(p =>
                p.Provenance.Select(f => new PartFigure(p.Id, p.Name, f.Key, f.Value.Text)))])
        {
            Cutting = new CuttingPlanner(job, pieces, _work, _findings).Plan(),
            // Guys come last and need no label.
            LabelSheets = [.. cut.Where(p => p.Kind != PieceKind.Guy).Chunk(PiecesOnSheet).Select((c, i) =>
                new LabelSheetPlan(i == 0 ? "cable-labels" : $"cable-labels-{i + 1}", i * PiecesOnSheet + 1, c.Length))],
            Tools = new ToolPlanner(job, routing, mounting, siting, parts, _findings).Plan(items),
            Cost = new CostPlanner(job, parts, _work, _findings).Plan(items),
            Time = new TimePlanner(job, routing, _work, _findings).Plan(cut),
            CustomerSupplies = job.Materials.CustomerSupplies,
        };
    }

    private void AddRun(RunPlan run)
    {
        var cable = job.Routing.Runs.First(r => r.Id == run.Id).Cable;
        Add(cable, 0, run.LengthM, run.Id);
        AddConnectors(run);
        // A boot is slid on before the connector; it keeps rain off the thread (memory: trade practice).
        if (run.Lies(CableWay.Outside, CableWay.Span) && parts.Of(PartRole.WeatherBoot) is { } boot) Add(boot, 2, 0, run.Id);
        if (run.Clips > 0 && parts.Of(PartRole.Clip) is { } clip) Add(clip, run.Clips, 0, run.Id);
    }

    private void AddConnectors(RunPlan run)
    {
        var cable = job.Routing.Runs.First(r => r.Id == run.Id).Cable;
        if (cable.Connector is { } connector) Add(parts.Find(connector)!, 2, 0, run.Id);
    }

    private void AddMount(MountingSection m)
    {
        foreach (var f in m.Fixings.Where(f => !f.Existing)) Add(f.Part, f.Count, 0, "mount");
        if (m.Existing) return;
        Add(m.Mount, 1, 0, "mount");
        if (!m.OwnMast) Add(m.Mast, 1, 0, "mast");
        if (m.Guys is { } guys && mounting.LoadPath?.Guys is { Count: > 0 } sets) Add(guys.Part, 0,
            sets.Sum(s => s.Count * (s.LengthM + MountingFormulas.GuyEndsM)), "guys");
    }

    private void AddBonding(BondingSection bonding)
    {
        var (mastM, shieldM) = (bonding.MastExisting ? 0 : bonding.MastLength.Metres, bonding.ShieldExisting ? 0 : bonding.ShieldLength.Metres);
        void Conductor(Part part, double lengthM, string what)
        {
            if (lengthM > 0) Add(part, 0, lengthM, what);
        }
        var same = bonding.ShieldConductor.Id == bonding.Conductor.Id;
        Conductor(bonding.Conductor, mastM + (same ? shieldM : 0), !same || bonding.ShieldExisting ? "bonding of the mast"
            : bonding.MastExisting ? "bonding of the shield" : "bonding of mast and shield");
        if (!same) Conductor(bonding.ShieldConductor, shieldM, "bonding of the shield");
        if (bonding.Rod is not { Existing: false } rod) return;
        Add(rod.Part, rod.Count, 0, "rod of the mast");
        if (rod.Jumper is { } jumper) Conductor(jumper, rod.JumperLength.Metres + (rod.Count > 1 ? rod.Spacing?.Metres ?? 0 : 0),
            "jumper of the rod");
        if (rod.Clamp is { } clamp) Add(clamp, RodPlanner.Clamps(rod), 0, "rod of the mast");
    }

    private void AddFlyLead(Element outlet)
    {
        if (outlet.FlyLead.Metres <= 0) return;
        var cable = job.Cabling.FlyCable;
        Add(cable, 0, outlet.FlyLead.Metres, $"fly lead {outlet.Id}");
        if (cable.Connector is { } connector) Add(parts.Find(connector)!, 2, 0, $"fly lead {outlet.Id}");
    }

    private void AddTerminators()
    {
        if (parts.Of(PartRole.Terminator) is not { } terminator) return;
        if (ServicePlan.Of(job.Cabling.Internet) is { OpenPorts: > 0 } service) Add(terminator, service.OpenPorts, 0, "service entry");
        var chain = new ChainView(job.Cabling);
        foreach (var e in job.Cabling.Chain)
            if (OpenOutputs.Of(e, chain).Count is > 0 and var open) Add(terminator, open, 0, e.Id);
    }

    // Two F sockets that are screwed together take an adapter of two plugs.
    private void AddCouplers()
    {
        if (parts.Of(PartRole.Coupler) is not { } coupler) return;
        foreach (var e in job.Cabling.Chain.Where(e => e is { Part: SurgeProtectorPart, Existing: false }))
            if (ProtectorRules.BlockOf(e, job.Cabling) is not null) Add(coupler, 1, 0, e.Id);
    }

    private void Add(Part part, int count, double lengthM, string what)
    {
        if (!_items.TryGetValue(part.Id, out var item)) item = (part, 0, 0, []);
        if (!item.For.Contains(what)) item.For.Add(what);
        _items[part.Id] = (part, item.Count + count, item.LengthM + lengthM, item.For);
    }

    private static int Order((Part Part, int, double, List<string>) item) => (int)item.Part.Kind;

    private static ItemPlan Item((Part Part, int Count, double LengthM, List<string> For) i) => new(
        i.Part.Id, i.Part.Name, i.Part.Kind, i.Count > 0 ? i.Count : null, i.LengthM > 0 ? i.LengthM : null, string.Join(", ", i.For));
}
