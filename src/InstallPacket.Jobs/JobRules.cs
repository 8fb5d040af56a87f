using InstallPacket.Calc.Quantities;

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
            findings.Add(Severity.Stop, "setting-without-amplifier", e.SettingAt, $"cabling.chain.{e.Id} has a `setting` and is a part of the kind {Word.Of(e.Part.Kind)}", "only amplifiers have a gain to set", "remove `setting`");
    }

    private static void CheckDuplicateWants(ReceptionSection reception, FindingList findings)
    {
        foreach (var twice in reception.Want.GroupBy(w => w.Value, StringComparer.Ordinal).Where(g => g.Count() > 1))
            foreach (var again in twice.Skip(1))
                findings.Add(Severity.Stop, "duplicate-want", again.At, $"reception.want names `{twice.Key}` again", "each station once", "remove one");
    }

    private static void CheckProfile(MeasuredProfile profile, FindingList findings)
    {
        if (profile.Points[0].DistanceM != 0)
            findings.Add(Severity.Stop, "profile-unfit", profile.At, $"the measured profile toward `{profile.Station}` begins {UnitText.Write(profile.Points[0].DistanceM, 0, "m")} from the antenna",
                "the first point lies at the antenna, at a distance of 0", "add the ground at the antenna");
        for (var i = 1; i < profile.Points.Count; i++)
            if (profile.Points[i].DistanceM <= profile.Points[i - 1].DistanceM)
                findings.Add(Severity.Stop, "profile-unfit", profile.At, $"the measured profile toward `{profile.Station}` goes from {UnitText.Write(profile.Points[i - 1].DistanceM, 0, "m")} to {UnitText.Write(profile.Points[i].DistanceM, 0, "m")}: point {i + 1} does not lie beyond point {i}",
                    "distances grow from the antenna to the transmitter", "put the points in order");
    }

    private static void CheckRuns(Job job, FindingList findings)
    {
        foreach (var run in job.Routing.Runs)
        {
            foreach (var loop in run.DripLoops.Where(p => !run.Path.Contains(p)))
                findings.Add(Severity.Stop, "drip-loop-off-path", run.DripLoopsAt, $"routing.runs.{run.Id} has a drip loop at `{loop}`, which is not on its path",
                    "a drip loop hangs before a point of the path", "name a point of the path: " + string.Join(", ", run.Path));
            if (job.Cabling.Chain.Count(e => e.Run == run.Id || e.SecondRun == run.Id) > 1)
                findings.Add(Severity.Stop, "run-used-twice", run.At, $"routing.runs.{run.Id} is used by " + string.Join(" and ", job.Cabling.Chain.Where(e => e.Run == run.Id || e.SecondRun == run.Id).Select(e => e.Id)),
                    "one run is one piece of cable", "define a second run");
            else if (!job.Cabling.Chain.Any(e => e.Run == run.Id || e.SecondRun == run.Id))
                findings.Add(Severity.Caution, "run-unused", run.At, $"routing.runs.{run.Id} carries no signal: no element of the chain names it",
                    "every run brings a signal to an element", "name it as `run` of an element, or remove it");
        }
        foreach (var e in job.Cabling.Chain.Where(e => e.Run is not null && e.From is not null)) CheckEnds(job, e, findings);
        foreach (var e in job.Cabling.Chain.Where(e => e.SecondRun is not null && e.Second is not null)) CheckEnds(job, e with { Run = e.SecondRun, From = e.Second }, findings);
    }

    private static void CheckEnds(Job job, Element e, FindingList findings)
    {
        var path = job.Routing.Runs.First(r => r.Id == e.Run).Path;
        var from = job.Cabling.Chain.First(f => f.Id == e.From);
        if (path[0] != from.Point || path[^1] != e.Point)
            findings.Add(Severity.Stop, "run-ends-elsewhere", e.RunAt, $"run {e.Run} leads from `{path[0]}` to `{path[^1]}`, but brings the signal from {from.Id} at `{from.Point}` to {e.Id} at `{e.Point}`",
                "a run starts where the feeding element sits and ends where the fed one sits", "correct the path, or the `at` of one of the elements");
    }
}
