using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What planners add for man-made noise. In a budget with external noise of its own it must not be counted twice.</summary>
/// <param name="Surroundings"><c>urban</c> or <c>rural</c>.</param>
/// <param name="Antenna"><c>roof</c> or <c>vehicle</c>.</param>
/// <param name="LowestMHz">Lower end of the band [MHz].</param>
/// <param name="HighestMHz">Upper end of the band [MHz].</param>
/// <param name="AllowanceDb">What is added to the field [dB].</param>
/// <param name="Provenance">How it is known.</param>
public sealed record ManMadeAllowance(
    string Surroundings, string Antenna, double LowestMHz, double HighestMHz, double AllowanceDb, Provenance Provenance)
{
    /// <summary>The allowance of a table row.</summary>
    public static readonly Formula RowFormula = new(
        "man-made-allowance",
        "Allowance for man-made noise in planning",
        "Pmmn = value of the table for the surroundings, the antenna and the band",
        new("Pmmn", "dB", "added to the field"), [new("f", "MHz", "frequency")],
        "itu-bt2033", "tables 31 and 32");

    private static readonly Lazy<IReadOnlyList<ManMadeAllowance>> Loaded = new(Load);

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<ManMadeAllowance> All => Loaded.Value;

    /// <summary>The allowance for surroundings, antenna and band.</summary>
    /// <param name="surroundings"><c>urban</c> or <c>rural</c>.</param>
    /// <param name="antenna"><c>roof</c> or <c>vehicle</c>.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The row, or null when the table has none.</returns>
    public static ManMadeAllowance? Find(string surroundings, string antenna, double frequencyMHz) => All.FirstOrDefault(r =>
        r.Surroundings == surroundings && r.Antenna == antenna && frequencyMHz >= r.LowestMHz && frequencyMHz <= r.HighestMHz);

    private static ManMadeAllowance[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/man-made-allowance.csv").Select(r => new ManMadeAllowance(
            r["surroundings"], r["antenna"], CsvNumber.Of(r["lower_mhz"]), CsvNumber.Of(r["upper_mhz"]), CsvNumber.Of(r["allowance_db"]),
            CsvProvenance.Of(r["provenance"]))),
    ];
}
