namespace InstallPacket.Plans;

/// <summary>Job to plan: one planner per domain word, in a fixed order, each seeing the plans before it.</summary>
public static class Planner
{
    /// <summary>Plans a job.</summary>
    /// <param name="job">What the author wrote.</param>
    /// <param name="parts">The parts library.</param>
    /// <param name="terrain">The ground around the job; null when the job names no tiles.</param>
    /// <param name="readFindings">Findings of reading, to be kept with those of planning.</param>
    /// <param name="codes">The code families; those of the program when absent.</param>
    public static Plan Plan(Job job, PartLibrary parts, ITerrain? terrain, IEnumerable<Finding> readFindings, CodeFamilies? codes = null)
    {
        parts = parts.With(job.OwnParts);
        var code = (codes ?? CodeFamilies.BuiltIn).Of(job.Code);
        var (work, findings) = (new Workings(), new FindingList());
        findings.AddRange(readFindings);
        T Kept<T>(Planned<T> planned) => Taken(planned, true, true);
        // Of a house where nobody was nothing is said but what reaches it.
        T Surveyed<T>(Planned<T> planned) => Taken(planned, !job.IsStudy, !job.IsStudy);
        // Its lengths of cable are printed: their workings stay.
        T Laid<T>(Planned<T> planned) => Taken(planned, true, !job.IsStudy);
        T Taken<T>(Planned<T> planned, bool workings, bool said)
        {
            if (workings) work.Take(planned.Work);
            if (said) findings.AddRange(planned.Findings.Sorted);
            return planned.Plan;
        }
        job = HouseGround.Known(job, terrain, findings);
        var ground = new GroundView(job, terrain);
        var siting = Kept(new SitingPlanner(job, ground).Plan());
        var routing = Laid(new RoutingPlanner(job, code, parts).Plan());
        var noise = new ChainNoise(job, routing);
        // What stands in the way is seen from the height of the antenna.
        SitingPlan From(Job changed) => changed.Siting.AntennaHeight == job.Siting.AntennaHeight ? siting : new SitingPlanner(changed, ground).Plan().Plan;
        Planned<ReceptionPlan> Receive(Job changed) => new ReceptionPlanner(changed, code, From(changed), ground, noise).Plan();
        var reception = Kept(Receive(job));
        var cabling = Kept(new CablingPlanner(job, code, reception, routing).Plan());
        cabling = Kept(new FixPlanner(job, code, reception, routing, parts, changed => Receive(changed).Plan).Plan(cabling));
        var mounting = Surveyed(new MountingPlanner(job, code).Plan());
        var bonding = Surveyed(new BondingPlanner(job, code).Plan());
        var materials = Surveyed(new MaterialsPlanner(job, siting, routing, mounting, parts).Plan());
        var handover = new HandoverPlanner(job, reception, cabling, routing, mounting, bonding, materials).Plan();
        return new Plan
        {
            Job = new(job.Id, job.Title, job.Date.Value, job.Code, code.Name, job.Units, job.Paper, job.LevelUnit, job.Language
                ?? code.Defaults.Language, job.PreparedBy, job.Customer) { Study = job.IsStudy },
            Siting = siting,
            Reception = reception,
            Cabling = cabling,
            Routing = routing,
            Mounting = mounting,
            Bonding = bonding,
            Materials = materials,
            Handover = handover,
            Findings = findings.Sorted,
            Workings = work.Rows,
        };
    }
}
