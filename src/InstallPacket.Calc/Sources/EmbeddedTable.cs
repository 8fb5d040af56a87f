using System.Reflection;

namespace InstallPacket.Calc.Sources;

/// <summary>Reads a CSV table embedded in this assembly: comment lines start with <c>#</c>, the first other line is the header.</summary>
internal static class EmbeddedTable
{
    /// <summary>All data rows, each as a map from column name to text.</summary>
    /// <param name="path">Path below the project folder, for example <c>Siting/wmm2025-coefficients.csv</c>.</param>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string path)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(path)
            ?? throw new InvalidOperationException($"The table {path} is not embedded in the assembly.");
        using var reader = new StreamReader(stream);
        return CsvText.Rows(reader.ReadToEnd());
    }
}
