using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What a roof or a building costs an antenna below or inside it.</summary>
/// <param name="Word">The roof or the building in kebab-case.</param>
/// <param name="LowestMHz">Lowest frequency [MHz]; 0 without limit.</param>
/// <param name="HighestMHz">Highest frequency [MHz]; infinite without limit.</param>
/// <param name="LowDb">Low end of a stated range [dB]; none for a measured mean. For a blocking roof the least loss.</param>
/// <param name="TypicalDb">Mean, or the middle of the range [dB]; none for a blocking roof.</param>
/// <param name="HighDb">High end of a stated range [dB]; none for a measured mean and a blocking roof.</param>
/// <param name="SigmaDb">Spread [dB], where one is stated.</param>
/// <param name="Blocks">Foil or metal: a stop, not a loss to plan with.</param>
/// <param name="SourceText">Where the figure comes from.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record BuildingLossRow(
    string Word, double LowestMHz, double HighestMHz, double? LowDb, double? TypicalDb, double? HighDb, double? SigmaDb, bool Blocks,
    string SourceText, Provenance Provenance)
{
    /// <summary>Whether the row holds at a frequency [MHz].</summary>
    public bool HoldsAt(double frequencyMHz) => frequencyMHz >= LowestMHz && frequencyMHz <= HighestMHz;
}

/// <summary>The loss to an antenna under the roof. Trade rules: a wide distribution, no measurement.</summary>
public static class AtticLoss
{
    /// <summary>The loss of a roof.</summary>
    public static readonly Formula<BuildingLossRow> RowFormula = new Formula(
        "attic-loss",
        "Loss of a roof above the antenna",
        "L = value of the table for the roof and the band",
        new("L", "dB", "loss"), [new("f", "MHz", "frequency")],
        "building-loss-table", "the row of the roof; its origin and provenance are printed beside it", Provenance.Memory)
        .By<BuildingLossRow>((row, _) => row.TypicalDb!.Value);

    private static readonly Lazy<IReadOnlyList<BuildingLossRow>> Loaded = new(() => BuildingLossTable.Load("attic"));

    /// <summary>All rows.</summary>
    public static IReadOnlyList<BuildingLossRow> All => Loaded.Value;

    /// <summary>The roofs, in the order of the table.</summary>
    public static IReadOnlyList<string> Roofs => [.. All.Select(r => r.Word).Distinct()];

    /// <summary>The loss of a roof.</summary>
    /// <param name="roof">One of <see cref="Roofs"/>.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The row, or null when the roof is unknown or nothing is known at the frequency.</returns>
    public static BuildingLossRow? Find(string roof, double frequencyMHz) => BuildingLossTable.Find(All, roof, frequencyMHz);
}

/// <summary>The loss from outside to a room.</summary>
public static class IndoorLoss
{
    /// <summary>The loss into a building.</summary>
    public static readonly Formula RowFormula = new(
        "indoor-loss",
        "Loss into a building, by kind",
        "L = value of the table for the building and the band",
        new("L", "dB", "loss"), [new("f", "MHz", "frequency")],
        "building-loss-table", "the row of the building; its origin and provenance are printed beside it", Provenance.Derived);

    private static readonly Lazy<IReadOnlyList<BuildingLossRow>> Loaded = new(() => BuildingLossTable.Load("indoors"));

    /// <summary>All rows.</summary>
    public static IReadOnlyList<BuildingLossRow> All => Loaded.Value;

    /// <summary>The loss into a building.</summary>
    /// <param name="building">Its word in <see cref="All"/>.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The row, or null when the building is unknown or nothing is known at the frequency.</returns>
    public static BuildingLossRow? Find(string building, double frequencyMHz) => BuildingLossTable.Find(All, building, frequencyMHz);
}

/// <summary>Reads the table of both.</summary>
internal static class BuildingLossTable
{
    public static BuildingLossRow[] Load(string place) =>
    [
        .. EmbeddedTable.Rows("Reception/building-loss.csv").Where(r => r["place"] == place).Select(r => new BuildingLossRow(
            r["word"], Number(r["lower_mhz"]) ?? 0, Number(r["upper_mhz"]) ?? double.PositiveInfinity,
            Number(r["low_db"]), Number(r["typical_db"]), Number(r["high_db"]), Number(r["sigma_db"]), r["blocks"] == "yes",
            r["source"], CsvProvenance.Of(r["provenance"]))),
    ];

    public static BuildingLossRow? Find(IReadOnlyList<BuildingLossRow> rows, string word, double frequencyMHz) =>
        rows.FirstOrDefault(r => r.Word == word && r.HoldsAt(frequencyMHz));

    private static double? Number(string cell) => cell.Length == 0 ? null : CsvNumber.Of(cell);
}
