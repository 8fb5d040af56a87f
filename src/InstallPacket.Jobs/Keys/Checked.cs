namespace InstallPacket.Jobs.Keys;

/// <summary>A group of keys after checking. Values that had a finding are absent.</summary>
internal sealed class CheckedGroup(SourceSpan at)
{
    private readonly Dictionary<string, (object Value, SourceSpan At)> _values = new(StringComparer.Ordinal);

    /// <summary>Where the group starts.</summary>
    public SourceSpan At { get; } = at;

    public void Set(string key, object value, SourceSpan at) => _values[key] = (value, at);

    /// <summary>Keys that the author wrote, also those whose value had a finding.</summary>
    public IReadOnlySet<string> Written { get; init; } = new HashSet<string>();

    public bool Has(string key) => _values.ContainsKey(key);

    /// <summary>Where the value of a key stands; the group when the key is absent.</summary>
    public SourceSpan Place(string key) => _values.TryGetValue(key, out var v) ? v.At : At;

    /// <summary>A value that the catalogue requires or gives a default for.</summary>
    public Sourced<T> Get<T>(string key) => _values.TryGetValue(key, out var v)
        ? new((T)v.Value, v.At)
        : throw new KeyNotFoundException($"The catalogue neither requires nor defaults '{key}'.");

    /// <summary>A value that may be absent.</summary>
    public Sourced<T>? Maybe<T>(string key) => _values.TryGetValue(key, out var v) ? new Sourced<T>((T)v.Value, v.At) : null;

    /// <summary>A nested group, or null.</summary>
    public CheckedGroup? Group(string key) => Maybe<CheckedGroup>(key)?.Value;

    /// <summary>The named entries of a map, in the order of the file; empty when absent.</summary>
    public IReadOnlyList<CheckedEntry> Entries(string key) => Maybe<IReadOnlyList<CheckedEntry>>(key)?.Value ?? [];

    /// <summary>The items of a list; empty when absent.</summary>
    public IReadOnlyList<Sourced<T>> Items<T>(string key) =>
        [.. (Maybe<IReadOnlyList<Sourced<object>>>(key)?.Value ?? []).Select(i => new Sourced<T>((T)i.Value, i.At))];
}

/// <summary>A named entry of a map.</summary>
internal sealed record CheckedEntry(string Name, object Value, SourceSpan At)
{
    public CheckedGroup Group => (CheckedGroup)Value;
}

/// <summary>A name that must be defined somewhere.</summary>
internal sealed record UseOfName(ReferenceKind Kind, string Name, string Path, SourceSpan At);
