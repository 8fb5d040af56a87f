namespace InstallPacket.Jobs.Cabling;

/// <summary>What the job says of an internet service: nothing of the antenna may stay connected to it.</summary>
internal static class ServiceRules
{
    public static void Check(Job job, FindingList findings)
    {
        if (job.Cabling.Internet is not { } service) return;
        if (job.Handover.InternetSaid is { } said && said.Value != job.Internet && said.Value != InternetKind.None)
            findings.Add(Severity.Stop, "internet-contradicted", said.At, ("said", Word.Of(said.Value)), ("kind", Word.Of(service.Unit)),
                ("over", Word.Of(service.Over)));
        if (service.Over != ServiceLine.Coax || service.Unit == ServiceUnit.None) return;
        foreach (var run in service.Connected) CheckConnected(job, service, run, findings);
        foreach (var run in service.CutOff ?? []) CheckThere(job, run, findings);
    }

    private static void CheckConnected(Job job, ServiceEntry service, Sourced<string> run, FindingList findings)
    {
        CheckThere(job, run, findings);
        if (service.CutOff?.Any(r => r.Value == run.Value) == true)
            findings.Add(Severity.Stop, "service-run-unfit", "both", run.At, ("run", run.Value));
        if (job.Routing.Runs.Any(r => r.Id == run.Value && r.NewConnectors))
            findings.Add(Severity.Stop, "service-run-unfit", "connectors", run.At, ("run", run.Value));
        if (job.Cabling.Chain.FirstOrDefault(e => e.Run == run.Value || e.SecondRun == run.Value) is { } fed && !Parted(job.Cabling, fed, run.Value))
            findings.Add(Severity.Stop, "service-shared", run.At, ("run", run.Value), ("element", fed.Id), ("kind", Word.Of(service.Unit)));
    }

    private static void CheckThere(Job job, Sourced<string> run, FindingList findings)
    {
        if (job.Routing.Runs.Any(r => r.Id == run.Value && !r.Existing))
            findings.Add(Severity.Stop, "service-run-unfit", "new", run.At, ("run", run.Value));
    }

    // A filter or a combiner of bands at one of its ends keeps the two signals apart.
    private static bool Parted(CablingSection cabling, Element fed, string run)
    {
        var feeder = fed.Run == run ? fed.From : fed.Second;
        return new[] { fed, cabling.Chain.FirstOrDefault(e => e.Id == feeder) }.Any(e => e?.Part is FilterPart or CombinerPart);
    }
}
