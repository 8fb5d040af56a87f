using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>What a key may hold. The reader, the schema and the reference page all work from these.</summary>
public abstract record KeyKind;

/// <summary>A kind whose values become a type.</summary>
/// <typeparam name="T">That type.</typeparam>
public abstract record KeyKind<T> : KeyKind;

/// <summary>A kind that holds one of a fixed set of words.</summary>
public interface IWordKind
{
    /// <summary>The words.</summary>
    IReadOnlyList<string> Words { get; }

    /// <summary>The value of a word; null when it is none of them.</summary>
    object? Read(string word);
}

/// <summary>A kind that holds several values of one kind.</summary>
public interface IListKind
{
    /// <summary>The kind of each.</summary>
    KeyKind Item { get; }

    /// <summary>Fewest.</summary>
    int Min { get; }

    /// <summary>Most.</summary>
    int Max { get; }

    /// <summary>The values as the key's type.</summary>
    object Bind(IReadOnlyList<Sourced<object>> values);
}

/// <summary>A kind that holds named things of one kind.</summary>
public interface IMapKind
{
    /// <summary>The kind of each.</summary>
    KeyKind Item { get; }

    /// <summary>What a name names, in one word.</summary>
    string What { get; }

    /// <summary>Fewest.</summary>
    int Min { get; }

    /// <summary>Most.</summary>
    int Max { get; }

    /// <summary>The values as the key's type.</summary>
    object Bind(IReadOnlyList<Entry<object>> values);
}

/// <summary>Words of the author.</summary>
/// <param name="MaxCharacters">Longest text.</param>
public sealed record TextKind(int MaxCharacters = 200) : KeyKind<string>;

/// <summary>A word of a closed set.</summary>
/// <typeparam name="T">The set.</typeparam>
public sealed record WordKind<T> : KeyKind<T>, IWordKind where T : struct, Enum
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Words => Word.All<T>();

    /// <inheritdoc/>
    public object? Read(string word) => Word.Read<T>(word);
}

/// <summary>The word of a row of one of the program's tables.</summary>
public sealed record TableWordKind(params string[] Rows) : KeyKind<string>, IWordKind
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Words => Rows;

    /// <inheritdoc/>
    public object? Read(string word) => Rows.Contains(word) ? word : null;
}

/// <summary>A word of a list that a program may make longer: known words are offered, others are left to whoever reads the job.</summary>
public sealed record SuggestedWordKind(IReadOnlyList<string> Words) : KeyKind<string>, IWordKind
{
    /// <inheritdoc/>
    public object? Read(string word) => word;
}

/// <summary>Yes or no.</summary>
public sealed record YesNoKind : KeyKind<bool>, IWordKind
{
    /// <inheritdoc/>
    public IReadOnlyList<string> Words { get; } = ["yes", "no"];

    /// <inheritdoc/>
    public object? Read(string word) => word switch { "yes" => true, "no" => false, _ => null };
}

/// <summary>A whole number without unit.</summary>
public sealed record IntegerKind(int Min, int Max) : KeyKind<int>;

/// <summary>A plain number without unit.</summary>
public sealed record NumberKind(double Min, double Max) : KeyKind<double>;

/// <summary>A value with its unit.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="Min">Smallest value, in <paramref name="RangeUnit"/>.</param>
/// <param name="Max">Largest value, in <paramref name="RangeUnit"/>.</param>
/// <param name="RangeUnit">The unit in which the range is stated.</param>
public sealed record QuantityKind(Dimension Dimension, double Min, double Max, string RangeUnit) : KeyKind<double>;

/// <summary>A figure of a part over frequency: one value, or a map from frequency to value.</summary>
public sealed record CurveKind(Dimension Dimension, double Min, double Max, string RangeUnit) : KeyKind<FrequencyCurve>;

/// <summary>A calendar day, <c>YYYY-MM-DD</c>.</summary>
public sealed record DateKind : KeyKind<DateOnly>;

/// <summary>A latitude or a longitude: decimal degrees with the letter of its half of the world.</summary>
/// <param name="Latitude">True for N or S, false for E or W.</param>
public sealed record CoordinateKind(bool Latitude) : KeyKind<double>;

/// <summary>A bearing with its north: <c>214 deg true</c>.</summary>
public sealed record BearingKind : KeyKind<Bearing>;

/// <summary>A point in the house: three lengths.</summary>
/// <param name="Axes">Names of the lengths.</param>
public sealed record PositionKind(params string[] Axes) : KeyKind<double[]>
{
    /// <summary>What each of its lengths may be.</summary>
    internal static QuantityKind Length { get; } = new(Calc.Quantities.Dimension.Length, -500, 500, "m");
}

/// <summary>The name of something that is defined elsewhere.</summary>
/// <param name="Target">What is named.</param>
/// <param name="PartKinds">For a part: the kinds that fit; empty for any.</param>
public sealed record ReferenceKind(ReferenceTarget Target, params PartKind[] PartKinds) : KeyKind<string>;

/// <summary>What a job wants to receive: a station by its id or by what the set shows, a site, or all within a distance.</summary>
public sealed record WishKind : KeyKind<string>;

/// <summary>A path below the job's own folder or the shared folder.</summary>
public sealed record PathKind : KeyKind<string>;

/// <summary>Several values of one kind.</summary>
/// <typeparam name="T">What each becomes.</typeparam>
public sealed record ListKind<T>(KeyKind<T> Item, int Min = 0, int Max = 500) : KeyKind<IReadOnlyList<Sourced<T>>>, IListKind
{
    KeyKind IListKind.Item => Item;

    /// <inheritdoc/>
    public object Bind(IReadOnlyList<Sourced<object>> values) => values.Select(v => new Sourced<T>((T)v.Value, v.At)).ToArray();
}

/// <summary>Named things of one kind; the names are the author's.</summary>
/// <typeparam name="T">What each becomes.</typeparam>
/// <param name="Item">What stands under each name.</param>
/// <param name="What">What a name names, in one word.</param>
/// <param name="Min">Fewest entries.</param>
/// <param name="Max">Most entries.</param>
public sealed record MapKind<T>(KeyKind<T> Item, string What, int Min = 0, int Max = 500) : KeyKind<IReadOnlyList<Entry<T>>>, IMapKind
{
    KeyKind IMapKind.Item => Item;

    /// <inheritdoc/>
    public object Bind(IReadOnlyList<Entry<object>> values) => values.Select(v => new Entry<T>(v.Name, (T)v.Value, v.At)).ToArray();
}

/// <summary>A group of keys.</summary>
public record GroupKind(IReadOnlyList<Key> Keys) : KeyKind<CheckedGroup>
{
    /// <summary>The group that a certain map is; the kind itself unless one of its keys decides.</summary>
    /// <param name="word">Gives the word that is written under a key, or null.</param>
    public virtual GroupKind For(Func<Key, string?> word) => this;

    /// <summary>The names of the other groups of this kind that have a key; empty when none has.</summary>
    public virtual IReadOnlyList<string> Elsewhere(string key) => [];
}

/// <summary>What a reference may point to.</summary>
public enum ReferenceTarget
{
    /// <summary>A part of the library.</summary>
    Part,

    /// <summary>A point of <c>routing.points</c>.</summary>
    Point,

    /// <summary>A run of <c>routing.runs</c>.</summary>
    Run,

    /// <summary>A transmitter of the station list or of the job.</summary>
    Station,

    /// <summary>An element of <c>cabling.chain</c>, with an output port if it has several (<c>S1.2</c>).</summary>
    Element,
}
