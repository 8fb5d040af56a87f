using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>How far a mast must stand from the nearest wire.</summary>
public static class PowerLineDistance
{
    /// <summary>Distance to keep from lines up to 50 kV [m], 10 ft.</summary>
    public const double KeepClearM = 10 * 0.3048;

    /// <summary>The wanted distance.</summary>
    public static readonly Formula RequiredFormula = new(
        "power-line-distance",
        "Distance from the mast to the nearest power line",
        "d = max(2 (La + Lm), Rf + 3.05)",
        new("d", "m", "horizontal distance"),
        [new("La", "m", "length of the antenna"), new("Lm", "m", "length of the mast"), new("Rf", "m", "radius within which mast and antenna can fall")],
        "cpsc-antenna-sheet", "twice the length of antenna and mast; with 10 ft of 29 CFR 1926.1408 Table A beyond the fall");

    /// <summary>The wanted distance; less is a reason to stop and call the utility.</summary>
    /// <param name="antennaLengthM">Length of the antenna [m], not negative; outside throws.</param>
    /// <param name="mastLengthM">Length of the mast [m], not negative; outside throws.</param>
    /// <param name="fallRadiusM">Mast above its pivot and half the antenna's diagonal [m], not negative; outside throws.</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double RequiredM(double antennaLengthM, double mastLengthM, double fallRadiusM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(antennaLengthM);
        ArgumentOutOfRangeException.ThrowIfNegative(mastLengthM);
        ArgumentOutOfRangeException.ThrowIfNegative(fallRadiusM);
        return Math.Max(2 * (antennaLengthM + mastLengthM), fallRadiusM + KeepClearM);
    }
}
