namespace InstallPacket.Calc.Siting;

/// <summary>How far a compass can be trusted at a place, by the strength of the horizontal field.</summary>
public enum CompassZone
{
    /// <summary>The horizontal field is strong enough.</summary>
    Usable,

    /// <summary>Horizontal field of 2000 to 6000 nT: print with a warning.</summary>
    Caution,

    /// <summary>Horizontal field of at most 2000 nT: print no magnetic bearing.</summary>
    Blackout,
}

/// <summary>The magnetic field at a place and date.</summary>
/// <param name="X">Component to true north [nT].</param>
/// <param name="Y">Component to the east [nT].</param>
/// <param name="Z">Component downward [nT].</param>
/// <param name="RateX">Yearly change of X [nT per year].</param>
/// <param name="RateY">Yearly change of Y [nT per year].</param>
/// <param name="RateZ">Yearly change of Z [nT per year].</param>
public sealed record MagneticField(double X, double Y, double Z, double RateX, double RateY, double RateZ)
{
    /// <summary>Name of the model that was used.</summary>
    public required string ModelName { get; init; }

    /// <summary>One-sigma error of the declination [deg], without iron nearby.</summary>
    public required double SigmaDeclinationDeg { get; init; }

    /// <summary>Horizontal field [nT].</summary>
    public double H => Math.Sqrt(X * X + Y * Y);

    /// <summary>Total field [nT].</summary>
    public double F => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>Dip below the horizontal [deg].</summary>
    public double InclinationDeg => Math.Atan2(Z, H) * Degrees.PerRadian;

    /// <summary>Declination [deg], positive when magnetic north lies east of true north.</summary>
    public double DeclinationDeg => Math.Atan2(Y, X) * Degrees.PerRadian;

    /// <summary>Yearly change of the declination [deg per year].</summary>
    public double DeclinationRateDegPerYear => (X * RateY - Y * RateX) / (H * H) * Degrees.PerRadian;

    /// <summary>Yearly change of the dip [deg per year].</summary>
    public double InclinationRateDegPerYear => (H * RateZ - Z * RateH) / (F * F) * Degrees.PerRadian;

    /// <summary>Yearly change of the horizontal field [nT per year].</summary>
    public double RateH => (X * RateX + Y * RateY) / H;

    /// <summary>Yearly change of the total field [nT per year].</summary>
    public double RateF => (X * RateX + Y * RateY + Z * RateZ) / F;

    /// <summary>Whether a compass is of use here.</summary>
    public CompassZone Zone => H <= 2000 ? CompassZone.Blackout : H <= 6000 ? CompassZone.Caution : CompassZone.Usable;
}
