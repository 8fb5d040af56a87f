using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Cabling;

/// <summary>What all stations together do to one amplifier.</summary>
/// <param name="Amplifier">The amplifier.</param>
/// <param name="Inputs">Every carrier at its input [dBm], cold cable, strongest first.</param>
/// <param name="TotalDbm">All of them together.</param>
/// <param name="GainDb">Its gain.</param>
/// <param name="ReserveDb">How far the total output stays below the largest one; null when the part does not state that.</param>
internal sealed record AmplifierLoad(Element Amplifier, IReadOnlyList<(StationPlan Station, Term Dbm)> Inputs, Term TotalDbm,
    double GainDb, double? ReserveDb);

/// <summary>Sums up the carriers at each amplifier, wanted or not, and the products that they make there.</summary>
internal sealed class AmplifierLoads(Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps)
{
    private readonly Workings _work = steps.Work;
    private const double NothingDbm = -1000; // no such signal exists; far below, the sum of powers is zero
    private static readonly Constant AtTheAntenna = new("no-step-before", 0, "project-notes", Provenance.Derived);
    private const double UnheardDb = 90;     // a product this far below its channel disturbs nobody

    private readonly Dictionary<string, AmplifierLoad?> _loads = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, string), Row?> _ratios = [];

    /// <summary>The load of an amplifier; null when no station could be calculated.</summary>
    public AmplifierLoad? Of(Element e)
    {
        if (!_loads.TryGetValue(e.Id, out var load)) _loads[e.Id] = load = Sum(e);
        return load;
    }

    /// <summary>Level of a channel over the products that fall into it [dB]; null when unknown or negligible.</summary>
    public Row? CarrierToProductsDb(Element e, StationPlan s)
    {
        if (!_ratios.TryGetValue((e.Id, s.Id), out var ratio)) _ratios[(e.Id, s.Id)] = ratio = Ratio(e, s);
        return ratio;
    }

    /// <summary>C/N of a channel with the products of every amplifier on its way.</summary>
    public Term WithProducts(Term cnDb, StationPlan s, IReadOnlyList<Element> path, Subject subject, Workings into)
    {
        Term[] ratios = [.. path.Where(e => e.Part is AmplifierPart).Select(e => CarrierToProductsDb(e, s)).OfType<Row>().Where(r =>
            r < UnheardDb)];
        if (ratios.Length == 0) return cnDb;
        var together = ratios[0];
        for (var i = 1; i < ratios.Length; i++) together = into.Apply(CablingFormulas.ProductsTogether, $"{subject}, amplifier {i + 1}",
            together, ratios[i]);
        return into.Apply(Interference.EffectiveCnFormula, $"{subject}, products of amplifiers", cnDb, together);
    }

    // Only amplifiers are asked for.
    private static AmplifierPart Amplifier(Element e) => (AmplifierPart)e.Part;

    private static double Gain(Element e, double frequencyMHz) => e.Setting?.Db ?? Amplifier(e).AmplificationDb?.At(frequencyMHz) ?? 0;

    private AmplifierLoad? Sum(Element e)
    {
        var inputs = reception.Stations.Where(s => s.Calculated && Passes(e, s)).Select(s => (Station: s, Dbm: (Term)InputDbm(e, s)))
            .OrderByDescending(l => l.Dbm.Number).ThenBy(l => l.Station.Id, StringComparer.Ordinal).ToArray();
        if (inputs.Length == 0 || inputs[0].Dbm < NothingDbm) return null;
        // Added one after the other from the strongest on, so that the workings show every station.
        var total = inputs[0].Dbm;
        foreach (var (station, dbm) in inputs.Skip(1))
            total = _work.Apply(CablingFormulas.PowerSum, $"input of {e.Id}, with {station.Id}", total, dbm);
        Term gain = e.Setting is { } set ? Term.Key($"cabling.chain.{e.Id}.setting", set.Db)
            : e.Part.Figure(AmplifierPartKeys.Amplification, Amplifier(e).AmplificationDb?.Points.Max(p => p.Value) ?? 0);
        double? reserve = Amplifier(e).LargestOutput is { } largest
            ? _work.Apply(AmplifierOverload.MarginFormula, e.Id, total, gain,
                e.Part.Figure(AmplifierPartKeys.LargestOutput, largest.Dbm)).Number : null;
        return new(e, inputs, total, gain, reserve);
    }

    // A station of one antenna does not pass an amplifier in the branch of the other.
    private bool Passes(Element e, StationPlan s) => chain.Passes(e, s.FrequencyMhz);

    private Row InputDbm(Element e, StationPlan s)
    {
        ChainStep[] before = [.. steps.Steps(chain.PathTo(e, s.FrequencyMhz), s.FrequencyMhz, job.Cabling.ColdC).SkipLast(1)];
        var gain = before.Length == 0 ? AtTheAntenna : steps.Cascade(before, s.FrequencyMhz, job.Cabling.ColdC, null)[^1].Gain;
        return _work.Apply(CablingFormulas.LevelAtReceiver, $"{s.Id} at the input of {e.Id}, cold cable",
            s.Of("strong_dbm", s.Budget!.StrongDbm), gain);
    }

    // Slots are centres in kHz: products between bands of different grids fall beside every channel and are not counted.
    private Row? Ratio(Element e, StationPlan s)
    {
        if (Amplifier(e).Intercept is not { } intercept || Of(e) is not { } load || load.Inputs.Count < 2) return null;
        static int Slot(StationPlan station) => (int)Math.Round(station.FrequencyMhz * 1000);
        var carriers = load.Inputs.GroupBy(i => Slot(i.Station)).Select(g =>
            new Carrier(g.Key, g.Max(i => i.Dbm + Gain(e, i.Station.FrequencyMhz))));
        if (new Intermodulation(carriers).CompositeDbm(Slot(s), intercept.Dbm) is not { } product) return null;
        var own = load.Inputs.First(i => i.Station.Id == s.Id).Dbm + Gain(e, s.FrequencyMhz);
        Term Number(string key, double dbm) => Term.Plan($"cabling.amplifiers[{e.Id}].products[{s.Id}].{key}", dbm);
        return _work.Apply(CablingFormulas.CarrierToProducts, $"{s.Id} in {e.Id}", Number("own_dbm", own), Number("products_dbm", product));
    }
}
