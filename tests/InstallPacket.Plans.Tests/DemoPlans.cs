using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Plans of the demo jobs.</summary>
internal static class DemoPlans
{
    public static Plan Of(string id, DemoJobs? jobs = null)
    {
        jobs ??= DemoJobs.Load();
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
