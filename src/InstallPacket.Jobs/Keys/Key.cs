namespace InstallPacket.Jobs.Keys;

/// <summary>One key: the only place where it is declared.</summary>
/// <param name="name">The key as written.</param>
/// <param name="kind">What it holds.</param>
/// <param name="meaning">One line for the reference page and for editors.</param>
/// <param name="required">Whether it must be there.</param>
/// <param name="absent">The value used when it is absent, as an author would write it; null when there is none.</param>
public abstract class Key(string name, KeyKind kind, string meaning, bool required, string? absent)
{
    /// <summary>The key as written.</summary>
    public string Name { get; } = name;

    /// <summary>What it holds.</summary>
    public KeyKind Kind { get; } = kind;

    /// <summary>One line for the reference page and for editors.</summary>
    public string Meaning { get; } = meaning;

    /// <summary>Whether it must be there.</summary>
    public bool Required { get; } = required;

    /// <summary>The value used when it is absent, as an author would write it; null when there is none.</summary>
    public string? Default { get; } = absent;

    /// <summary>A key that may be left out, for use in several groups.</summary>
    internal static Key<T> Optional<T>(string name, KeyKind<T> kind, string meaning) => new(name, kind, meaning, false, null);
}

/// <summary>A key that binds to a type.</summary>
/// <typeparam name="T">What its value becomes.</typeparam>
public sealed class Key<T> : Key
{
    internal Key(string name, KeyKind<T> kind, string meaning, bool required, string? absent) : base(name, kind, meaning, required, absent)
    {
    }
}

/// <summary>Takes the keys of a group in the order in which they are declared.</summary>
internal sealed class KeyList
{
    private readonly List<Key> _keys = [];

    /// <summary>A list that begins with the keys of another group and some that several groups share.</summary>
    public KeyList(GroupKind? first = null, params Key[] shared)
    {
        Group = new(_keys);
        if (first is not null) _keys.AddRange(first.Keys);
        _keys.AddRange(shared);
    }

    /// <summary>The group.</summary>
    public GroupKind Group { get; }

    /// <summary>Adds a key that must be there.</summary>
    public Key<T> Required<T>(string name, KeyKind<T> kind, string meaning) => Add(new Key<T>(name, kind, meaning, true, null));

    /// <summary>Adds a key that may be left out.</summary>
    public Key<T> Optional<T>(string name, KeyKind<T> kind, string meaning) => Add(new Key<T>(name, kind, meaning, false, null));

    /// <summary>Adds a key with a value for its absence.</summary>
    public Key<T> Default<T>(string name, KeyKind<T> kind, string meaning, string absent) =>
        Add(new Key<T>(name, kind, meaning, false, absent));

    private Key<T> Add<T>(Key<T> key)
    {
        _keys.Add(key);
        return key;
    }
}
