using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Cabling;

/// <summary>Level, C/N and margin of one channel at one outlet.</summary>
internal sealed class OutletBudget(Job job, StepPlanner steps, AmplifierLoads loads, WorkLog log, ChainView chain, Element outlet)
{
    public OutletChannel Channel(StationPlan s)
    {
        var subject = $"{s.Id} at {outlet.Id}";
        var normal = Level(s, StepPlanner.ReferenceC, subject + ", 20 C");
        var cold = Level(s, job.Cabling.ColdC, null);
        var hot = Level(s, job.Cabling.HotC, null);
        var figure = NoiseFigure(s);
        var b = s.Budget!;
        var system = log.Record(SystemNoise.FigureFormula, subject, SystemNoise.FigureDb(b.ExternalNoiseDb, figure), b.ExternalNoiseDb, figure);
        var cn = log.Record(CablingFormulas.CarrierToNoise, subject, CarrierToNoise.Db(b.LevelDbm, b.ThermalNoiseDbm + system), b.LevelDbm, b.ThermalNoiseDbm, system);
        // The chain changes signal and disturbers alike, so their ratio at the antenna holds at the outlet too.
        if (b.InterferenceDbm is { } interference)
            cn = log.Record(Interference.EffectiveCnFormula, subject, Interference.EffectiveCnDb(cn, [b.LevelDbm - interference]), cn, b.LevelDbm - interference);
        cn = loads.WithProducts(cn, s, chain.PathTo(outlet, s.FrequencyMhz), subject);
        var margin = log.Record(CablingFormulas.Margin, subject, cn - b.RequiredCnDb, cn, b.RequiredCnDb);
        var median = margin + b.MedianDbuvM - b.FieldDbuvM;
        var cable = steps.UncertaintyDb(chain.PathTo(outlet, s.FrequencyMhz), s.FrequencyMhz);
        var spread = cable == 0 ? b.Spread.TotalDb : log.Record(CablingFormulas.SpreadWithCable, subject, Probability.CombinedSigmaDb([b.Spread.TotalDb, cable / Math.Sqrt(3)]), b.Spread.TotalDb, cable);
        var chance = log.Record(Probability.MarginFormula, subject, Probability.OfMargin(median, spread), median, spread);
        return new OutletChannel(s.Id, normal, hot, cold, figure, cn, margin, 100 * chance, ChanceWord(chance), Verdict(margin, chance)) { UncertaintyDb = cable };
    }

    /// <summary>A chance in words of our own.</summary>
    public static string ChanceWord(double chance) => chance switch { >= 0.95 => "firm", >= 0.8 => "fair", >= 0.5 => "doubtful", _ => "unlikely" };

    private string Verdict(double marginDb, double chance) =>
        marginDb < 0 ? "short" : marginDb < job.Reception.Reserve.Db || chance < job.Reception.ChancePct / 100 ? "thin" : "steady";

    private IReadOnlyList<ChainStep> Chain(StationPlan s, double celsius) =>
        [.. steps.Steps(chain.PathTo(outlet, s.FrequencyMhz), s.FrequencyMhz, celsius), steps.FlyLead(outlet, s.FrequencyMhz)];

    private double Level(StationPlan s, double celsius, string? subject)
    {
        var level = Calc.Quantities.Level.FromDbm(s.Budget!.LevelDbm);
        var gain = Chain(s, celsius).Aggregate(Gain.FromDb(0), (sum, step) => sum + Gain.FromDb(step.Stage.GainDb));
        level += gain;
        if (subject is not null) log.Record(CablingFormulas.LevelAtReceiver, subject, level.Dbm, s.Budget.LevelDbm, gain.Db);
        return level.Dbm;
    }

    // Stages before the outlet are shared by all outlets behind them; from the fly lead on they belong to this outlet.
    private string Subject(StationPlan s, List<Stage> stages, int i) =>
        $"{s.Id} up to {stages[i].Name}" + (i >= stages.Count - 2 ? $" at {outlet.Id}" : "");

    // Hot cable is the bad case for C/N, so the margin is reckoned with it.
    private double NoiseFigure(StationPlan s)
    {
        var stages = Chain(s, job.Cabling.HotC).Select(c => c.Stage).ToList();
        stages.Add(new Stage("receiver", 0, job.Cabling.Receiver.NoiseFigureDb?.At(s.FrequencyMhz) ?? 0));
        var cascade = NoiseCascade.Friis(stages);
        for (var i = 1; i < stages.Count; i++)
            log.Record(NoiseCascade.FriisFormula, Subject(s, stages, i), cascade[i].NoiseFigureDb, cascade[i - 1].NoiseFigureDb, cascade[i - 1].GainDb, stages[i].NoiseFigureDb);
        return cascade[^1].NoiseFigureDb;
    }
}
