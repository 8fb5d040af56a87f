using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>A kind of soil and the range of its resistivity.</summary>
/// <param name="Word">Identifier, for example <c>wet-sand</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="LowOhmM">Low end of the range [ohm m].</param>
/// <param name="HighOhmM">High end of the range [ohm m].</param>
/// <param name="Provenance">How it is known.</param>
public sealed record Soil(string Word, string Name, double LowOhmM, double HighOhmM, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<Soil>> Loaded = new(() =>
    [
        .. EmbeddedTable.Rows("Bonding/soil-resistivity.csv").Select(r => new Soil(
            r["word"], r["soil"], CsvNumber.Of(r["low_ohm_m"]), CsvNumber.Of(r["high_ohm_m"]), CsvProvenance.Of(r["provenance"]))),
    ]);

    /// <summary>All soils. The range is wide: only a measurement tells.</summary>
    public static IReadOnlyList<Soil> All => Loaded.Value;

    /// <summary>The soil of this word, or null.</summary>
    public static Soil? Find(string word) => All.FirstOrDefault(s => s.Word == word);
}
