using System.Collections.Concurrent;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Plans of the demo jobs.</summary>
internal static class DemoPlans
{
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Unchanged = new(StringComparer.Ordinal);

    /// <summary>The plan of a job as it stands in the checkout, made once, or of changed jobs.</summary>
    public static Plan Of(string id, DemoJobs? jobs = null) =>
        jobs is null ? Unchanged.GetOrAdd(id, i => new(() => Made(i, DemoJobs.Load()))).Value : Made(id, jobs);

    /// <summary>The plan of a changed job without stations and tiles, for tests of the house: they add nothing there and cost time.</summary>
    public static Plan House(string id, DemoJobs? jobs = null)
    {
        if (jobs is null) return Of(id);
        var job = jobs.Job(id);
        job = job with { Siting = job.Siting with { Terrain = null, Profiles = [] }, Reception = job.Reception with { Stations = [], Want = [] } };
        return Planner.Plan(job, jobs.Parts(), null, []);
    }

    /// <summary>A plan of its own, for tests of whether two plans are alike.</summary>
    public static Plan Made(string id, DemoJobs jobs)
    {
        var job = jobs.Job(id);
        using var terrain = job.Siting.Terrain is { } folder ? new TerrainTiles(jobs, folder.Value) : null;
        return Planner.Plan(job, jobs.Parts(), terrain, []);
    }

    public static StationPlan Station(this Plan plan, string id) => plan.Reception.Stations.Single(s => s.Id == id);

    public static OutletChannel At(this Plan plan, string outlet, string station) =>
        plan.Cabling.Outlets.Single(o => o.Id == outlet).Channels.Single(c => c.Station == station);

    public static bool Has(this Plan plan, string id) => plan.Findings.Any(f => f.Id == id);

    public static Finding Finding(this Plan plan, string id) => plan.Findings.Single(f => f.Id == id);
}
