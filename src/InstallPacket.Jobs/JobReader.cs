using InstallPacket.Jobs.Catalogue;
using InstallPacket.Jobs.Parts;
using InstallPacket.Jobs.Reading;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Jobs;

/// <summary>The outcome of reading a job.</summary>
/// <param name="Job">The job, or null when it could not be read; then a finding of severity stop says why.</param>
/// <param name="Findings">Everything found on the way.</param>
public sealed record JobReading(Job? Job, IReadOnlyList<Finding> Findings);

/// <summary>Reads job files: text to <see cref="Job"/>, with every finding of the file in one run.</summary>
/// <param name="files">The author's files.</param>
/// <param name="parts">The parts that jobs may name.</param>
public sealed class JobReader(IJobFiles files, PartLibrary parts)
{
    /// <summary>The job folders: every folder that holds a <c>job.yaml</c>, in ordinal order. Names that start with <c>_</c> or <c>.</c> are not jobs.</summary>
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
        var job = Read(id, findings);
        return new(findings.AnyStop ? null : job, findings.Sorted);
    }

    private Job? Read(string id, FindingList findings)
    {
        var path = id + "/job.yaml";
        var file = files.Read(path, FileBounds.JobBytes);
        if (!FileGate.Allows(file, FileBounds.JobBytes, new(path, 0, 0), findings) || YamlGate.Load(file, findings) is not { } root) return null;
        var checker = new NodeChecker(findings);
        var group = checker.Group(root, KeyCatalogue.Job, "");
        var (stations, complete) = Stations(id, group.Group("reception"), findings);
        string[]? names = complete ? [.. stations.Select(s => s.Id), .. checker.Defined.GetValueOrDefault("reception.transmitters") ?? []] : null;
        var terrain = Terrain(id, group.Group("siting"), findings);
        Part[] own = [.. (group.Group("materials")?.Entries("parts") ?? []).Select(e => PartLibraryReader.Part(e, findings)).OfType<Part>()];
        var library = parts.With(own);
        new NameResolver(library, names, group, checker.Defined, findings).Resolve(checker.Uses);
        if (findings.AnyStop) return null;
        var job = Bind(id, path, group, stations, terrain, library) with { OwnParts = own };
        ChainRules.Check(job.Cabling, findings);
        JobRules.Check(job, findings);
        return job;
    }

    // Not complete when a list is named that could not be read: then nobody knows which names it holds.
    private (List<Station> Stations, bool Complete) Stations(string id, CheckedGroup? reception, FindingList findings)
    {
        var stations = new List<Station>();
        if (reception is null) return (stations, false);
        var list = reception.Maybe<string>("stations");
        if (list is { } name && new SharedPath(files, id, findings).StationList(name) is { } path)
        {
            var file = files.Read(path, FileBounds.StationBytes);
            if (FileGate.Allows(file, FileBounds.StationBytes, name.At, findings)) stations.AddRange(StationListReader.Read(file, findings).Stations);
        }
        var complete = list is null || stations.Count > 0;
        foreach (var entry in reception.Entries("transmitters"))
        {
            if (!StationRules.Complete(entry.Group)) continue;
            var station = SectionBinder.Transmitter(entry) with { Pattern = JobPattern.Read(entry, findings) };
            StationRules.Check(station, entry.Group, findings);
            stations.RemoveAll(s => s.Id == station.Id);
            stations.Add(station);
        }
        return (stations, complete);
    }

    private Sourced<string>? Terrain(string id, CheckedGroup? siting, FindingList findings) =>
        siting?.Maybe<string>("terrain") is { } name && new SharedPath(files, id, findings).TerrainFolder(name) is { } folder ? new Sourced<string>(folder, name.At) : null;

    private static Job Bind(string id, string path, CheckedGroup g, List<Station> stations, Sourced<string>? terrain, PartLibrary library)
    {
        var bind = new SectionBinder(library);
        var code = g.Get<string>("code").Value;
        return new Job
        {
            Id = id,
            File = path,
            Title = g.Get<string>("title").Value,
            Date = g.Get<DateOnly>("date"),
            Code = code,
            Units = g.Get<string>("units").Value == "us" ? UnitFamily.Us : UnitFamily.Metric,
            Paper = g.Maybe<string>("paper")?.Value ?? (code == "us" ? "letter" : "a4"),
            LevelUnit = g.Get<string>("level-unit").Value,
            Language = g.Maybe<string>("language")?.Value,
            PreparedBy = SectionBinder.Party(g.Group("prepared-by")!),
            Customer = SectionBinder.Party(g.Group("customer")!),
            Siting = SectionBinder.Siting(g.Group("siting")!, terrain),
            Reception = SectionBinder.Reception(g.Group("reception")!, stations),
            Cabling = bind.Cabling(g.Group("cabling")!),
            Routing = bind.Routing(g.Group("routing")!),
            Mounting = bind.Mounting(g.Group("mounting")!),
            Bonding = bind.Bonding(g.Group("bonding")!),
            Extras = bind.Extras(g.Group("materials")!),
            Materials = bind.Materials(g.Group("materials")!),
            Handover = SectionBinder.Handover(g.Group("handover")!),
        };
    }
}
