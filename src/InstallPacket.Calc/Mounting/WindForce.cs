using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Straight parts of an antenna that are alike: its elements, or its boom.</summary>
/// <param name="Count">How many, 1 and more; outside throws when used.</param>
/// <param name="WidthM">Width or diameter [m], above 0; outside throws when used.</param>
/// <param name="LengthM">Length [m], above 0; outside throws when used.</param>
/// <param name="Cf">Force coefficient: 1.2 for slender rods, 2.0 for a slender square boom.</param>
public readonly record struct AntennaBars(int Count, double WidthM, double LengthM, double Cf);

/// <summary>Forces of the wind on mast and antenna. The area is always that of the solid parts.</summary>
public static class WindForce
{
    /// <summary>Force coefficient of slender rods and tubes.</summary>
    public const double SlenderRoundCf = 1.2;

    /// <summary>Force coefficient of a slender square boom, wind on its face.</summary>
    public const double SlenderSquareCf = 2.0;

    /// <summary>The force.</summary>
    public static readonly Formula ForceFormula = new(
        "wind-force",
        "Wind force on an antenna",
        "F = q G EPA",
        new("F", "N", "force"),
            [new("q", "Pa", "velocity pressure"), new("G", "", "gust effect"), new("EPA", "m2", "effective projected area, sum of Cf A")],
        "asce-7-10", "wind force on other structures")
    {
        Method = v => ForceN(v[0], v[1], v[2]),
    };

    /// <summary>The line load.</summary>
    public static readonly Formula LineLoadFormula = new(
        "wind-line-load",
        "Wind load along the mast",
        "w = q G Cf D",
        new("w", "N/m", "line load"),
            [new("q", "Pa", "velocity pressure"), new("G", "", "gust effect"), new("Cf", "", "force coefficient"),
            new("D", "m", "diameter")],
        "asce-7-10", "wind force on other structures, per metre of mast")
    {
        Method = v => LineLoadNPerM(v[0], v[1], v[2], v[3]),
    };

    /// <summary>The scaled maker's force.</summary>
    public static readonly Formula ScaledForceFormula = new(
        "wind-scaled-force",
        "Wind force from the maker's force at another speed",
        "F = F0 (V / V0)^2",
        new("F", "N", "force"),
            [new("F0", "N", "maker's force"), new("V", "m/s", "speed wanted"), new("V0", "m/s", "speed of the maker's figure")],
        "project-notes", "pressure grows with the square of the speed", Provenance.Derived);

    /// <summary>The area of parts.</summary>
    public static readonly Formula BarsFormula = new(
        "antenna-bars-area",
        "Effective area of the bars of an antenna",
        "EPA = sum(n d l Cf), nothing shades another",
        new("EPA", "m2", "effective projected area"),
            [new("n", "", "how many"), new("d", "m", "width"), new("l", "m", "length"), new("Cf", "", "force coefficient")],
        "project-notes", "outline of the antenna, when the maker gives no area", Provenance.Derived)
    {
        Method = v => BarsM2([new((int)v[0], v[1], v[2], v[3])]),
    };

    /// <summary>The area at an angle.</summary>
    public static readonly Formula AngleFormula = new(
        "antenna-area-at-angle",
        "Effective area of an antenna in wind from an angle",
        "EPA = EPA_N cos(theta)^2 + EPA_T sin(theta)^2; design with the larger of EPA_N and EPA_T",
        new("EPA", "m2", "effective projected area"),
            [new("EPA_N", "m2", "wind along the boom"), new("EPA_T", "m2", "wind across it"), new("theta", "deg", "from the boom")],
        "tia-222", "area of appurtenances; recalled", Provenance.Memory)
    {
        Method = v => AtAngleM2(v[0], v[1], v[2]),
    };

    /// <summary>The force on an effective area.</summary>
    /// <param name="pressurePa">Velocity pressure [Pa], not negative; outside throws.</param>
    /// <param name="gustEffect">Gust effect factor, 0.85 to 2; outside throws.</param>
    /// <param name="effectiveAreaM2">Effective projected area [m2], not negative; outside throws.</param>
    /// <returns>Force [N] of the same kind (ultimate or not) as the pressure.</returns>
    public static double ForceN(double pressurePa, double gustEffect, double effectiveAreaM2) =>
        Pressure(pressurePa) * Gust(gustEffect) * Limit.AtLeast(effectiveAreaM2, 0, "effective projected area in m2");

    /// <summary>The load along a mast.</summary>
    /// <param name="pressurePa">Velocity pressure [Pa], not negative; outside throws.</param>
    /// <param name="gustEffect">Gust effect factor, 0.85 to 2; outside throws.</param>
    /// <param name="forceCoefficient">Force coefficient, above 0 to 3; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <returns>Line load [N/m].</returns>
    public static double LineLoadNPerM(double pressurePa, double gustEffect, double forceCoefficient, double diameterM) =>
        Pressure(pressurePa) * Gust(gustEffect) * Cf(forceCoefficient) * Limit.Between(diameterM, 0, 10, "diameter in m");

    /// <summary>A maker's force at another speed. Record which speed it was and whether it was a gust.</summary>
    /// <param name="statedN">Maker's force [N], not negative; outside throws.</param>
    /// <param name="statedMS">Speed of the maker's figure [m/s], 1 to 150; outside throws.</param>
    /// <param name="wantedMS">Speed wanted [m/s], 0 to 150; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double ScaledForceN(double statedN, double statedMS, double wantedMS) =>
        Limit.AtLeast(statedN, 0, "maker's wind force in N")
        * Math.Pow(Limit.Within(wantedMS, 0, 150, "wind speed in m/s") / Limit.Within(statedMS, 1, 150, "maker's wind speed in m/s"), 2);

    /// <summary>The effective area of the bars that one direction of the wind meets.</summary>
    /// <param name="bars">Elements for wind along the boom; boom and clamp for wind across it.</param>
    /// <returns>Area [m2].</returns>
    public static double BarsM2(IEnumerable<AntennaBars> bars) => bars.Sum(b =>
        Limit.AtLeast(b.Count, 1, "count of bars") * Limit.Between(b.WidthM, 0, 10, "width in m") * Limit.Between(b.LengthM, 0, 100,
            "length in m") * Cf(b.Cf));

    /// <summary>The effective area in wind from an angle.</summary>
    /// <param name="alongM2">With wind along the boom [m2], not negative; outside throws.</param>
    /// <param name="acrossM2">With wind across the boom [m2], not negative; outside throws.</param>
    /// <param name="fromBoomDeg">Angle between wind and boom [deg], -360 to 360; outside throws.</param>
    /// <returns>Area [m2].</returns>
    public static double AtAngleM2(double alongM2, double acrossM2, double fromBoomDeg)
    {
        var (sin, cos) = Math.SinCos(Limit.Within(fromBoomDeg, -360, 360, "angle from the boom in degrees") * Math.PI / 180);
        return Limit.AtLeast(alongM2, 0, "area along the boom in m2") * cos * cos
            + Limit.AtLeast(acrossM2, 0, "area across the boom in m2") * sin * sin;
    }

    /// <summary>The effective area to design with, whichever way the wind comes.</summary>
    /// <param name="alongM2">With wind along the boom [m2], not negative; outside throws.</param>
    /// <param name="acrossM2">With wind across the boom [m2], not negative; outside throws.</param>
    /// <returns>Area [m2].</returns>
    public static double GreatestM2(double alongM2, double acrossM2) =>
        Math.Max(AtAngleM2(alongM2, acrossM2, 0), AtAngleM2(alongM2, acrossM2, 90));

    private static double Pressure(double pressurePa) => Limit.AtLeast(pressurePa, 0, "velocity pressure in Pa");

    private static double Gust(double gustEffect) => Limit.Within(gustEffect, WindAsce.RigidGustEffect, 2, "gust effect factor");

    private static double Cf(double forceCoefficient) => Limit.Between(forceCoefficient, 0, 3, "force coefficient");
}
