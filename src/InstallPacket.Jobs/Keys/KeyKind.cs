using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>What a key may hold. The reader, the schema and the reference page all work from these.</summary>
public abstract record KeyKind;

/// <summary>Words of the author.</summary>
/// <param name="MaxCharacters">Longest text.</param>
public sealed record TextKind(int MaxCharacters = 200) : KeyKind;

/// <summary>One of a fixed set of words.</summary>
/// <param name="Words">The words.</param>
public sealed record WordKind(params string[] Words) : KeyKind;

/// <summary>A whole number without unit.</summary>
public sealed record IntegerKind(int Min, int Max) : KeyKind;

/// <summary>A plain number without unit.</summary>
public sealed record NumberKind(double Min, double Max) : KeyKind;

/// <summary>A value with its unit.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="Min">Smallest value, in <paramref name="RangeUnit"/>.</param>
/// <param name="Max">Largest value, in <paramref name="RangeUnit"/>.</param>
/// <param name="RangeUnit">The unit in which the range is stated.</param>
public sealed record QuantityKind(Dimension Dimension, double Min, double Max, string RangeUnit) : KeyKind;

/// <summary>A figure of a part over frequency: one value, or a map from frequency to value.</summary>
public sealed record CurveKind(Dimension Dimension, double Min, double Max, string RangeUnit) : KeyKind;

/// <summary>A calendar day, <c>YYYY-MM-DD</c>.</summary>
public sealed record DateKind : KeyKind;

/// <summary>A latitude or a longitude: decimal degrees with the letter of its half of the world.</summary>
/// <param name="Latitude">True for N or S, false for E or W.</param>
public sealed record CoordinateKind(bool Latitude) : KeyKind;

/// <summary>A bearing with its north: <c>214 deg true</c>.</summary>
public sealed record BearingKind : KeyKind;

/// <summary>A point in the house: three lengths.</summary>
/// <param name="Axes">Names of the lengths.</param>
public sealed record PositionKind(params string[] Axes) : KeyKind;

/// <summary>The name of something that is defined elsewhere.</summary>
/// <param name="Target">What is named.</param>
/// <param name="PartKinds">For a part: the kinds that fit; empty for any.</param>
public sealed record ReferenceKind(ReferenceTarget Target, params string[] PartKinds) : KeyKind;

/// <summary>A path below the job's own folder or the shared folder.</summary>
public sealed record PathKind : KeyKind;

/// <summary>Several values of one kind.</summary>
public sealed record ListKind(KeyKind Item, int Min = 0, int Max = 500) : KeyKind;

/// <summary>Named things of one kind; the names are the author's.</summary>
/// <param name="Item">What stands under each name.</param>
/// <param name="What">What a name names, in one word.</param>
/// <param name="Min">Fewest entries.</param>
/// <param name="Max">Most entries.</param>
public sealed record MapKind(KeyKind Item, string What, int Min = 0, int Max = 500) : KeyKind;

/// <summary>A group of keys.</summary>
public sealed record GroupKind(params Key[] Keys) : KeyKind;

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

/// <summary>One key: the only place where it is declared.</summary>
/// <param name="Name">The key.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Meaning">One line for the reference page and for editors.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="Default">The value used when it is absent, as an author would write it; null when there is none.</param>
public sealed record Key(string Name, KeyKind Kind, string Meaning, bool Required = false, string? Default = null);
