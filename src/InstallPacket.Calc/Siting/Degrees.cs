namespace InstallPacket.Calc.Siting;

/// <summary>Sines and cosines of angles in degrees that are exact at the multiples of 90.</summary>
internal static class Degrees
{
    /// <summary>Degrees in one radian.</summary>
    public const double PerRadian = 180 / Math.PI;

    /// <summary>Radians.</summary>
    public static double ToRadians(double degrees) => degrees / PerRadian;

    /// <summary>Sine and cosine; the angle is reduced to within 45 degrees of an axis before it meets pi.</summary>
    public static (double Sin, double Cos) SinCos(double degrees)
    {
        var reduced = Math.IEEERemainder(degrees, 360);
        var quadrant = (int)Math.Round(reduced / 90);
        var (s, c) = Math.SinCos(ToRadians(reduced - 90 * quadrant));
        return (quadrant & 3) switch
        {
            0 => (s, c),
            1 => (c, -s),
            2 => (-s, -c),
            _ => (-c, s),
        };
    }

    /// <summary>Scales a pair to length one.</summary>
    public static (double Sin, double Cos) Normalise(double sin, double cos)
    {
        var r = Math.Sqrt(sin * sin + cos * cos);
        return (sin / r, cos / r);
    }
}
