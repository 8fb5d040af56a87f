using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>Specific gravity of a group of timber.</summary>
/// <param name="Word">Its word in a job file.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Gravity">Oven-dry specific gravity.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record SpecificGravity(string Word, string Name, double Gravity, Provenance Provenance)
{
    /// <summary>Timber that nobody can name: the lowest common group of framing.</summary>
    public const string Unknown = "unknown-softwood";

    private static readonly Lazy<IReadOnlyList<SpecificGravity>> Loaded = new(() =>
        [.. EmbeddedTable.Rows("Mounting/Wood/wood-specific-gravity.csv").Select(r =>
            new SpecificGravity(r["word"], r["name"], CsvNumber.Of(r["gravity"]), CsvProvenance.Of(r["provenance"])))]);

    /// <summary>The gravity of a group of timber.</summary>
    public static readonly Formula RowFormula = new(
        "wood-specific-gravity",
        "Specific gravity of framing timber",
        "G = value of the table for the group",
        new("G", "", "oven-dry specific gravity"), [new("group", "", "group of timber")],
        "nds-gravity", "Table 12.3.3A");

    /// <summary>All groups.</summary>
    public static IReadOnlyList<SpecificGravity> All => Loaded.Value;

    /// <summary>The group with this word, or null.</summary>
    public static SpecificGravity? Find(string word) => All.FirstOrDefault(g => g.Word == word);
}
