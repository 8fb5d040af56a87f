using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about what shares the tree of cables, and about the cables themselves.</summary>
internal sealed class TreeRules(Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps, Workings work, FindingList findings)
{
    private const double MostRippleDb = 1;

    public void Check()
    {
        foreach (var service in job.Cabling.AlsoCarries) CheckService(service);
        CheckExisting();
        CheckKinds();
        foreach (var e in job.Cabling.Chain.Where(e => e.Run is not null && e.From is not null)) CheckRipple(e);
    }

    private void CheckService(Sourced<SharedService> service)
    {
        var services = job.Cabling.AlsoCarries.Select(s => s.Value).ToArray();
        var amplifier = job.Cabling.Chain.FirstOrDefault(e => e.Part is AmplifierPart);
        switch (service.Value)
        {
            case SharedService.Operator:
                findings.Add(Severity.Stop, "operator-shared", service.At, "this tree also carries the plant of a cable operator", "both use 54 to 1002 MHz, and an antenna on the plant radiates the operator's signals (memory: practice and the law on leakage)",
                    "keep two trees with two labels; cut the antenna's tree off from the operator's, cap the open end, and note it for the customer");
                break;
            case SharedService.Moca when services.Contains(SharedService.Satellite):
                findings.Add(Severity.Stop, "moca-satellite", service.At, "this tree carries MoCA and satellite", "satellite uses 950 to 2150 MHz, MoCA 1125 to 1675 MHz: they overlap (read: the shared range)", "give one of them cables of its own");
                break;
            case SharedService.Moca when amplifier is not null && !chain.FedBy(amplifier).Any(e => e.Part is FilterPart):
                findings.Add(Severity.Caution, "moca-amplifier", service.At, $"this tree carries MoCA, and no filter follows {amplifier.Id}", "MoCA at 1125 to 1675 MHz can overload an amplifier, and no amplifier lets it pass (read: the range; memory: the rest)",
                    "put a low-pass to 1002 MHz on the house side of the amplifier, and use splitters made for 1675 MHz");
                break;
            case SharedService.Satellite:
                findings.Add(Severity.Caution, "satellite-diplexer", service.At, "this tree also carries satellite", "950 to 2150 MHz need diplexers at both ends, and splitters, outlets and cable made for it (read: the range; memory: the rest)", "plan the diplexers and their loss as parts of the chain");
                break;
        }
    }

    private void CheckExisting()
    {
        foreach (var run in job.Routing.Runs.Where(r => r.Existing && job.Handover.ExistingInternet == InternetKind.Coax))
            findings.Add(Severity.Caution, "existing-coax", run.At, $"run {run.Id} uses cable that lies in the house, and an internet service uses coax here", "a shared splitter or wall plate would join the antenna to the operator's plant (common practice)",
                "trace this cable from end to end, take it off the operator's side, cap and label that end, and leave the internet cable alone");
    }

    private void CheckKinds()
    {
        var kinds = job.Routing.Runs.Where(r => !r.Existing).GroupBy(r => r.Cable.Id, StringComparer.Ordinal).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).ToArray();
        foreach (var odd in kinds.Skip(1))
            findings.Add(Severity.Note, "cable-mixed", odd.First().At, $"{string.Join(", ", odd.Select(r => r.Id))} {(odd.Count() > 1 ? "are" : "is")} `{odd.Key}`, the other runs `{kinds[0].Key}`", "each kind has its own connector, tool and bend radius (common practice)", "mark the pieces, and take both kinds of connectors along");
    }

    // Two reflections with a cable between them make a ripple over frequency; the loss of the cable quietens it.
    private void CheckRipple(Element e)
    {
        var from = job.Cabling.Chain.First(f => f.Id == e.From);
        if (from.Part.ReturnLossDb is not { } one || e.Part.ReturnLossDb is not { } other || !reception.Wanted.Any()) return;
        var lowest = reception.Wanted.Min(s => s.FrequencyMhz);
        var loss = steps.Steps(chain.PathTo(e, lowest), lowest, job.Cabling.ColdC).First(s => s.Element == e).Noise;
        var ripple = work.Apply(MismatchRipple.PeakToPeakFormula, $"run {e.Run!}, {UnitText.Number(lowest, 0)} MHz",
            Term.Part(from.Part.Id, "return-loss", one.At(lowest)), Term.Part(e.Part.Id, "return-loss", other.At(lowest)), loss);
        if (ripple > MostRippleDb)
            findings.Add(Severity.Note, "run-ripple", e.RunAt, $"reflections at {from.Id} and {e.Id} make a ripple of {UnitText.Write(ripple, 1, "dB")} along run {e.Run}", "more than 1 dB is worth a pad (our rule)", "put an attenuator of 3 dB at one end: it takes 6 dB off the echo");
    }
}
