namespace InstallPacket.Jobs.Text;

/// <summary>A node of the file as written, with its place.</summary>
public abstract record YamlNode(SourceSpan At);

/// <summary>A value on its own.</summary>
public sealed record YamlScalar(SourceSpan At, string Value, bool Quoted) : YamlNode(At)
{
    /// <summary>What stands behind it on its line and YAML takes for a remark, from the <c>#</c> on; null for nothing.</summary>
    public string? Remark { get; init; }
}

/// <summary>A map; keys keep their order and duplicates are already reported and left out.</summary>
public sealed record YamlMap(SourceSpan At, IReadOnlyList<KeyValuePair<YamlScalar, YamlNode>> Entries) : YamlNode(At)
{
    /// <summary>Where the key stands that names this map; the map itself when nothing names it.</summary>
    public SourceSpan Named { get; init; } = At;

    /// <summary>Whether it is written between braces, where a comma ends a text.</summary>
    public bool InBraces { get; init; }
}

/// <summary>A list.</summary>
public sealed record YamlList(SourceSpan At, IReadOnlyList<YamlNode> Items) : YamlNode(At);
