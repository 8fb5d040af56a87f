namespace InstallPacket.Calc.Quantities;

/// <summary>
/// The power of a signal at one point, held in dBm in the 75 ohm system of the trade.
/// A level plus a gain is a level; adding two levels is a power sum and has its own name, so it does not compile by accident.
/// </summary>
public readonly record struct Level : IComparable<Level>
{
    /// <summary>dBuV at 75 ohm minus dBm: 10 log10(1e-3 x 75) + 120 = 108.7506.</summary>
    public static readonly double MicrovoltOffset = 10 * Math.Log10(1e-3 * 75) + 120;

    private Level(double dbm) => Dbm = dbm;

    /// <summary>Decibels over one milliwatt.</summary>
    public double Dbm { get; }

    /// <summary>Decibels over one microvolt at 75 ohm.</summary>
    public double DbuV => Dbm + MicrovoltOffset;

    /// <summary>Decibels over one millivolt at 75 ohm.</summary>
    public double DbmV => DbuV - 60;

    /// <summary>From dBm.</summary>
    public static Level FromDbm(double dbm) => new(dbm);

    /// <summary>From dBuV at 75 ohm.</summary>
    public static Level FromDbuV(double dbuV) => new(dbuV - MicrovoltOffset);

    /// <summary>From dBmV at 75 ohm.</summary>
    public static Level FromDbmV(double dbmV) => new(dbmV + 60 - MicrovoltOffset);

    /// <inheritdoc/>
    public int CompareTo(Level other) => Dbm.CompareTo(other.Dbm);

    /// <summary>The level behind a gain (or a loss, when negative).</summary>
    public static Level operator +(Level level, Gain gain) => new(level.Dbm + gain.Db);

    /// <summary>The level before a gain.</summary>
    public static Level operator -(Level level, Gain gain) => new(level.Dbm - gain.Db);

    /// <summary>The ratio between two levels.</summary>
    public static Gain operator -(Level a, Level b) => Gain.FromDb(a.Dbm - b.Dbm);

    /// <summary>Weaker.</summary>
    public static bool operator <(Level a, Level b) => a.Dbm < b.Dbm;

    /// <summary>Stronger.</summary>
    public static bool operator >(Level a, Level b) => a.Dbm > b.Dbm;

    /// <summary>Not stronger.</summary>
    public static bool operator <=(Level a, Level b) => a.Dbm <= b.Dbm;

    /// <summary>Not weaker.</summary>
    public static bool operator >=(Level a, Level b) => a.Dbm >= b.Dbm;
}
