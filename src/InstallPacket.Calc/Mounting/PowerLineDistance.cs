using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>How far a mast must stand from the nearest wire.</summary>
public static class PowerLineDistance
{
    /// <summary>Distance to keep from lines up to 50 kV [m], 10 ft.</summary>
    public const double KeepClearM = 10 * 0.3048;

    /// <summary>The distance to keep from a line of some voltage.</summary>
    public static readonly Formula KeepClearFormula = new(
        "power-line-keep-clear",
        "Distance to keep from an overhead line",
        "c = 10 ft to 50 kV, 4 in more for each 10 kV above",
        new("c", "m", "distance"), [new("U", "kV", "voltage of the line")],
        "osha-1910-269", "10 ft and 4 in for each 10 kV over 50")
    {
        Method = v => KeepClearOf(v[0]),
    };

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
        "d = Rf + c",
        new("d", "m", "horizontal distance"),
            [new("Rf", "m", "radius within which mast and antenna can fall"),
            new("c", "m", "distance to keep from the line, 10 ft up to 50 kV")],
        "osha-1926-1408", "Table A, 10 ft up to 50 kV, added to the fall", Provenance.Derived);

    /// <summary>The wanted distance.</summary>
    public static readonly Formula RequiredFormula = new(
        "power-line-distance",
        "Distance from the mast to the nearest power line",
        "d = max(2 (La + Lm), Rf + c)",
        new("d", "m", "horizontal distance"),
        [new("La", "m", "length of the antenna"), new("Lm", "m", "length of the mast"),
            new("Rf", "m", "radius within which mast and antenna can fall"),
            new("c", "m", "distance to keep from the line, 10 ft up to 50 kV")],
        "project-notes", "the larger of the antenna sheet's rule and 10 ft beyond the fall", Provenance.Derived)
    {
        Method = v => RequiredM(v[0], v[1], v[2], v[3]),
    };

    /// <summary>The wanted distance; less is a reason to stop and call the utility.</summary>
    /// <param name="antennaLengthM">Length of the antenna [m], not negative; outside throws.</param>
    /// <param name="mastLengthM">Length of the mast [m], not negative; outside throws.</param>
    /// <param name="fallRadiusM">Mast above its pivot and half the antenna's diagonal [m], not negative; outside throws.</param>
    /// <param name="keepClearM">Distance to keep from the line [m].</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double RequiredM(double antennaLengthM, double mastLengthM, double fallRadiusM, double keepClearM = KeepClearM) =>
        Math.Max(TwiceLengthM(antennaLengthM, mastLengthM), BeyondFallM(fallRadiusM, keepClearM));

    /// <summary>The distance to keep from a line.</summary>
    /// <param name="kilovolts">Voltage [kV], 0 to 1000; outside throws.</param>
    /// <returns>Distance [m].</returns>
    public static double KeepClearOf(double kilovolts)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(kilovolts);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(kilovolts, 1000);
        return KeepClearM + Math.Max(0, kilovolts - 50) / 10 * 4 * 0.0254;
    }

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
    /// <param name="keepClearM">Distance to keep from the line [m].</param>
    /// <returns>Horizontal distance [m].</returns>
    public static double BeyondFallM(double fallRadiusM, double keepClearM = KeepClearM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fallRadiusM);
        ArgumentOutOfRangeException.ThrowIfNegative(keepClearM);
        return fallRadiusM + keepClearM;
    }
}
