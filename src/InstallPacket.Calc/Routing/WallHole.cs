using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>A hole that falls to the outside, so that water stays out.</summary>
public static class WallHole
{
    /// <summary>The length of the hole.</summary>
    public static readonly Formula LengthFormula = new(
        "wall-hole-length", "Length of a sloped hole", "L = t / cos(a)",
        new("L", "m", "length"), [new("t", "m", "thickness of the wall"), new("a", "deg", "slope")],
        "project-notes", "right triangle", Provenance.Derived)
    {
        Method = v => LengthM(v[0], v[1]),
    };

    /// <summary>The fall of the hole.</summary>
    public static readonly Formula FallFormula = new(
        "wall-hole-fall", "Fall of a sloped hole to the outside", "v = t tan(a)",
        new("v", "m", "fall"), [new("t", "m", "thickness of the wall"), new("a", "deg", "slope")],
        "project-notes", "right triangle", Provenance.Derived)
    {
        Method = v => FallM(v[0], v[1]),
    };

    /// <summary>The length of the hole.</summary>
    /// <param name="thicknessM">Thickness of the wall [m], not negative; outside throws.</param>
    /// <param name="slopeDeg">Slope [deg], 0 to below 90; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double LengthM(double thicknessM, double slopeDeg) => Checked(thicknessM) / Math.Cos(Radians(slopeDeg));

    /// <summary>By how much the hole falls to the outside.</summary>
    /// <param name="thicknessM">Thickness of the wall [m], not negative; outside throws.</param>
    /// <param name="slopeDeg">Slope [deg], 0 to below 90; outside throws.</param>
    /// <returns>Fall [m].</returns>
    public static double FallM(double thicknessM, double slopeDeg) => Checked(thicknessM) * Math.Tan(Radians(slopeDeg));

    private static double Checked(double thicknessM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(thicknessM);
        return thicknessM;
    }

    private static double Radians(double slopeDeg)
    {
        if (!(slopeDeg is >= 0 and < 90)) throw new ArgumentOutOfRangeException(nameof(slopeDeg), slopeDeg,
            "The slope lies from 0 to below 90 degrees.");
        return slopeDeg * Math.PI / 180;
    }
}
