using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Findings about amplifiers: overload, setting, loss in front.</summary>
internal sealed class AmplifierRules(
    Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps, WorkLog log, FindingList findings)
{
    private const double MostLossInFrontDb = 3;
    private const double ReserveDb = 3;
    private const double NothingDbm = -1000; // no such signal exists; far below, the sum of powers is zero

    public void Check()
    {
        foreach (var amplifier in job.Cabling.Chain.Where(e => e.Part.IsAmplifier))
        {
            CheckSetting(amplifier);
            CheckOverload(amplifier);
            CheckLossInFront(amplifier);
        }
    }

    private void CheckSetting(Element e)
    {
        if (e.Setting is not { } setting || e.Part.AmplificationDb is not { } most) return;
        var (least, largest) = (e.Part.LeastAmplificationDb ?? 0, most.Points.Max(p => p.Value));
        if (setting.Db < least || setting.Db > largest)
            findings.Add(Severity.Stop, "setting-out-of-reach", e.SettingAt, $"{e.Id} is set to {UnitText.Write(setting.Db, 1, "dB")}",
                $"{e.Part.Id} goes from {UnitText.Number(least, 1)} to {UnitText.Write(largest, 1, "dB")}", "set it within its range, or choose another amplifier");
    }

    // Every carrier that the antenna picks up counts, wanted or not.
    private void CheckOverload(Element e)
    {
        var reckoned = reception.Stations.Where(s => s.Reckoned).ToArray();
        if (e.Part.LargestOutput is not { } largest || reckoned.Length == 0) return;
        var levels = reckoned.Select(s => (Station: s, Dbm: InputDbm(e, s))).ToArray();
        if (levels.Max(l => l.Dbm) < NothingDbm) return;
        var total = Total(e, [.. levels.OrderByDescending(l => l.Dbm).ThenBy(l => l.Station.Id, StringComparer.Ordinal)]);
        var gain = e.Setting?.Db ?? e.Part.AmplificationDb?.Points.Max(p => p.Value) ?? 0;
        var margin = log.Record(AmplifierOverload.MarginFormula, e.Id, AmplifierOverload.MarginDb(total, gain, largest.Dbm), total, gain, largest.Dbm);
        var print = UnitPrinter.Of(job);
        if (margin < ReserveDb)
            findings.Add(Severity.Stop, "amplifier-overloaded", e.At,
                $"all stations together drive {e.Id} to {print.Level(total + gain)} at its output; the strongest is `{levels.MaxBy(l => l.Dbm).Station.Id}`",
                $"{print.Level(largest.Dbm)} less a reserve of 3 dB ({e.Part.ProvenanceOf("largest-output")}: see the part {e.Part.Id})",
                $"lower the gain by {UnitText.Write(Math.Ceiling(ReserveDb - margin), 0, "dB")}, or leave the amplifier out");
    }

    // Added one after the other from the strongest on, so that the workings show every station.
    private double Total(Element e, (StationPlan Station, double Dbm)[] levels)
    {
        var sum = levels[0].Dbm;
        foreach (var (station, dbm) in levels.Skip(1))
            sum = log.Record(PlanFormulas.PowerSum, $"input of {e.Id}, with {station.Id}", DecibelSum.TotalDbm([sum, dbm]), sum, dbm);
        return sum;
    }

    private double InputDbm(Element e, StationPlan s)
    {
        var before = steps.Steps(chain.PathTo(e), s.FrequencyMhz, job.Cabling.ColdC).SkipLast(1);
        var gain = before.Sum(step => step.Stage.GainDb);
        return log.Record(PlanFormulas.LevelAtReceiver, $"{s.Id} at the input of {e.Id}, cold cable", s.Budget!.LevelDbm + gain, s.Budget.LevelDbm, gain);
    }

    private void CheckLossInFront(Element e)
    {
        var path = chain.PathTo(e);
        if (path.SkipLast(1).Any(p => p.Part.IsAmplifier) || !reception.Wanted.Any()) return;
        var highest = reception.Wanted.Max(s => s.FrequencyMhz);
        var loss = -steps.Steps(path, highest, job.Cabling.HotC).SkipLast(1).Sum(s => s.Stage.GainDb);
        if (loss > MostLossInFrontDb)
            findings.Add(Severity.Caution, "loss-before-amplifier", e.At,
                $"{UnitText.Write(loss, 1, "dB")} of loss stands between the antenna and its first amplifier {e.Id} (hot cable, {UnitText.Write(highest, 0, "MHz")})",
                "every decibel in front of the amplifier is lost to C/N (Friis: noise of a passive part equals its loss); more than 3 dB is worth a move (our rule)",
                "put the amplifier at the antenna");
    }
}
