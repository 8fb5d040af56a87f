using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about amplifiers: overload, setting, loss in front.</summary>
internal sealed class AmplifierRules(
    Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps, AmplifierLoads loads, FindingList findings)
{
    private const double MostLossInFrontDb = 3;
    private const double ReserveDb = 3;
    private const double ProductsReserveDb = 10;
    private const double MostGainBeyondDb = 10;

    public void Check()
    {
        foreach (var amplifier in job.Cabling.Chain.Where(e => e.Part is AmplifierPart))
        {
            var part = (AmplifierPart)amplifier.Part;
            CheckSetting(amplifier, part);
            CheckOverload(amplifier, part);
            CheckProducts(amplifier);
            CheckGain(amplifier, part);
            CheckLossInFront(amplifier);
        }
    }

    private void CheckSetting(Element e, AmplifierPart part)
    {
        if (e.Setting is not { } setting || part.AmplificationDb is not { } most) return;
        var (least, largest) = (part.LeastAmplificationDb ?? 0, most.Points.Max(p => p.Value));
        if (setting.Db < least || setting.Db > largest)
            findings.Add(Severity.Stop, "setting-out-of-reach", e.SettingAt, ("element", e.Id), ("set_db", setting.Db),
                ("part", e.Part.Id), ("least_db", least),
                ("most_db", largest));
    }

    private void CheckOverload(Element e, AmplifierPart part)
    {
        if (part.LargestOutput is not { } largest || loads.Of(e) is not { ReserveDb: { } reserve } load || reserve >= ReserveDb) return;
        var others = load.Inputs.Skip(1).TakeWhile(i => i.Dbm > load.Inputs[0].Dbm - 10).Select(i => i.Station.Id).Take(4).ToArray();
        findings.Add(Severity.Stop, "amplifier-overloaded", e.At, ("element", e.Id), ("output_dbm", load.TotalDbm + load.GainDb),
            ("strongest", load.Inputs[0].Station.Id), ("others", others), ("largest_dbm", largest.Dbm),
            ("source", part.ProvenanceOf(AmplifierPartKeys.LargestOutput)), ("part", e.Part.Id),
                ("lower_db", Math.Ceiling(ReserveDb - reserve)));
    }

    private void CheckProducts(Element e)
    {
        foreach (var s in reception.Wanted)
        {
            if (loads.CarrierToProductsDb(e, s) is not { } ratio || ratio > s.Budget!.RequiredCnDb + ProductsReserveDb) continue;
            findings.Add(Severity.Caution, "products-in-channel", e.At, ("element", e.Id), ("ratio_db", ratio.Number), ("station", s.Id),
                ("required_db", s.Budget.RequiredCnDb), ("part", e.Part.Id), ("source", e.Part.ProvenanceOf(AmplifierPartKeys.Intercept)));
        }
    }

    // More gain than the loss that follows brings nothing but overload.
    private void CheckGain(Element e, AmplifierPart part)
    {
        if (Highest(e) is not { } highest || chain.PathTo(e, highest).Any(p => p != e && p.Part is AmplifierPart)) return;
        var outlets = chain.Outlets.Where(o => chain.PathTo(o).Contains(e)).ToArray();
        if (outlets.Length == 0) return;
        var before = steps.Steps(chain.PathTo(e, highest), highest, job.Cabling.HotC).Count;
        var behind = outlets.Max(o =>
            -steps.Steps(chain.PathTo(o, highest), highest, job.Cabling.HotC).Skip(before).Append(steps.FlyLead(o, highest)).Sum(s =>
            s.Stage.GainDb));
        var gain = e.Setting?.Db ?? part.AmplificationDb?.At(highest) ?? 0;
        if (gain <= behind + MostGainBeyondDb) return;
        findings.Add(Severity.Caution, "gain-beyond-loss", e.At, ("element", e.Id), ("gain_db", gain), ("loss_db", behind),
            ("frequency_mhz", highest));
    }

    private void CheckLossInFront(Element e)
    {
        if (Highest(e) is not { } highest) return;
        var path = chain.PathTo(e, highest);
        if (path.SkipLast(1).Any(p => p.Part is AmplifierPart)) return;
        var loss = -steps.Steps(path, highest, job.Cabling.HotC).SkipLast(1).Sum(s => s.Stage.GainDb);
        if (loss > MostLossInFrontDb)
            findings.Add(Severity.Caution, "loss-before-amplifier", e.At, ("element", e.Id), ("loss_db", loss), ("frequency_mhz", highest),
                ("better_db", Cost(e, highest)));
    }

    // The same stages with the amplifier first, at the outlet that gains least.
    private double Cost(Element e, double frequencyMHz) => chain.Outlets.Where(o => chain.PathTo(o).Contains(e)).Select(o =>
    {
        var stages = steps.Steps(chain.PathTo(o, frequencyMHz), frequencyMHz,
            job.Cabling.HotC).Append(steps.FlyLead(o, frequencyMHz)).ToList();
        var receiver = new Stage("receiver", 0, job.Cabling.Receiver.NoiseFigureDb?.At(frequencyMHz) ?? 0);
        double Figure(IEnumerable<ChainStep> order) => NoiseCascade.Friis([.. order.Select(s => s.Stage), receiver])[^1].NoiseFigureDb;
        return Figure(stages) - Figure(stages.Where(s => s.Element == e
            && s.Stage.GainDb > 0).Concat(stages.Where(s => !(s.Element == e && s.Stage.GainDb > 0))));
    }).DefaultIfEmpty(0).Min();

    // Highest wanted channel that passes the amplifier; null when none does.
    private double? Highest(Element e) =>
        reception.Wanted.Where(s => chain.Passes(e, s.FrequencyMhz)).Select(s => (double?)s.FrequencyMhz).Max();
}
