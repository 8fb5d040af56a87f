namespace InstallPacket.Calc.Sources;

/// <summary>The single list of documents, read from <c>Sources/sources.csv</c>.</summary>
public static class SourceRegister
{
    private static readonly Lazy<IReadOnlyList<Source>> Loaded = new(Load);

    /// <summary>All sources in the order of the file.</summary>
    public static IReadOnlyList<Source> All => Loaded.Value;

    /// <summary>The source with this identifier.</summary>
    /// <exception cref="KeyNotFoundException">No source has it: a bug in a formula, found by a test.</exception>
    public static Source Get(string id) =>
        All.FirstOrDefault(s => s.Id == id) ?? throw new KeyNotFoundException($"No source '{id}' in sources.csv.");

    private static Source[] Load() =>
        [.. EmbeddedTable.Rows("Sources/sources.csv").Select(r =>
            new Source(r["id"], r["title"], r["publisher"], r["edition"], r["used_for"]))];
}
