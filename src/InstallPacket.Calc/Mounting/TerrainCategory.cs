using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>How rough the ground around the house is, by the European wind standard.</summary>
/// <param name="Category"><c>0</c>, <c>I</c>, <c>II</c>, <c>III</c> or <c>IV</c>.</param>
/// <param name="Description">What it looks like.</param>
/// <param name="RoughnessM">Roughness length [m].</param>
/// <param name="LeastHeightM">Below this height the profile stays constant [m].</param>
/// <param name="Provenance">How it is known.</param>
public sealed record TerrainCategory(string Category, string Description, double RoughnessM, double LeastHeightM, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<TerrainCategory>> Loaded = new(Load);

    /// <summary>All categories, from open sea to town.</summary>
    public static IReadOnlyList<TerrainCategory> All => Loaded.Value;

    /// <summary>The category of this name, or null when there is none.</summary>
    public static TerrainCategory? Find(string category) => All.FirstOrDefault(c => c.Category == category);

    private static TerrainCategory[] Load() =>
    [
        .. EmbeddedTable.Rows("Mounting/eurocode-terrain.csv").Select(r => new TerrainCategory(
            r["category"], r["description"], CsvNumber.Of(r["z0_m"]), CsvNumber.Of(r["zmin_m"]), CsvProvenance.Of(r["provenance"]))),
    ];
}
