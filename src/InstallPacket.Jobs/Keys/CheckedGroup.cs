using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>A group of keys after checking. Values that had a finding are absent.</summary>
public sealed class CheckedGroup
{
    private readonly Dictionary<Key, (object Value, SourceSpan At)> _values = [];
    private readonly HashSet<Key> _written = [];
    private bool _lacks;

    internal CheckedGroup(SourceSpan at) => At = at;

    /// <summary>Where the group starts.</summary>
    public SourceSpan At { get; }

    internal void Set(Key key, object value, SourceSpan at) => _values[key] = (value, at);

    internal void Lack() => _lacks = true;

    internal void Write(Key key) => _written.Add(key);

    /// <summary>Whether the author wrote a key, also when its value had a finding.</summary>
    public bool Wrote(Key key) => _written.Contains(key);

    /// <summary>Whether a key has a value.</summary>
    public bool Has(Key key) => _values.ContainsKey(key);

    /// <summary>Whether no value that was written had a finding, also within its groups.</summary>
    public bool Sound => _written.All(_values.ContainsKey) && _values.Values.All(v => v.Value is not CheckedGroup { Whole: false });

    /// <summary>Whether every key that must be there is, and no value had a finding.</summary>
    private bool Whole => !_lacks && Sound;

    /// <summary>Where the value of a key stands; the group when the key is absent.</summary>
    public SourceSpan Place(Key key) => _values.TryGetValue(key, out var v) ? v.At : At;

    /// <summary>A value that the catalogue requires or gives a default for.</summary>
    public T Get<T>(Key<T> key) => Placed(key).Value;

    /// <summary>Such a value with its place.</summary>
    /// <exception cref="KeyNotFoundException">The catalogue neither requires nor defaults the key.</exception>
    public Sourced<T> Placed<T>(Key<T> key) =>
        Maybe(key) ?? throw new KeyNotFoundException($"The catalogue neither requires nor defaults '{key.Name}'.");

    /// <summary>A value that may be absent.</summary>
    public Sourced<T>? Maybe<T>(Key<T> key) => _values.TryGetValue(key, out var v) ? new Sourced<T>((T)v.Value, v.At) : null;

    /// <summary>The named entries of a map, in the order of the file; empty when absent.</summary>
    public IReadOnlyList<Entry<T>> Entries<T>(Key<IReadOnlyList<Entry<T>>> key) => Maybe(key)?.Value ?? [];

    /// <summary>The items of a list; empty when absent.</summary>
    public IReadOnlyList<Sourced<T>> Items<T>(Key<IReadOnlyList<Sourced<T>>> key) => Maybe(key)?.Value ?? [];

    /// <summary>A length that the catalogue requires or gives a default for.</summary>
    internal Length Metres(Key<double> key) => Length.FromMetres(Get(key));

    /// <summary>Such a length with its place.</summary>
    internal Sourced<Length> PlacedMetres(Key<double> key) => new(Metres(key), Place(key));

    /// <summary>A length that may be absent.</summary>
    internal Sourced<Length>? MaybeMetres(Key<double> key) => Maybe(key) is { } v ? new Sourced<Length>(Length.FromMetres(v.Value), v.At)
        : null;
}

/// <summary>A named entry of a map.</summary>
/// <typeparam name="T">What stands under the name.</typeparam>
public sealed record Entry<T>(string Name, T Value, SourceSpan At);

/// <summary>A name that must be defined somewhere.</summary>
internal sealed record UseOfName(ReferenceKind Kind, string Name, string Path, SourceSpan At);
