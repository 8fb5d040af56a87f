namespace InstallPacket.Plans.Handover;

/// <summary>The steps of the work in the order of the trade, from what the plan holds and nothing else.</summary>
internal sealed class WorkStepPlanner(Job job, ReceptionPlan reception, CablingPlan cabling, RoutingPlan routing, MountingPlan mounting,
    BondingPlan bonding, MaterialsPlan materials)
{
    private readonly List<WorkStep> _steps = [];
    private string _phase = "";

    public IReadOnlyList<WorkStep> Plan()
    {
        Leaving();
        Arrival();
        Ground();
        Mount();
        Outside();
        Bond();
        Inside();
        Power();
        Measure();
        Finish();
        return _steps;
    }

    private void Begin(string phase) => _phase = phase;

    private void Add(string id, WorkStep? more = null) =>
        _steps.Add((more ?? new WorkStep(0, "", "")) with { Number = _steps.Count + 1, Phase = _phase, Id = id });

    private static WorkStep Shown(string figure) => new(0, "", "") { Figure = figure };

    private void Leaving()
    {
        Begin("leaving");
        Add("read");
        Add("forecast");
        Add("pack");
        if (materials.Pieces.Count > 0) Add("cut",
            Shown(materials.Cutting is null ? "cable-labels" : "cutting-plan") with { Count = materials.Pieces.Count });
    }

    private void Arrival()
    {
        Begin("arrival");
        Add("hazards", mounting.Ladder is null && mounting.PowerLines.Count == 0 ? null : Shown("access-sketch"));
        Add("differences");
        if (cabling.Service is { } service) Add("service-find", new WorkStep(0, "", "") { Subject = Word.Of(service.Kind), Name = service.Point });
        else if (job.Internet != InternetKind.None) Add("internet", new WorkStep(0, "", "") { Subject = Word.Of(job.Internet) });
        foreach (var run in routing.Runs.Where(r => r.Existing)) Add(StaysOnService(run) ? "service-run" : "existing", OfRun(run));
        foreach (var e in cabling.Elements.Where(e => e.Existing)) Add("existing-part",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Serves.Length > 0 ? e.Serves : e.Name, Figure = "chain-diagram" });
        if (mounting.Ladder is not null) Add("ladder", Shown("access-sketch"));
    }

    private void Ground()
    {
        Begin("ground");
        if (mounting.Kind != MountKind.Attic) Add("dry-aim", Shown("aim-card"));
        foreach (var e in cabling.Elements.Where(e => e is { Kind: PartKind.Antenna, Existing: false })) Add("assemble",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Name });
        foreach (var run in routing.Runs.Where(r => IsAntenna(r.FromElement))) Add("first-joint", Joint(run));
    }

    private void Mount()
    {
        Begin("mount");
        var figure = mounting.Kind == MountKind.Attic ? "" : "mount-sketch";
        if (mounting.Existing) OldMount(figure);
        else NewMount(figure);
        Add("aim", Shown("aim-card"));
        foreach (var f in mounting.Fixings.Where(f => f.Form == FixingForm.Clamp)) Add("clamp",
            Fixing(f, figure) with { TorqueNm = null, TorqueProvenance = "" });
    }

    // Nothing is hung on it before somebody has looked.
    private void OldMount(string figure)
    {
        Add("inspect-mount", Shown(figure));
        if (mounting.LoadPath?.Guys.Count > 0) Add("inspect-guys", Shown(figure) with { Count = mounting.LoadPath.Guys.Sum(g => g.Count) });
        Drive(figure);
        Add("hang", Shown(figure));
    }

    private void NewMount(string figure)
    {
        if (mounting.LoadPath?.Guys.Count > 0) Add("anchors", Shown(figure) with { Count = mounting.LoadPath.Guys.Sum(g => g.Count) });
        if (mounting.Plate is { TiltDeg: not 0 }) Add("set-arm", Shown(figure));
        if (mounting.Plate is { } plate) Add("plate-mark", Shown(figure) with { Count = plate.Fixings });
        else Add(mounting.Kind == MountKind.Ballast ? "lay-frame" : "level-mark", Shown(figure));
        Drive(figure);
        if (mounting.LoadPath?.Ballast is { } ballast) Add("blocks", Shown(figure) with { Count = ballast.Blocks });
        Add("raise", Shown(figure));
        if (mounting.LoadPath?.Guys.Count > 0) Add("tension", Shown(figure) with { Count = mounting.LoadPath.Guys.Sum(g => g.Count) });
    }

    private void Drive(string figure)
    {
        foreach (var f in mounting.Fixings.Where(f => f is { Existing: false, Form: not FixingForm.Clamp }))
        {
            Add("pilot", new WorkStep(0, "", "") { Subject = f.Part, Name = f.Name, Count = f.Count, Figure = figure });
            Add("fix", Fixing(f, figure));
        }
    }

    private void Outside()
    {
        Begin("outside");
        foreach (var run in routing.Runs.Where(IsOutside)) Add("run", OfRun(run));
        foreach (var e in cabling.Elements.Where(e => IsDevice(e) && StandsOutside(e))) Device(e);
        foreach (var run in routing.Runs.Where(r => r.DripLoops.Count > 0)) Add("drip-loop", OfRun(run));
    }

    private void Bond()
    {
        Begin("bond");
        var (old, mast, shield) = (bonding.Rod is null || bonding.RodExisting, bonding.MastNeeded, bonding.BlockElement.Length > 0);
        if (bonding.Rod is not null) Add(bonding.RodExisting ? "rod-existing" : "rod", Shown("bonding-sketch"));
        if (mast) Add(bonding.MastExisting ? "bond-mast-existing" : "bond-mast", Piece("bonding of the mast"));
        if (shield) Add(bonding.ShieldExisting ? "bond-shield-existing" : "bond-shield",
            Piece("bonding of the shield") with { Subject = bonding.BlockElement });
        foreach (var e in job.Cabling.Chain.Where(e => e is { Part: SurgeProtectorPart, Existing: false }))
            if (ProtectorRules.BlockOf(e, job.Cabling) is { } block)
                Add("bond-surge", new WorkStep(0, "", "") { Subject = e.Id, Name = block.Id, Figure = "chain-diagram" });
        if (!old || (mast && !bonding.MastExisting) || (shield && !bonding.ShieldExisting)) Add("bond-check", Shown("bonding-sketch"));
    }

    private WorkStep Piece(string run) =>
        Shown("bonding-sketch") with { PieceNumber = materials.Pieces.FirstOrDefault(p => p.Run == run)?.Number };

    private void Inside()
    {
        Begin("inside");
        Service();
        foreach (var e in routing.Entries) Add(e.Existing ? "entry-existing" : "entry",
            new WorkStep(0, "", "") { Subject = e.Point, Name = Word.Of(e.Through), Figure = e.Figure });
        foreach (var run in routing.Runs.Where(r => !IsOutside(r) && !r.Existing)) Add("run", OfRun(run));
        foreach (var run in routing.Runs.Where(r => r is { Existing: true, NewConnectors: true })) Add("new-connectors", OfRun(run));
        foreach (var run in routing.Runs.Where(r => r.Existing && !StaysOnService(r))) Add("existing-test", OfRun(run));
        foreach (var e in cabling.Elements.Where(e => e is { Kind: PartKind.PowerInserter, Existing: false })) Add("inserter",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Point, Figure = "chain-diagram" });
        foreach (var e in cabling.Elements.Where(e => IsDevice(e) && !StandsOutside(e))) Device(e);
        foreach (var e in cabling.Elements.Where(e => e.OpenPorts.Count > 0 && e.Kind != PartKind.Outlet)) Add("terminators",
            new WorkStep(0, "", "") { Subject = e.Id, Count = e.OpenPorts.Count });
        foreach (var e in cabling.Elements.Where(e => e is { Kind: PartKind.Outlet, Existing: false })) Add("outlet",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Serves });
        foreach (var e in cabling.Elements.Where(e => e.OpenPorts.Count > 0 && e.Kind == PartKind.Outlet)) Add("loop-end",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Serves, Count = e.OpenPorts.Count });
    }

    // Only what the antenna takes over comes off; the provider's cable, power, ground and splitter input stay as they are.
    private void Service()
    {
        if (cabling.Service is not { } service || service.CutOff.Count + service.OpenPorts == 0) return;
        var unit = new WorkStep(0, "", "") { Subject = Word.Of(service.Kind), Name = service.Point };
        if (service.CutOff.Count > 0) Add("service-cut", unit with { Count = service.CutOff.Count });
        if (service.OpenPorts > 0) Add("service-cap", unit with { Count = service.OpenPorts });
        Add("service-check", unit);
    }

    private bool StaysOnService(RunPlan run) => cabling.Service?.Connected.Contains(run.Id) == true;

    private void Power()
    {
        Begin("power");
        // One plug a supply, one test an amplifier.
        foreach (var feeds in cabling.Feeds.GroupBy(f => f.Inserter, StringComparer.Ordinal))
            foreach (var (i, f) in feeds.Index()) Add(i == 0 ? "supply" : "supply-test",
                new WorkStep(0, "", "") { Subject = f.Inserter, Name = f.Amplifier, ExpectV = f.ArrivesV, Figure = "chain-diagram" });
        foreach (var e in job.Cabling.Chain.Where(e => e.Part is AmplifierPart { SupplyV: null })) Add("plug-in",
            new WorkStep(0, "", "") { Subject = e.Id, Name = e.Part.Name, Figure = "chain-diagram" });
    }

    private void Measure()
    {
        Begin("measure");
        foreach (var p in cabling.TestPoints)
            Add(p.Number == 1 ? "fine-aim" : "measure",
                new WorkStep(0, "", "") { Subject = p.Element, Name = p.Where, PointNumber = p.Number, Expect = Expected(p),
                Figure = cabling.Ladder is null ? "" : "level-ladder" });
        foreach (var f in mounting.Fixings.Where(f => f.Form == FixingForm.Clamp)) Add("lock-aim",
            Fixing(f, mounting.Kind == MountKind.Attic ? "" : "mount-sketch"));
        Add("scan", new WorkStep(0, "", "") { Count = reception.Wanted.Count() });
    }

    private void Finish()
    {
        Begin("finish");
        foreach (var id in new[] { "seal", "photograph", "write-down", "van", "customer" }) Add(id);
    }

    private StepLevel[] Expected(TestPointPlan point)
    {
        var levels = point.Levels.OrderByDescending(l => l.LevelDbm).ToArray();
        var ends = levels.Length < 2 ? levels : new[] { levels[0], levels[^1] };
        return [.. ends.Select(l => (Level: l, Station: reception.Wanted.First(s => s.Id == l.Station))).Select(l =>
            new StepLevel(l.Station.Name, l.Station.RfChannel, l.Level.LevelDbm))];
    }

    private void Device(ElementPlan e) =>
        Add(e.SettingDb is null ? "device" : "device-set",
        new WorkStep(0, "", "") { Subject = e.Id, Name = e.Name, Figure = "chain-diagram" });

    private static bool IsDevice(ElementPlan e) => !e.Existing &&
        e.Kind is PartKind.Amplifier or PartKind.Splitter or PartKind.Tap or PartKind.Combiner or PartKind.Filter or PartKind.Attenuator or PartKind.SurgeProtector or PartKind.GroundingBlock or PartKind.Balun;

    // What an outside run ends at stands outside; what is screwed on stands beside what feeds it.
    private bool StandsOutside(ElementPlan e)
    {
        if (e.Run.Length > 0) return routing.Runs.Any(r => r.Id == e.Run && IsOutside(r));
        return cabling.Elements.FirstOrDefault(f => f.Id == e.From) is { } feeding
            && (feeding.Kind == PartKind.Antenna || StandsOutside(feeding));
    }

    private bool IsAntenna(string element) => cabling.Elements.Any(e => e.Id == element && e.Kind == PartKind.Antenna);

    private static bool IsOutside(RunPlan run) => !run.Existing && run.Lies(CableWay.Outside, CableWay.Buried, CableWay.Span);

    private static WorkStep OfRun(RunPlan run) => new(0, "", "") { Subject = run.Id, PieceNumber = run.Number, Figure = "route-sketch" };

    private WorkStep Joint(RunPlan run)
    {
        var cable = routing.Cables.FirstOrDefault(c => c.Part == run.Cable);
        return OfRun(run) with { Name = run.FromElement, TorqueNm = cable?.TorqueNm, TorqueProvenance = cable?.TorqueNm is null ? "maker"
            : cable.TorqueProvenance, Figure = "chain-diagram" };
    }

    private static WorkStep Fixing(FixingPlan f, string figure) => new(0, "", "")
    {
        Subject = f.Part, Name = f.Name, Count = f.Count, TorqueNm = f.TorqueNm, TorqueProvenance = f.TorqueNm is null ? "maker"
            : f.TorqueProvenance, Figure = figure,
    };
}
