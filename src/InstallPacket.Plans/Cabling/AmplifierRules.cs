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
            findings.Add(Severity.Stop, "setting-out-of-reach", e.SettingAt, $"{e.Id} is set to {UnitText.Write(setting.Db, 1, "dB")}",
                $"{e.Part.Id} goes from {UnitText.Number(least, 1)} to {UnitText.Write(largest, 1, "dB")}", "set it within its range, or choose another amplifier");
    }

    private void CheckOverload(Element e, AmplifierPart part)
    {
        if (part.LargestOutput is not { } largest || loads.Of(e) is not { ReserveDb: { } reserve } load || reserve >= ReserveDb) return;
        var print = UnitPrinter.Of(job);
        var others = load.Inputs.Skip(1).TakeWhile(i => i.Dbm > load.Inputs[0].Dbm - 10).Select(i => $"`{i.Station.Id}`").Take(4).ToArray();
        findings.Add(Severity.Stop, "amplifier-overloaded", e.At,
            $"all stations together drive {e.Id} to {print.Level(load.TotalDbm + load.GainDb)} at its output; the strongest is `{load.Inputs[0].Station.Id}`{(others.Length > 0 ? ", within 10 dB of it " + string.Join(", ", others) : "")}",
            $"{print.Level(largest.Dbm)} less a reserve of 3 dB ({part.ProvenanceOf(AmplifierPartKeys.LargestOutput)}: see the part {e.Part.Id})",
            $"lower the gain by {UnitText.Write(Math.Ceiling(ReserveDb - reserve), 0, "dB")}, put an attenuator or a filter in front, or leave the amplifier out");
    }

    private void CheckProducts(Element e)
    {
        foreach (var s in reception.Wanted)
        {
            if (loads.CarrierToProductsDb(e, s) is not { } ratio || ratio > s.Budget!.RequiredCnDb + ProductsReserveDb) continue;
            findings.Add(Severity.Caution, "products-in-channel", e.At, $"products of the strong stations in {e.Id} come within {UnitText.Write(ratio, 1, "dB")} of `{s.Id}`",
                $"the channel needs {UnitText.Write(s.Budget.RequiredCnDb, 1, "dB")}; 10 dB more keep the products from mattering (our rule; intercept of {e.Part.Id} {e.Part.ProvenanceOf(AmplifierPartKeys.Intercept)})",
                "lower the gain: each decibel less takes two off the products; or put a filter for the strong station in front");
        }
    }

    // More gain than the loss that follows brings nothing but overload.
    private void CheckGain(Element e, AmplifierPart part)
    {
        if (Highest(e) is not { } highest || chain.PathTo(e, highest).Any(p => p != e && p.Part is AmplifierPart)) return;
        var outlets = chain.Outlets.Where(o => chain.PathTo(o).Contains(e)).ToArray();
        if (outlets.Length == 0) return;
        var before = steps.Steps(chain.PathTo(e, highest), highest, job.Cabling.HotC).Count;
        var behind = outlets.Max(o => -steps.Steps(chain.PathTo(o, highest), highest, job.Cabling.HotC).Skip(before).Append(steps.FlyLead(o, highest)).Sum(s => s.Stage.GainDb));
        var gain = e.Setting?.Db ?? part.AmplificationDb?.At(highest) ?? 0;
        if (gain <= behind + MostGainBeyondDb) return;
        findings.Add(Severity.Caution, "gain-beyond-loss", e.At, $"{e.Id} amplifies by {UnitText.Write(gain, 1, "dB")}, and at most {UnitText.Write(behind, 1, "dB")} of loss follow (hot cable, {UnitText.Write(highest, 0, "MHz")})",
            "the gain of a first amplifier should not exceed the loss behind it by more than 10 dB (read: guidance of the trade)", "lower the gain, or use a smaller amplifier: the noise figure hardly changes, and strong stations leave more room");
    }

    private void CheckLossInFront(Element e)
    {
        if (Highest(e) is not { } highest) return;
        var path = chain.PathTo(e, highest);
        if (path.SkipLast(1).Any(p => p.Part is AmplifierPart)) return;
        var loss = -steps.Steps(path, highest, job.Cabling.HotC).SkipLast(1).Sum(s => s.Stage.GainDb);
        if (loss > MostLossInFrontDb)
            findings.Add(Severity.Caution, "loss-before-amplifier", e.At,
                $"{UnitText.Write(loss, 1, "dB")} of loss stands between the antenna and its first amplifier {e.Id} (hot cable, {UnitText.Write(highest, 0, "MHz")}); with the same amplifier at the antenna C/N would be {UnitText.Write(Cost(e, highest), 1, "dB")} better",
                "every decibel in front of the amplifier is lost to C/N (Friis: noise of a passive part equals its loss); more than 3 dB is worth a move (our rule)",
                "put the amplifier at the antenna");
    }

    // The same stages with the amplifier first, at the outlet that gains least.
    private double Cost(Element e, double frequencyMHz) => chain.Outlets.Where(o => chain.PathTo(o).Contains(e)).Select(o =>
    {
        var stages = steps.Steps(chain.PathTo(o, frequencyMHz), frequencyMHz, job.Cabling.HotC).Append(steps.FlyLead(o, frequencyMHz)).ToList();
        var receiver = new Stage("receiver", 0, job.Cabling.Receiver.NoiseFigureDb?.At(frequencyMHz) ?? 0);
        double Figure(IEnumerable<ChainStep> order) => NoiseCascade.Friis([.. order.Select(s => s.Stage), receiver])[^1].NoiseFigureDb;
        return Figure(stages) - Figure(stages.Where(s => s.Element == e && s.Stage.GainDb > 0).Concat(stages.Where(s => !(s.Element == e && s.Stage.GainDb > 0))));
    }).DefaultIfEmpty(0).Min();

    // Highest wanted channel that passes the amplifier; null when none does.
    private double? Highest(Element e) => reception.Wanted.Where(s => chain.Passes(e, s.FrequencyMhz)).Select(s => (double?)s.FrequencyMhz).Max();
}
