namespace InstallPacket.Calc.Quantities;

/// <summary>A length, held in metres.</summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Metres in one international foot.</summary>
    public const double MetresPerFoot = 0.3048;

    private Length(double metres) => Metres = metres;

    /// <summary>The length in metres.</summary>
    public double Metres { get; }

    /// <summary>The length in millimetres.</summary>
    public double Millimetres => Metres * 1000;

    /// <summary>The length in feet.</summary>
    public double Feet => Metres / MetresPerFoot;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>From metres.</summary>
    public static Length FromMetres(double metres) => new(metres);

    /// <summary>From millimetres.</summary>
    public static Length FromMillimetres(double millimetres) => new(millimetres / 1000);

    /// <summary>From feet.</summary>
    public static Length FromFeet(double feet) => new(feet * MetresPerFoot);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>Sum of two lengths.</summary>
    public static Length operator +(Length a, Length b) => new(a.Metres + b.Metres);

    /// <summary>Difference of two lengths.</summary>
    public static Length operator -(Length a, Length b) => new(a.Metres - b.Metres);

    /// <summary>A multiple of a length.</summary>
    public static Length operator *(double factor, Length a) => new(factor * a.Metres);

    /// <summary>Shorter.</summary>
    public static bool operator <(Length a, Length b) => a.Metres < b.Metres;

    /// <summary>Longer.</summary>
    public static bool operator >(Length a, Length b) => a.Metres > b.Metres;

    /// <summary>Not longer.</summary>
    public static bool operator <=(Length a, Length b) => a.Metres <= b.Metres;

    /// <summary>Not shorter.</summary>
    public static bool operator >=(Length a, Length b) => a.Metres >= b.Metres;
}
