namespace InstallPacket.Cli.Commands;

/// <summary>What <c>parts</c> is told, as the user wrote it.</summary>
/// <param name="Words">Words that stand in what is looked for.</param>
internal sealed record PartsOptions(IReadOnlyList<string> Words)
{
    /// <summary>The kind of part; null for all.</summary>
    public string? Kind { get; init; }

    /// <summary>The units of the figures; null for those that are written.</summary>
    public string? Units { get; init; }

    /// <summary>The part to copy; null to list.</summary>
    public string? Copy { get; init; }

    /// <summary>The name of the copy; null for the same.</summary>
    public string? As { get; init; }

    /// <summary>What is wrong with the options, or nothing.</summary>
    public string Problem()
    {
        if (Kind is not null && Word.Read<PartKind>(Kind) is null) return Among("--kind", Kind, Word.All<PartKind>());
        if (Units is not null && Word.Read<UnitFamily>(Units) is null) return Among("--units", Units, Word.All<UnitFamily>());
        if (As is not null && Copy is null) return "`--as` goes with `--copy`";
        if (Copy is not null && (Words.Count > 0 || Kind is not null || Units is not null)) return "`--copy` takes one part and goes with `--as` alone";
        return As is null || IsName(As) ? "" : $"`{As}` does not fit as a name: use letters, digits and hyphens, at most 40";
    }

    private static string Among(string option, string written, IReadOnlyList<string> words) =>
        $"`{option} {written}`: {(NearestWord.Of(written, words) is { } near ? $"did you mean `{near}`? " : "")}the words are {string.Join(", ", words)}";

    private static bool IsName(string name) =>
        name.Length is > 0 and <= 40 && char.IsAsciiLetterOrDigit(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');
}
