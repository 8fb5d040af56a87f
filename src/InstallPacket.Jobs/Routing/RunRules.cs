namespace InstallPacket.Jobs.Routing;

/// <summary>Each run is used by one element, from where it begins to where it ends, and its drip loops lie on it.</summary>
internal static class RunRules
{
    public static void Check(Job job, FindingList findings)
    {
        foreach (var run in job.Routing.Runs)
        {
            foreach (var loop in run.DripLoops.Where(p => !run.Path.Contains(p)))
                findings.Add(Severity.Stop, "drip-loop-off-path", run.DripLoopsAt, ("run", run.Id), ("point", loop), ("path", run.Path));
            foreach (var point in run.Given is null ? run.Path.Where(job.Routing.Unmeasured.ContainsKey) : [])
                findings.Add(Severity.Stop, "place-unmeasured", run.PathAt, ("run", run.Id), ("point", point));
            string[] elements = [.. job.Cabling.Chain.Where(e => e.Run == run.Id || e.SecondRun == run.Id).Select(e => e.Id)];
            if (elements.Length > 1)
                findings.Add(Severity.Stop, "run-used-twice", run.At, ("run", run.Id), ("elements", elements));
            else if (elements.Length == 0 && job.Cabling.Internet?.Connected.Any(r => r.Value == run.Id) != true)
                findings.Add(Severity.Caution, "run-unused", run.At, ("run", run.Id));
        }
        foreach (var e in job.Cabling.Chain.Where(e => e.Run is not null && e.From is not null)) CheckEnds(job, e, findings);
        foreach (var e in job.Cabling.Chain.Where(e => e.SecondRun is not null && e.Second is not null))
            CheckEnds(job, e with { Run = e.SecondRun, From = e.Second }, findings);
    }

    private static void CheckEnds(Job job, Element e, FindingList findings)
    {
        var path = job.Routing.Runs.First(r => r.Id == e.Run).Path;
        var from = job.Cabling.Chain.First(f => f.Id == e.From);
        if (path[0] != from.Point || path[^1] != e.Point)
            findings.Add(Severity.Stop, "run-ends-elsewhere", e.RunAt, ("run", e.Run), ("start", path[0]), ("end", path[^1]),
                ("from", from.Id),
                ("from_point", from.Point), ("to", e.Id), ("to_point", e.Point));
    }
}
