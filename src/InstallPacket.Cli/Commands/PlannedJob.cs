using InstallPacket.Plans;

namespace InstallPacket.Cli.Commands;

/// <summary>A job with its plan, or with the findings that kept it from being planned.</summary>
/// <param name="Id">Its folder.</param>
/// <param name="Plan">The plan, or null.</param>
/// <param name="Findings">All findings.</param>
/// <param name="Units">The units in which its findings are printed.</param>
/// <param name="Unchanged">The packet that stands already, when its inputs are the same.</param>
internal sealed record PlannedJob(string Id, Plan? Plan, IReadOnlyList<Finding> Findings, JobUnits Units, PacketManifest? Unchanged = null)
{
    /// <summary>Reads and plans every job of a folder, or the ones named.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="only">Names of jobs; empty for all.</param>
    /// <param name="unchanged">The packet of a job that stands whole and was made from the same inputs; null when all are planned.</param>
    public static JobSet All(IJobFiles files, IReadOnlyList<string> only, Func<string, PacketManifest?>? unchanged = null)
    {
        var (shared, jobs) = Each(files, only, unchanged, job => job);
        return new JobSet(shared, jobs);
    }

    /// <summary>Reads and plans jobs, and does something with each while the others are still planned, so that no plan is kept longer than it is used.</summary>
    /// <typeparam name="T">What comes of a job.</typeparam>
    /// <param name="files">The author's files.</param>
    /// <param name="only">Names of jobs; empty for all.</param>
    /// <param name="unchanged">The packet of a job that stands whole and was made from the same inputs; null when all are planned.</param>
    /// <param name="use">What is done with each.</param>
    public static (IReadOnlyList<Finding> Shared, T[] Results) Each<T>(
        IJobFiles files, IReadOnlyList<string> only, Func<string, PacketManifest?>? unchanged, Func<PlannedJob, T> use)
    {
        var shared = new FindingList();
        if (files is FolderJobFiles folder)
            foreach (var link in folder.Links()) shared.Add(Severity.Caution, "link-skipped", new(link, 0, 0), ("path", link));
        var parts = PartLibraryReader.Read(files, shared);
        var ids = JobReader.JobIds(files).Where(id => only.Count == 0 || only.Contains(id)).ToArray();
        var results = ids.AsParallel().AsOrdered().Select(id => use(
            unchanged?.Invoke(id) is { } same ? new PlannedJob(id, null, [], JobUnits.Unknown, same) : One(files, parts, id))).ToArray();
        return (shared.Sorted, results);
    }

    /// <summary>Reads and plans one job.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="parts">The parts that jobs may name.</param>
    /// <param name="id">The job.</param>
    public static PlannedJob One(IJobFiles files, PartLibrary parts, string id)
    {
        var reading = new JobReader(files, parts).Read(id);
        var units = new JobUnits(reading.Units, reading.LevelUnit);
        if (reading.Job is null) return new(id, null, reading.Findings, units);
        using var terrain = reading.Job.Siting.Terrain is { } folder ? new TerrainTiles(files, folder.Value) : null;
        var plan = Planner.Plan(reading.Job, parts, terrain, reading.Findings);
        return new(id, plan, plan.Findings, units);
    }
}

/// <summary>All jobs of a folder.</summary>
/// <param name="SharedFindings">Findings about the shared parts.</param>
/// <param name="Jobs">The jobs in ordinal order.</param>
internal sealed record JobSet(IReadOnlyList<Finding> SharedFindings, IReadOnlyList<PlannedJob> Jobs);
