using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>A strength class of European structural timber.</summary>
/// <param name="Word">Its word in a job file.</param>
/// <param name="Name">Its name.</param>
/// <param name="DensityKgM3">Characteristic density.</param>
public sealed record TimberClass(string Word, string Name, double DensityKgM3)
{
    /// <summary>Where the densities come from.</summary>
    public static readonly Formula RowFormula = new(
        "timber-class-density",
        "Characteristic density of structural timber",
        "rho = value of the strength class",
        new("rho", "kg/m3", "characteristic density"), [new("class", "", "number of the strength class, C24 is 24")],
        "en-338", "strength classes of softwood", Provenance.Memory);

    /// <summary>Timber that nobody can name counts as the weakest class here.</summary>
    public static readonly IReadOnlyList<TimberClass> All =
        [new("c14", "softwood C14", 290), new("c16", "softwood C16", 310), new("c18", "softwood C18", 320),
            new("c24", "softwood C24", 350), new("c30", "softwood C30", 380)];

    /// <summary>The class with this word, or null.</summary>
    public static TimberClass? Find(string word) => All.FirstOrDefault(c => c.Word == word);
}
