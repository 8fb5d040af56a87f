using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The roof installation that planners assume in a band.</summary>
/// <param name="Plan"><c>european</c> or <c>american</c>.</param>
/// <param name="LowestMHz">Lower end of the band [MHz].</param>
/// <param name="HighestMHz">Upper end of the band [MHz].</param>
/// <param name="GainDbd">Antenna gain [dBd].</param>
/// <param name="FeederLossDb">Loss of the feeder [dB].</param>
/// <param name="Provenance">How the two are known.</param>
public sealed record ReferenceInstallation(string Plan, double LowestMHz, double HighestMHz, double GainDbd, double FeederLossDb,
    Provenance Provenance)
{
    // Where planners change from band IV to band V; recalled.
    private const double BandVMHz = 582;

    // GE06, suburban, at the three frequencies for which it is given.
    private static readonly FrequencyCurve HeightLoss = new([(200, 12), (500, 16), (800, 18)]);

    /// <summary>The planning gain at a frequency.</summary>
    public static readonly Formula GainFormula = new(
        "planning-gain",
        "Antenna gain assumed in European planning",
        "G = G0 + 10 log10(f / f0); band IV 10 dBd at 500 MHz, band V 12 dBd at 800 MHz; band III 7 dBd throughout",
        new("G", "dBd", "gain"),
            [new("f", "MHz", "frequency"), new("G0", "dBd", "gain at the reference"), new("f0", "MHz", "frequency of the reference")],
        "ge06", "fixed reception, gain with its change by frequency; the notes give the equation without its document, which is recalled",
            Provenance.Memory);

    /// <summary>The loss by height.</summary>
    public static readonly Formula HeightLossFormula = new(
        "planning-height-loss",
        "Loss from 10 m to 1.5 m above ground in European planning",
        "Lh = straight lines between 12 at 200 MHz, 16 at 500 MHz, 18 at 800 MHz",
        new("Lh", "dB", "loss"), [new("f", "MHz", "frequency")],
        "ge06", "suburban; the straight lines between its three values are ours", Provenance.Derived);

    private static readonly Lazy<IReadOnlyList<ReferenceInstallation>> Loaded = new(Load);

    /// <summary>All bands of both plans.</summary>
    public static IReadOnlyList<ReferenceInstallation> All => Loaded.Value;

    /// <summary>The installation of a band.</summary>
    /// <param name="plan"><c>european</c> or <c>american</c>.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The installation, or null outside the plan's bands.</returns>
    public static ReferenceInstallation? Find(string plan, double frequencyMHz) =>
        All.FirstOrDefault(r => r.Plan == plan && frequencyMHz >= r.LowestMHz && frequencyMHz <= r.HighestMHz);

    /// <summary>The antenna gain assumed in European planning.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], in bands III to V (174 to 230, 470 to 862); outside throws.</param>
    /// <returns>Gain [dBd].</returns>
    public static double PlanningGainDbd(double frequencyMHz)
    {
        var band = Find("european", frequencyMHz)
            ?? throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz, "European planning knows bands III, IV and V.");
        if (frequencyMHz <= 230) return band.GainDbd;
        return band.GainDbd + 10 * Math.Log10(frequencyMHz / (frequencyMHz <= BandVMHz ? 500 : 800));
    }

    /// <summary>The loss from 10 m to 1.5 m above ground.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 174 to 862; outside throws.</param>
    /// <returns>Loss [dB]; held constant beyond 200 and 800 MHz.</returns>
    public static double HeightLossDb(double frequencyMHz) => HeightLoss.At(Limit.Within(frequencyMHz, 174, 862, "frequency in MHz"));

    private static ReferenceInstallation[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/reference-installation.csv").Select(r => new ReferenceInstallation(
            r["plan"], CsvNumber.Of(r["lower_mhz"]), CsvNumber.Of(r["upper_mhz"]), CsvNumber.Of(r["gain_dbd"]),
                CsvNumber.Of(r["feeder_loss_db"]),
            CsvProvenance.Of(r["provenance"]))),
    ];
}
