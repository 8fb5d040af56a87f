using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about what shares the tree of cables, and about the cables themselves.</summary>
internal sealed class TreeRules(Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps, Workings work, FindingList findings)
{
    private const double MostRippleDb = 1;

    public void Check()
    {
        new AntennaRules(job, reception, chain, findings).Check();
        new ProtectorRules(job, chain, findings).Check();
        foreach (var service in job.Cabling.AlsoCarries) CheckService(service);
        CheckExisting();
        CheckKinds();
        foreach (var e in job.Cabling.Chain.Where(e => e.Run is not null && e.From is not null)) CheckRipple(e);
    }

    private void CheckService(Sourced<SharedService> service)
    {
        var services = job.Cabling.AlsoCarries.Select(s => s.Value).ToArray();
        switch (service.Value)
        {
            case SharedService.Operator:
                findings.Add(Severity.Stop, "operator-shared", service.At);
                break;
            case SharedService.Moca when services.Contains(SharedService.Satellite):
                findings.Add(Severity.Stop, "moca-satellite", service.At);
                break;
            case SharedService.Moca:
                new MocaRules(job, chain, findings).Check(service.At);
                break;
            case SharedService.Satellite:
                findings.Add(Severity.Caution, "satellite-diplexer", service.At);
                break;
        }
    }

    private void CheckExisting()
    {
        // Where the job says which runs hang on the service, somebody traced them.
        if (job.Internet != InternetKind.Coax || job.Cabling.Internet?.CutOff is not null) return;
        var staying = job.Cabling.Internet?.Connected.Select(r => r.Value) ?? [];
        foreach (var run in job.Routing.Runs.Where(r => r.Existing && !staying.Contains(r.Id)))
            findings.Add(Severity.Caution, "existing-coax", run.At, ("run", run.Id));
    }

    private void CheckKinds()
    {
        var kinds = job.Routing.Runs.Where(r => !r.Existing).GroupBy(r => r.Cable.Id, StringComparer.Ordinal).OrderByDescending(g =>
            g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).ToArray();
        foreach (var odd in kinds.Skip(1))
            findings.Add(Severity.Note, "cable-mixed", odd.First().At, ("runs", odd.Select(r => r.Id)), ("cable", odd.Key),
                ("other", kinds[0].Key));
    }

    // Two reflections with a cable between them make a ripple over frequency; the loss of the cable quietens it.
    private void CheckRipple(Element e)
    {
        var from = job.Cabling.Chain.First(f => f.Id == e.From);
        if (from.Part.ReturnLossDb is not { } one || e.Part.ReturnLossDb is not { } other || !reception.Wanted.Any()) return;
        var lowest = reception.Wanted.Min(s => s.FrequencyMhz);
        var loss = steps.Steps(chain.PathTo(e, lowest), lowest, job.Cabling.ColdC).First(s => s.Element == e).Noise;
        var ripple = work.Apply(MismatchRipple.PeakToPeakFormula, $"run {e.Run!}, {UnitText.Number(lowest, 0)} MHz",
            from.Part.Figure(ChainKeys.ReturnLoss, one.At(lowest)), e.Part.Figure(ChainKeys.ReturnLoss, other.At(lowest)), loss);
        if (ripple > MostRippleDb)
            findings.Add(Severity.Note, "run-ripple", e.RunAt, ("from", from.Id), ("to", e.Id), ("ripple_db", ripple.Number),
                ("run", e.Run));
    }
}
