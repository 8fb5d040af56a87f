namespace InstallPacket.Calc.Quantities;

/// <summary>A ratio of powers in decibels; a loss is negative.</summary>
public readonly record struct Gain : IComparable<Gain>
{
    private Gain(double db) => Db = db;

    /// <summary>Decibels.</summary>
    public double Db { get; }

    /// <summary>The ratio of powers.</summary>
    public double Ratio => Math.Pow(10, Db / 10);

    /// <summary>From decibels.</summary>
    public static Gain FromDb(double db) => new(db);

    /// <summary>A loss, given as a positive number of decibels.</summary>
    public static Gain Loss(double db) => new(-db);

    /// <inheritdoc/>
    public int CompareTo(Gain other) => Db.CompareTo(other.Db);

    /// <summary>Two gains in a row.</summary>
    public static Gain operator +(Gain a, Gain b) => new(a.Db + b.Db);

    /// <summary>The difference of two gains.</summary>
    public static Gain operator -(Gain a, Gain b) => new(a.Db - b.Db);

    /// <summary>A loss turned into a gain, or back.</summary>
    public static Gain operator -(Gain a) => new(-a.Db);

    /// <summary>Less gain.</summary>
    public static bool operator <(Gain a, Gain b) => a.Db < b.Db;

    /// <summary>More gain.</summary>
    public static bool operator >(Gain a, Gain b) => a.Db > b.Db;

    /// <summary>Not more gain.</summary>
    public static bool operator <=(Gain a, Gain b) => a.Db <= b.Db;

    /// <summary>Not less gain.</summary>
    public static bool operator >=(Gain a, Gain b) => a.Db >= b.Db;
}
