using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A tube as it is sold.</summary>
/// <param name="Name">Size in words, for example <c>50 x 2 mm</c>.</param>
/// <param name="Section">Its cross-section.</param>
/// <param name="Note">Which reading of an ambiguous gauge it is.</param>
public sealed record MastTube(string Name, MastSection Section, string Note);

/// <summary>What a mast is made of.</summary>
/// <param name="Word">Identifier, for example <c>unknown-steel</c>.</param>
/// <param name="Name">In words.</param>
/// <param name="IsAluminium">Aluminium, else steel.</param>
/// <param name="YieldPa">Yield strength [Pa].</param>
/// <param name="ModulusPa">Modulus of elasticity [Pa].</param>
/// <param name="DensityKgM3">Density [kg/m3].</param>
/// <param name="Note">What to mind.</param>
/// <param name="Provenance">How the yield strength is known.</param>
public sealed record MastMaterial(
    string Word, string Name, bool IsAluminium, double YieldPa, double ModulusPa, double DensityKgM3, string Note, Provenance Provenance);

/// <summary>Common mast tubes and their materials.</summary>
public static class MastTubes
{
    private static readonly Lazy<IReadOnlyList<MastTube>> LoadedTubes = new(LoadTubes);

    private static readonly Lazy<IReadOnlyList<MastMaterial>> LoadedMaterials = new(LoadMaterials);

    /// <summary>All tubes. Where only a gauge is known, take the row with the thinner wall.</summary>
    public static IReadOnlyList<MastTube> All => LoadedTubes.Value;

    /// <summary>All materials.</summary>
    public static IReadOnlyList<MastMaterial> Materials => LoadedMaterials.Value;

    /// <summary>Steel of which nothing is known: a low value of our own.</summary>
    public static MastMaterial UnknownSteel => Material("unknown-steel")!;

    /// <summary>Aluminium of which nothing is known: a low value of our own.</summary>
    public static MastMaterial UnknownAluminium => Material("unknown-aluminium")!;

    /// <summary>The tube of this name, or null.</summary>
    public static MastTube? Find(string name) => All.FirstOrDefault(t => t.Name == name);

    /// <summary>The material of this word, or null.</summary>
    public static MastMaterial? Material(string word) => Materials.FirstOrDefault(m => m.Word == word);

    private static MastTube[] LoadTubes() =>
    [
        .. EmbeddedTable.Rows("Mounting/tube-sections.csv").Select(r => new MastTube(
            r["tube"], new(CsvNumber.Of(r["outer_mm"]) / 1000, CsvNumber.Of(r["wall_mm"]) / 1000), r["note"])),
    ];

    private static MastMaterial[] LoadMaterials() =>
    [
        .. EmbeddedTable.Rows("Mounting/tube-materials.csv").Select(r => new MastMaterial(
            r["material"], r["name"], r["metal"] == "aluminium", CsvNumber.Of(r["yield_mpa"]) * 1e6, CsvNumber.Of(r["modulus_gpa"]) * 1e9,
            CsvNumber.Of(r["density_kg_m3"]), r["note"], CsvProvenance.Of(r["provenance"]))),
    ];
}
