namespace InstallPacket.Calc.Siting;

/// <summary>The ellipsoid that satellite positions refer to.</summary>
internal static class Wgs84
{
    /// <summary>Equatorial radius [m].</summary>
    public const double A = 6378137;

    /// <summary>Flattening.</summary>
    public const double F = 1 / 298.257223563;

    /// <summary>Polar radius [m].</summary>
    public const double B = A * (1 - F);

    /// <summary>First eccentricity squared.</summary>
    public const double E2 = F * (2 - F);

    /// <summary>Second eccentricity squared.</summary>
    public const double Ep2 = E2 / (1 - E2);

    /// <summary>Third flattening.</summary>
    public const double N = F / (2 - F);

    /// <summary>Keeps a pole usable where a cosine would vanish.</summary>
    public const double Tiny = 1e-150;

    /// <summary>Sine and cosine of the reduced latitude, tan(beta) = (1 - f) tan(phi).</summary>
    public static (double Sin, double Cos) ReducedLatitude(double latitudeDeg)
    {
        var (s, c) = Degrees.SinCos(latitudeDeg);
        (s, c) = Degrees.Normalise((1 - F) * s, c);
        return (s, Math.Max(c, Tiny));
    }
}
