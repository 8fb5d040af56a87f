using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>How far a mast must stand from the nearest wire.</summary>
public static class PowerLineDistance
{
    /// <summary>Distance to keep from lines up to 50 kV [m], 10 ft.</summary>
    public const double KeepClearM = 10 * 0.3048;

    /// <summary>The distance of the antenna sheet.</summary>
    public static readonly Formula TwiceLengthFormula = new(
        "power-line-twice-length",
        "Distance to power lines by the antenna's safety sheet",
        "d = 2 (La + Lm)",
        new("d", "m", "horizontal distance"), [new("La", "m", "length of the antenna"), new("Lm", "m", "length of the mast")],
        "cpsc-antenna-sheet", "twice the length of antenna and mast");

    /// <summary>The distance beyond the fall.</summary>
    public static readonly Formula BeyondFallFormula = new(
        "power-line-beyond-fall",
        "Distance to power lines beyond the fall of the mast",
        "d = Rf + 3.048",
        new("d", "m", "horizontal distance"), [new("Rf", "m", "radius within which mast and antenna can fall")],
        "osha-1926-1408", "Table A, 10 ft up to 50 kV, added to the fall", Provenance.Derived);

    /// <summary>The wanted distance.</summary>
    public static readonly Formula RequiredFormula = new(
        "power-line-distance",
        "Distance from the mast to the nearest power line",
        "d = max(2 (La + Lm), Rf + 3.048)",
        new("d", "m", "horizontal distance"),
        [new("La", "m", "length of the antenna"), new("Lm", "m", "length of the mast"), new("Rf", "m", "radius within which mast and antenna can fall")],
        "project-notes", "the larger of the antenna sheet's rule and 10 ft beyond the fall", Provenance.Derived);

    /// <summary>The wanted distance; less is a reason to stop and call the utility.</summary>
    /// <param name="antennaLengthM">Length of the antenna [m], not negative; outside throws.</param>
    /// <param name="mastLengthM">Length of the mast [m], not negative; outside throws.</param>
    /// <param name="fallRadiusM">Mast above its pivot and half the antenna's diagonal [m], not negative; outside throws.</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double RequiredM(double antennaLengthM, double mastLengthM, double fallRadiusM) =>
        Math.Max(TwiceLengthM(antennaLengthM, mastLengthM), BeyondFallM(fallRadiusM));

    /// <summary>The distance of the antenna sheet.</summary>
    /// <param name="antennaLengthM">Length of the antenna [m], not negative; outside throws.</param>
    /// <param name="mastLengthM">Length of the mast [m], not negative; outside throws.</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double TwiceLengthM(double antennaLengthM, double mastLengthM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(antennaLengthM);
        ArgumentOutOfRangeException.ThrowIfNegative(mastLengthM);
        return 2 * (antennaLengthM + mastLengthM);
    }

    /// <summary>The distance beyond the fall.</summary>
    /// <param name="fallRadiusM">Mast above its pivot and half the antenna's diagonal [m], not negative; outside throws.</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double BeyondFallM(double fallRadiusM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fallRadiusM);
        return fallRadiusM + KeepClearM;
    }
}
