namespace InstallPacket.Jobs;

/// <summary>The outcome of reading a job.</summary>
/// <param name="Job">The job, or null when it could not be read; then a finding of severity stop says why.</param>
/// <param name="Findings">Everything found on the way.</param>
/// <param name="Units">The units of the job as far as they could be read, for its findings; metric otherwise.</param>
/// <param name="LevelUnit">The unit of levels likewise; dBµV otherwise.</param>
public sealed record JobReading(Job? Job, IReadOnlyList<Finding> Findings, UnitFamily Units, LevelUnit LevelUnit);

/// <summary>Reads job files: text to <see cref="Job"/>, with every finding of the file in one run.</summary>
/// <param name="files">The author's files.</param>
/// <param name="parts">The parts that jobs may name.</param>
/// <param name="codes">The code families that jobs may name; those of the program when absent.</param>
public sealed class JobReader(IJobFiles files, PartLibrary parts, IReadOnlyList<CodeDefaults>? codes = null)
{
    private readonly IReadOnlyList<CodeDefaults> _codes = codes ?? CodeDefaults.BuiltIn;

    /// <summary>The job folders: every folder that holds a <c>job.yaml</c>, in ordinal order. Names that start with <c>_</c> or <c>.</c>
    /// are not jobs.</summary>
    public static IReadOnlyList<string> JobIds(IJobFiles files) =>
    [
        .. files.List("").Where(p => p.EndsWith("/job.yaml", StringComparison.Ordinal) && p.Count(c => c == '/') == 1)
            .Select(p => p[..p.IndexOf('/')]).Where(id => id[0] is not ('_' or '.')).Order(StringComparer.Ordinal),
    ];

    /// <summary>Reads one job.</summary>
    /// <param name="id">The job's folder.</param>
    public JobReading Read(string id)
    {
        var findings = new FindingList();
        var job = Read(id, findings, out var group);
        return new(findings.AnyStop ? null : job, findings.Sorted, group?.Maybe(JobKeys.Units)?.Value ?? UnitFamily.Metric,
            group?.Maybe(JobKeys.LevelUnit)?.Value ?? LevelUnit.DBuV);
    }

    private Job? Read(string id, FindingList findings, out CheckedGroup? checkedFile)
    {
        checkedFile = null;
        var path = id + "/job.yaml";
        if (id.Any(c => char.IsControl(c) || c == '\uFFFD'))
        {
            findings.Add(Severity.Stop, "job-name-unfit", new(path, 0, 0), ("name", id));
            return null;
        }
        var layers = new JobLayers(files, findings, part => parts.Find(part) is not null);
        if (layers.Load(path) is not { } root) return null;
        var units = UnitChoice.FamilyOf(root, _codes);
        var checker = new NodeChecker(findings, units);
        var group = checkedFile = checker.Group(root, KeyCatalogue.Job, "");
        var (stations, complete) = Stations(id, group.Maybe(JobKeys.Reception)?.Value, findings);
        string[]? names = complete
            ? [.. stations.Select(s => s.Id), .. checker.Defined.GetValueOrDefault(ReceptionKeys.Transmitters) ?? []] : null;
        var terrain = Terrain(id, group.Maybe(JobKeys.Siting)?.Value, findings);
        Part[] own = [.. (group.Maybe(JobKeys.Materials)?.Value.Entries(MaterialsKeys.Parts) ?? [])
            .Select(e => PartLibraryReader.Part(e, findings)).OfType<Part>()];
        var library = parts.With(own);
        new NameResolver(library, names, group, checker.Defined, findings).Resolve(checker.Uses);
        MastRules.Check(group, library, findings);
        CheckCode(group, findings);
        CheckPlanUp(group, findings);
        var want = complete ? Want(group, stations, units, findings) : [];
        var logo = group.Maybe(JobKeys.PreparedBy)?.Value.Maybe(PartyKeys.Logo) is { } mark ? LogoPicture.Read(files, mark, findings) : null;
        if (findings.AnyStop) return null;
        var job = Bind(_codes, id, path, group, stations, want, terrain, library) with { OwnParts = own, IsStudy = layers.IsStudy };
        if (logo is not null) job = job with { PreparedBy = job.PreparedBy with { Logo = logo } };
        ChainRules.Check(job.Cabling, findings);
        JobRules.Check(job, findings);
        return job;
    }

    private static void CheckPlanUp(CheckedGroup group, FindingList findings)
    {
        if (group.Maybe(JobKeys.Routing)?.Value.Maybe(RoutingKeys.PlanUp) is { } up && up.Value.North != Calc.Quantities.North.True)
            findings.Add(Severity.Stop, "plan-up-magnetic", up.At);
    }

    private void CheckCode(CheckedGroup group, FindingList findings)
    {
        if (group.Maybe(JobKeys.Code) is not { } code || _codes.Any(c => c.Id == code.Value)) return;
        string[] words = [.. _codes.Select(c => c.Id)];
        findings.Add(Severity.Stop, "unknown-word", code.At, ("path", JobKeys.Code.Name), ("written", code.Value), ("words", words),
            ("near", NearestWord.Of(code.Value, words)));
    }

    // Not complete when a list is named that could not be read: then nobody knows which names it holds.
    private (List<Station> Stations, bool Complete) Stations(string id, CheckedGroup? reception, FindingList findings)
    {
        var stations = new List<Station>();
        if (reception is null) return (stations, false);
        var list = reception.Maybe(ReceptionKeys.Stations);
        if (list is { } name && new SharedPath(files, id, findings).StationList(name) is { } path)
        {
            var file = files.Read(path, FileBounds.StationBytes);
            if (FileGate.Allows(file, FileBounds.StationBytes, name.At, findings)) stations.AddRange(StationListReader.Read(file,
                findings).Stations);
        }
        var complete = list is null || stations.Count > 0;
        foreach (var entry in reception.Entries(ReceptionKeys.Transmitters))
        {
            if (!StationRules.Complete(entry.Value)) continue;
            var station = ReceptionBinder.Transmitter(entry) with { Pattern = JobPattern.Read(entry, findings) };
            StationRules.Check(station, entry.Value, findings);
            stations.RemoveAll(s => s.Id == station.Id);
            stations.Add(station);
        }
        return (stations, complete);
    }

    private static IReadOnlyList<Sourced<string>> Want(CheckedGroup group, List<Station> stations, UnitFamily? units, FindingList findings)
    {
        var (siting, reception) = (group.Maybe(JobKeys.Siting)?.Value, group.Maybe(JobKeys.Reception)?.Value);
        if (reception is null) return [];
        (double, double)? from = siting?.Maybe(SitingKeys.Latitude) is { } latitude && siting.Maybe(SitingKeys.Longitude) is { } longitude
            ? (latitude.Value, longitude.Value) : null;
        var reachM = reception.Maybe(ReceptionKeys.Within)?.Value ?? double.PositiveInfinity;
        return new WantReader(stations, from, reachM, new ScalarChecker(findings, units), findings).Read(reception.Items(ReceptionKeys.Want));
    }

    private Sourced<string>? Terrain(string id, CheckedGroup? siting, FindingList findings) =>
        siting?.Maybe(SitingKeys.Terrain) is { } name && new SharedPath(files, id, findings).TerrainFolder(name) is { } folder
            ? new Sourced<string>(folder, name.At) : null;

    private static Job Bind(IReadOnlyList<CodeDefaults> codes, string id, string path, CheckedGroup g, List<Station> stations,
        IReadOnlyList<Sourced<string>> want, Sourced<string>? terrain, PartLibrary library)
    {
        var code = codes.First(c => c.Id == g.Get(JobKeys.Code));
        var materials = new MaterialsBinder(library);
        return new Job
        {
            Id = id,
            File = path,
            Title = g.Get(JobKeys.Title),
            Date = g.Placed(JobKeys.Date),
            Code = code.Id,
            Units = g.Maybe(JobKeys.Units)?.Value ?? code.Units,
            Paper = g.Maybe(JobKeys.Paper)?.Value ?? code.Paper,
            LevelUnit = g.Get(JobKeys.LevelUnit),
            Language = g.Maybe(JobKeys.Language)?.Value,
            PreparedBy = HandoverBinder.Party(g.Get(JobKeys.PreparedBy)),
            Customer = HandoverBinder.Party(g.Get(JobKeys.Customer)),
            Siting = SitingBinder.Section(g.Get(JobKeys.Siting), terrain),
            Reception = ReceptionBinder.Section(g.Get(JobKeys.Reception), stations, want),
            Cabling = new CablingBinder(library).Section(g.Get(JobKeys.Cabling)),
            Routing = new RoutingBinder(library).Section(g.Get(JobKeys.Routing)),
            Mounting = new MountingBinder(library).Section(g.Get(JobKeys.Mounting)),
            Bonding = new BondingBinder(library).Section(g.Get(JobKeys.Bonding)),
            Extras = materials.Extras(g.Get(JobKeys.Materials)),
            Materials = materials.Section(g.Get(JobKeys.Materials)),
            Handover = HandoverBinder.Section(g.Get(JobKeys.Handover)),
        };
    }
}
