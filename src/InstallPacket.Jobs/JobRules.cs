namespace InstallPacket.Jobs;

/// <summary>Rules that span several keys of a job and need no arithmetic of the trade; each domain checks its own.</summary>
internal static class JobRules
{
    public static void Check(Job job, FindingList findings)
    {
        ReceptionRules.Check(job.Reception, findings);
        RunRules.Check(job, findings);
        RoutingRules.Check(job.Routing, findings);
        ProfileRules.Check(job.Siting, findings);
        SettingRules.Check(job.Cabling, findings);
        ServiceRules.Check(job, findings);
    }
}
