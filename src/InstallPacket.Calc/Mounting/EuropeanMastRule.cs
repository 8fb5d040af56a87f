using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>The simple European rule for antenna masts: fixed pressures, a moment the tube must bear, and limits beyond which a proof is
/// asked for.</summary>
public static class EuropeanMastRule
{
    /// <summary>Pressure up to <see cref="LowHeightM"/> [Pa], to which makers' antenna forces belong.</summary>
    public const double LowPressurePa = 800;

    /// <summary>Pressure above <see cref="LowHeightM"/> [Pa].</summary>
    public const double HighPressurePa = 1100;

    /// <summary>Pressure on a mountain or at the coast [Pa]; seen in one worksheet only.</summary>
    public const double ExposedPressurePa = 1250;

    /// <summary>Mounting height up to which the low pressure holds [m].</summary>
    public const double LowHeightM = 20;

    /// <summary>Shape factor of tubes.</summary>
    public const double TubeFactor = 1.2;

    /// <summary>Beyond this moment at the upper clamp a structural proof is needed [N m].</summary>
    public const double GreatestMomentNm = 1650;

    /// <summary>Beyond this free length a structural proof is needed [m].</summary>
    public const double GreatestFreeM = 6;

    /// <summary>Least share of the mast that is held.</summary>
    public const double HeldShare = 1.0 / 6;

    /// <summary>The pressure.</summary>
    public static readonly Formula PressureFormula = new(
        "mast-rule-pressure",
        "Wind pressure by the simple European rule",
        "q = 800 up to 20 m, 1100 above, 1250 on a mountain or at the coast",
        new("q", "Pa", "pressure"), [new("z", "m", "mounting height")],
        "en-60728-11", "velocity pressures");

    /// <summary>The force on the tube.</summary>
    public static readonly Formula TubeForceFormula = new(
        "mast-rule-tube-force",
        "Wind force on the mast by the simple European rule",
        "F = 1.2 q D L",
        new("F", "N", "force, in the middle of the free length"),
            [new("q", "Pa", "pressure"), new("D", "m", "diameter"), new("L", "m", "free length")],
        "en-60728-11", "shape factor of tubes");

    /// <summary>The force on the antenna.</summary>
    public static readonly Formula AntennaForceFormula = new(
        "mast-rule-antenna-force",
        "Wind force on the antenna by the simple European rule",
        "F = F800 q / 800",
        new("F", "N", "force"), [new("F800", "N", "maker's force at 800 Pa"), new("q", "Pa", "pressure")],
        "en-60728-11", "factor 1.375 above 20 m");

    /// <summary>The held length.</summary>
    public static readonly Formula HeldLengthFormula = new(
        "mast-rule-held-length",
        "Least length of the mast that is held",
        "b = L / 6",
        new("b", "m", "between the clamps"), [new("L", "m", "total length of the mast")],
        "en-60728-11", "one sixth of the total length");

    /// <summary>The pressure of the rule.</summary>
    /// <param name="heightM">Mounting height above ground [m], 0 to 200; outside throws.</param>
    /// <param name="exposed">On a mountain or at the coast.</param>
    /// <returns>Pressure [Pa].</returns>
    public static double PressurePa(double heightM, bool exposed = false)
    {
        Limit.Within(heightM, 0, 200, "mounting height in m");
        if (exposed) return ExposedPressurePa;
        return heightM > LowHeightM ? HighPressurePa : LowPressurePa;
    }

    /// <summary>The force on the free length of the mast; it acts at its middle.</summary>
    /// <param name="pressurePa">Pressure [Pa], not negative; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 1; outside throws.</param>
    /// <param name="freeM">Free length [m], not negative; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double TubeForceN(double pressurePa, double diameterM, double freeM) =>
        TubeFactor * Limit.AtLeast(pressurePa, 0, "pressure in Pa") * Limit.Between(diameterM, 0, 1,
            "diameter in m") * Limit.AtLeast(freeM, 0, "free length in m");

    /// <summary>The force on an antenna from its maker's figure.</summary>
    /// <param name="forceAt800PaN">Maker's force at 800 Pa [N], not negative; outside throws.</param>
    /// <param name="pressurePa">Pressure [Pa], not negative; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double AntennaForceN(double forceAt800PaN, double pressurePa) =>
        Limit.AtLeast(forceAt800PaN, 0, "wind force in N") * Limit.AtLeast(pressurePa, 0, "pressure in Pa") / LowPressurePa;

    /// <summary>The least held length.</summary>
    /// <param name="totalM">Total length of the mast [m], not negative; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double HeldLengthM(double totalM) => HeldShare * Limit.AtLeast(totalM, 0, "length of the mast in m");
}
