using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Checks;

/// <summary>What a set is worth. Only published values validate; the rest guards against change.</summary>
public enum Worth
{
    /// <summary>Values seen in a document or an official data set.</summary>
    Published,

    /// <summary>Values of an independent program, run for the reference notes.</summary>
    Independent,

    /// <summary>Arithmetic from the same equations, done once elsewhere.</summary>
    Derived,

    /// <summary>Recalled values.</summary>
    Recalled,
}

/// <summary>One reference file and the code it checks.</summary>
public sealed record ReferenceSet
{
    public required string Name { get; init; }

    /// <summary>Path below <c>tests/Reference</c>.</summary>
    public required string File { get; init; }

    /// <summary>Identifier in the source register.</summary>
    public required string Source { get; init; }

    public required Worth Worth { get; init; }

    public required string Tolerance { get; init; }

    /// <summary>Identifiers of the formulas that run in it.</summary>
    public required IReadOnlyList<string> Formulas { get; init; }

    /// <summary>Rows in the file, so that a truncated file is seen.</summary>
    public required int Rows { get; init; }

    /// <summary>Comparisons made, so that a row cannot be skipped in silence.</summary>
    public required int Comparisons { get; init; }

    /// <summary>Rows that give no comparison, with the reason.</summary>
    public int RowsLeftOut { get; init; }

    public string LeftOutBecause { get; init; } = "";

    public required Func<ReferenceRow, IEnumerable<Comparison>> Check { get; init; }

    public IReadOnlyList<ReferenceRow> Read() =>
        [.. CsvText.Rows(ReferenceFile.Text(File)).Select((cells, i) => new ReferenceRow(i + 1, cells))];

    public IReadOnlyList<(ReferenceRow Row, Comparison[] Results)> Run() => [.. Read().Select(r => (r, Check(r).ToArray()))];

    public override string ToString() => Name;
}

/// <summary>Files that travel with the tests.</summary>
public static class ReferenceFile
{
    public static string Text(string path) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", path));

    /// <summary>The root of the repository, found upward from the tests.</summary>
    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "InstallPacket.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
