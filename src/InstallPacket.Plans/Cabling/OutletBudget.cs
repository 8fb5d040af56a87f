using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Cabling;

/// <summary>Level, C/N and margin of one channel at one outlet.</summary>
internal sealed class OutletBudget(Job job, StepPlanner steps, AmplifierLoads loads, ChainView chain, Element outlet)
{
    private const double Likely = 0.5;
    private static readonly Constant NoLargest = new("not-too-strong", 1, "project-notes", Provenance.Derived);
    private readonly Workings _work = steps.Work;
    private readonly Dictionary<(double FrequencyMHz, double Celsius), IReadOnlyList<ChainStep>> _chains = [];

    public OutletChannel Channel(StationPlan s)
    {
        Subject subject = $"{s.Id} at {outlet.Id}";
        var (normal, cold, hot) = (Level(s, StepPlanner.ReferenceC, subject), LevelDbm(s, job.Cabling.ColdC),
            LevelDbm(s, job.Cabling.HotC));
        var figure = NoiseFigure(s);
        var b = s.Budget!;
        var cn = CarrierOverNoise(s, figure, subject);
        var margin = _work.Apply(CablingFormulas.Margin, subject, cn, s.Of("required_cn_db", b.RequiredCnDb));
        var cable = steps.UncertaintyDb(chain.PathTo(outlet, s.FrequencyMhz), s.FrequencyMhz);
        var spread = s.Of("spread.total_db", b.Spread.TotalDb);
        if (cable != 0)
            spread = _work.Apply(CablingFormulas.SpreadWithCable, subject, spread,
                Term.Plan($"cabling.outlets[{outlet.Id}].channels[{s.Id}].uncertainty_db", cable));
        var holds = _work.Apply(Probability.MarginFormula, subject, margin, spread);
        var strong = LevelDbm(b.StrongDbm, s, job.Cabling.ColdC);
        var below = Below(s, strong, spread, subject);
        // A level that is more likely right than too much is set by meter and costs no chance.
        var chance = _work.Apply(CablingFormulas.ChanceOfWindow, subject, holds, below < Likely ? below : NoLargest, ChanceRule.Most(b.Ground));
        return new OutletChannel(s.Id, normal, hot, cold, figure, cn, margin, 100 * chance, ChanceWord(chance),
            Verdict(margin, below.Number, chance))
        {
            UncertaintyDb = cable, LevelStrongDbm = strong, TooStrongPct = 100 * (1 - below.Number), Ground = b.Ground,
        };
    }

    // The chance that the level stays below the largest one.
    private Term Below(StationPlan s, double strongDbm, Term spread, Subject subject)
    {
        if (job.Cabling.Receiver.LargestLevel is not { } largest) return NoLargest;
        var reserve = _work.Apply(CablingFormulas.BelowLargest, subject, job.Cabling.Receiver.Figure(PartKeys.LargestLevel, largest.Dbm),
            Term.Plan($"cabling.outlets[{outlet.Id}].channels[{s.Id}].level_strong_dbm", strongDbm));
        return _work.Apply(Probability.MarginFormula, $"{subject}, largest level", reserve, spread);
    }

    // The chain changes signal and disturbers alike, so their ratio at the antenna holds at the outlet too.
    private Term CarrierOverNoise(StationPlan s, Term figure, Subject subject)
    {
        var b = s.Budget!;
        var system = _work.Apply(SystemNoise.FigureFormula, subject, s.Of("external_noise_db", b.ExternalNoiseDb), figure);
        var level = s.Of("level_dbm", b.LevelDbm);
        Term cn = _work.Apply(CablingFormulas.CarrierToNoise, subject, level, s.Of("thermal_noise_dbm", b.ThermalNoiseDbm), system);
        if (b.InterferenceDbm is { } interference)
            cn = _work.Apply(Interference.EffectiveCnFormula, subject, cn,
                _work.Apply(CablingFormulas.OverDisturbers, s.Id, level, s.Of("interference_dbm", interference)));
        return loads.WithProducts(cn, s, chain.PathTo(outlet, s.FrequencyMhz), subject, _work);
    }

    /// <summary>A chance in words of our own.</summary>
    public static string ChanceWord(double chance) =>
        chance switch { >= 0.95 => "firm", >= 0.8 => "fair", >= 0.5 => "doubtful", _ => "unlikely" };

    private string Verdict(double marginDb, double below, double chance) =>
        marginDb < 0 ? "short" : below < Likely ? "strong"
            : marginDb < job.Reception.Reserve.Db || chance < job.Reception.ChancePct / 100 ? "thin" : "steady";

    private IReadOnlyList<ChainStep> Chain(StationPlan s, double celsius)
    {
        if (!_chains.TryGetValue((s.FrequencyMhz, celsius), out var path))
            _chains[(s.FrequencyMhz, celsius)] = path =
                [.. steps.Steps(chain.PathTo(outlet, s.FrequencyMhz), s.FrequencyMhz, celsius), steps.FlyLead(outlet, s.FrequencyMhz)];
        return path;
    }

    private double LevelDbm(StationPlan s, double celsius) => LevelDbm(s.Budget!.LevelDbm, s, celsius);

    private double LevelDbm(double terminalsDbm, StationPlan s, double celsius) =>
        (Calc.Quantities.Level.FromDbm(terminalsDbm)
            + Chain(s, celsius).Aggregate(Gain.FromDb(0), (sum, step) => sum + Gain.FromDb(step.Gain))).Dbm;

    private Row Level(StationPlan s, double celsius, Subject subject) => _work.Apply(CablingFormulas.LevelAtReceiver, $"{subject}, 20 C",
        s.Of("level_dbm", s.Budget!.LevelDbm), steps.Cascade(Chain(s, celsius), s.FrequencyMhz, celsius, outlet)[^1].Gain);

    // Hot cable is the bad case for C/N, so the margin is computed with it.
    private Row NoiseFigure(StationPlan s)
    {
        var before = steps.Cascade(Chain(s, job.Cabling.HotC), s.FrequencyMhz, job.Cabling.HotC, outlet)[^1];
        var receiver = job.Cabling.Receiver;
        return _work.Apply(NoiseCascade.FriisFormula, $"receiver at {outlet.Id}, {s.FrequencyMhz:0.###} MHz, {job.Cabling.HotC:0.###} C",
            before.Noise, before.Gain, receiver.Figure(PartKeys.NoiseFigure, receiver.NoiseFigureDb?.At(s.FrequencyMhz) ?? 0));
    }
}
