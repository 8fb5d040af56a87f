using System.Reflection;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Materials;

/// <summary>Reads the tables that lie beside the planners.</summary>
internal static class PlanTable
{
    /// <summary>All rows of a table.</summary>
    /// <param name="path">Path below the project folder, for example <c>Materials/hours.csv</c>.</param>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string path)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"The table {path} is not embedded in the assembly.");
        using var reader = new StreamReader(stream);
        return CsvText.Rows(reader.ReadToEnd());
    }
}
