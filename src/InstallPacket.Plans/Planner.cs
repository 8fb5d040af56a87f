using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;
using InstallPacket.Jobs.Terrain;

namespace InstallPacket.Plans;

/// <summary>Job to plan: one planner per domain word, in a fixed order, each seeing the plans before it.</summary>
public static class Planner
{
    /// <summary>Plans a job.</summary>
    /// <param name="job">What the author wrote.</param>
    /// <param name="parts">The parts library.</param>
    /// <param name="terrain">The ground around the job; null when the job names no tiles.</param>
    /// <param name="readFindings">Findings of reading, to be kept with those of planning.</param>
    public static Plan Plan(Job job, PartLibrary parts, ITerrain? terrain, IEnumerable<Finding> readFindings)
    {
        parts = parts.With(job.OwnParts);
        var code = CodeFamily.Of(job.Code);
        var log = new WorkLog();
        var findings = new FindingList();
        findings.AddRange(readFindings);
        var ground = new GroundView(job, terrain);
        var siting = new SitingPlanner(job, ground, log, findings).Plan();
        var routing = new RoutingPlanner(job, code, parts, log, findings).Plan();
        var noise = new ChainNoise(job, routing);
        var reception = new ReceptionPlanner(job, code, siting, ground, noise, log, findings).Plan();
        ReceptionPlan Receive(Job changed) => new ReceptionPlanner(changed, code, siting, ground, noise, new WorkLog(), new FindingList()).Plan();
        var cabling = new CablingPlanner(job, reception, routing, log, findings).Plan();
        cabling = new CurePlanner(job, reception, routing, parts, Receive, findings).Plan(cabling);
        var mounting = new MountingPlanner(job, code, log, findings).Plan();
        var bonding = new BondingPlanner(job, code, log, findings).Plan();
        var materials = new MaterialsPlanner(job, siting, routing, mounting, parts, log, findings).Plan();
        var handover = new HandoverPlanner(job, reception, cabling, routing, mounting, bonding, materials).Plan();
        return new Plan
        {
            Job = new(job.Id, job.Title, job.Date.Value, job.Code, code.Name, job.Units == UnitFamily.Us ? "us" : "metric", job.Paper, job.LevelUnit, job.Language ?? code.Language, job.PreparedBy, job.Customer),
            Siting = siting,
            Reception = reception,
            Cabling = cabling,
            Routing = routing,
            Mounting = mounting,
            Bonding = bonding,
            Materials = materials,
            Handover = handover,
            Findings = findings.Sorted,
            Workings = log.Entries,
        };
    }
}
