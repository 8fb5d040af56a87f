namespace InstallPacket.Jobs;

/// <summary>Rules that span several keys of a job and need no arithmetic of the trade.</summary>
internal static class JobRules
{
    public static void Check(Job job, FindingList findings)
    {
        CheckDuplicateWants(job.Reception, findings);
        CheckRuns(job, findings);
        RoutingRules.Check(job.Routing, findings);
        foreach (var profile in job.Siting.Profiles) CheckProfile(profile, findings);
        foreach (var e in job.Cabling.Chain.Where(e => e.Setting is not null && e.Part is not AmplifierPart))
            findings.Add(Severity.Stop, "setting-without-amplifier", e.SettingAt, ("element", e.Id), ("kind", Word.Of(e.Part.Kind)));
    }

    private static void CheckDuplicateWants(ReceptionSection reception, FindingList findings)
    {
        foreach (var twice in reception.Want.GroupBy(w => w.Value, StringComparer.Ordinal).Where(g => g.Count() > 1))
            foreach (var again in twice.Skip(1))
                findings.Add(Severity.Stop, "duplicate-want", again.At, ("station", twice.Key));
    }

    private static void CheckProfile(MeasuredProfile profile, FindingList findings)
    {
        if (profile.Points[0].DistanceM != 0)
            findings.Add(Severity.Stop, "profile-unfit", "start", profile.At, ("station", profile.Station), ("start_m", profile.Points[0].DistanceM));
        for (var i = 1; i < profile.Points.Count; i++)
            if (profile.Points[i].DistanceM <= profile.Points[i - 1].DistanceM)
                findings.Add(Severity.Stop, "profile-unfit", "order", profile.At, ("station", profile.Station), ("from_m", profile.Points[i - 1].DistanceM),
                    ("to_m", profile.Points[i].DistanceM), ("point", i + 1), ("before", i));
    }

    private static void CheckRuns(Job job, FindingList findings)
    {
        foreach (var run in job.Routing.Runs)
        {
            foreach (var loop in run.DripLoops.Where(p => !run.Path.Contains(p)))
                findings.Add(Severity.Stop, "drip-loop-off-path", run.DripLoopsAt, ("run", run.Id), ("point", loop), ("path", run.Path));
            string[] elements = [.. job.Cabling.Chain.Where(e => e.Run == run.Id || e.SecondRun == run.Id).Select(e => e.Id)];
            if (elements.Length > 1)
                findings.Add(Severity.Stop, "run-used-twice", run.At, ("run", run.Id), ("elements", elements));
            else if (elements.Length == 0)
                findings.Add(Severity.Caution, "run-unused", run.At, ("run", run.Id));
        }
        foreach (var e in job.Cabling.Chain.Where(e => e.Run is not null && e.From is not null)) CheckEnds(job, e, findings);
        foreach (var e in job.Cabling.Chain.Where(e => e.SecondRun is not null && e.Second is not null)) CheckEnds(job, e with { Run = e.SecondRun, From = e.Second }, findings);
    }

    private static void CheckEnds(Job job, Element e, FindingList findings)
    {
        var path = job.Routing.Runs.First(r => r.Id == e.Run).Path;
        var from = job.Cabling.Chain.First(f => f.Id == e.From);
        if (path[0] != from.Point || path[^1] != e.Point)
            findings.Add(Severity.Stop, "run-ends-elsewhere", e.RunAt, ("run", e.Run), ("start", path[0]), ("end", path[^1]), ("from", from.Id),
                ("from_point", from.Point), ("to", e.Id), ("to_point", e.Point));
    }
}
