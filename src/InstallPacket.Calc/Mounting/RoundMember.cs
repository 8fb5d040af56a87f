using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Wind on a round tube by the European wind standard.</summary>
public static class RoundMember
{
    /// <summary>Roughness of a galvanised surface [m]; recalled.</summary>
    public const double GalvanisedRoughnessM = 0.2e-3;

    /// <summary>Roughness of fine paint [m]; recalled.</summary>
    public const double PaintedRoughnessM = 0.05e-3;

    /// <summary>Up to this Reynolds number the force coefficient is constant.</summary>
    public const double SubcriticalReynolds = 2e5;

    private const double ViscosityM2S = 15e-6;
    private const double GreatestSlenderness = 70;

    /// <summary>The Reynolds number.</summary>
    public static readonly Formula ReynoldsFormula = new(
        "eurocode-reynolds",
        "Reynolds number of a tube in the wind",
        "Re = b v / 15e-6, v = sqrt(2 qp / rho)",
        new("Re", "", "Reynolds number"),
            [new("b", "m", "diameter"), new("qp", "Pa", "peak pressure"), new("rho", "kg/m3", "density of air")],
        "en-1991-1-4", "7.9; recalled", Provenance.Memory);

    /// <summary>The coefficient without end effect.</summary>
    public static readonly Formula BareCoefficientFormula = new(
        "eurocode-round-bare",
        "Force coefficient of an endless tube",
        "cf0 = 1.2 up to Re = 2e5; above min(1.2, max(0.11 / (Re/1e6)^1.4, 1.2 + 0.18 log10(10 k/b) / (1 + 0.4 log10(Re/1e6))))",
        new("cf0", "", "force coefficient"), [new("Re", "", "Reynolds number"), new("k", "m", "roughness"), new("b", "m", "diameter")],
        "en-1991-1-4", "7.9.2; recalled, and two published calculation reports are met by it", Provenance.Memory);

    /// <summary>The end effect.</summary>
    public static readonly Formula EndEffectFormula = new(
        "eurocode-end-effect",
        "End effect of a tube",
        "psi = 0.60, 0.70, 0.91 at lambda = 1, 10, 70, linear in log10(lambda); lambda = min(70, n l / b), n = 1 up to 15 m, 0.7 from 50 m",
        new("psi", "", "end effect"), [new("l", "m", "length"), new("b", "m", "diameter")],
        "en-1991-1-4", "7.13, solidity 1; recalled, and two published calculation reports are met by it", Provenance.Memory);

    /// <summary>The force.</summary>
    public static readonly Formula ForceFormula = new(
        "eurocode-round-force",
        "Wind force on a tube",
        "F = cf0 psi qp b l",
        new("F", "N", "characteristic force"),
        [new("cf0", "", "force coefficient"), new("psi", "", "end effect"), new("qp", "Pa", "peak pressure"), new("b", "m", "diameter"),
            new("l", "m", "length")],
        "en-1991-1-4", "5.3 with cs cd = 1; recalled, and two published calculation reports are met by it", Provenance.Memory);

    /// <summary>The velocity that belongs to a peak pressure.</summary>
    /// <param name="peakPa">Peak pressure [Pa], not negative; outside throws.</param>
    /// <param name="densityKgM3">Density of air [kg/m3], 0.5 to 1.5; outside throws.</param>
    /// <returns>Velocity [m/s].</returns>
    public static double PeakVelocityMS(double peakPa, double densityKgM3 = WindEurocode.AirDensityKgM3) =>
        Math.Sqrt(2 * Limit.AtLeast(peakPa, 0, "peak pressure in Pa") / Limit.Within(densityKgM3, 0.5, 1.5, "density of air in kg/m3"));

    /// <summary>The Reynolds number.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="peakPa">Peak pressure [Pa], not negative; outside throws.</param>
    /// <returns>Pure number.</returns>
    public static double Reynolds(double diameterM, double peakPa) => Diameter(diameterM) * PeakVelocityMS(peakPa) / ViscosityM2S;

    /// <summary>The force coefficient without end effect.</summary>
    /// <param name="reynolds">Reynolds number, 0 to 1e8; outside throws.</param>
    /// <param name="roughnessM">Roughness of the surface [m], above 0 to 0.01; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <returns>Coefficient.</returns>
    public static double BareCoefficient(double reynolds, double roughnessM, double diameterM)
    {
        Limit.Between(roughnessM, 0, 0.01, "roughness in m");
        Diameter(diameterM);
        if (Limit.Within(reynolds, 0, 1e8, "Reynolds number") <= SubcriticalReynolds) return 1.2;
        var millions = reynolds / 1e6;
        var rough = 1.2 + 0.18 * Math.Log10(10 * roughnessM / diameterM) / (1 + 0.4 * Math.Log10(millions));
        return Math.Min(1.2, Math.Max(0.11 / Math.Pow(millions, 1.4), rough));
    }

    /// <summary>The effective slenderness.</summary>
    /// <param name="lengthM">Length [m], above 0 to 200; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <returns>Pure number, 70 at most.</returns>
    public static double Slenderness(double lengthM, double diameterM)
    {
        Limit.Between(lengthM, 0, 200, "length in m");
        var share = Math.Clamp(1 - 0.3 * (lengthM - 15) / 35, 0.7, 1);
        return Math.Min(GreatestSlenderness, share * lengthM / Diameter(diameterM));
    }

    /// <summary>The end effect.</summary>
    /// <param name="slenderness">Effective slenderness, above 0; below 1 it counts as 1; outside throws.</param>
    /// <returns>Factor, 0.60 to 0.91.</returns>
    public static double EndEffect(double slenderness)
    {
        Limit.Between(slenderness, 0, double.PositiveInfinity, "slenderness");
        var log = Math.Log10(Math.Clamp(slenderness, 1, GreatestSlenderness));
        return log <= 1 ? 0.60 + 0.10 * log : 0.70 + 0.21 * (log - 1) / (Math.Log10(GreatestSlenderness) - 1);
    }

    /// <summary>The pressure that acts on the tube's projected area: peak pressure with coefficient and end effect.</summary>
    /// <param name="peakPa">Peak pressure [Pa], not negative; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="lengthM">Length [m], above 0 to 200; outside throws.</param>
    /// <param name="roughnessM">Roughness of the surface [m], above 0 to 0.01; outside throws.</param>
    /// <returns>Pressure [Pa]; times the diameter it is the line load.</returns>
    public static double EffectivePressurePa(double peakPa, double diameterM, double lengthM, double roughnessM = GalvanisedRoughnessM) =>
        BareCoefficient(Reynolds(diameterM, peakPa), roughnessM, diameterM) * EndEffect(Slenderness(lengthM, diameterM)) * peakPa;

    /// <summary>The characteristic wind force on a tube.</summary>
    /// <param name="peakPa">Peak pressure [Pa], not negative; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="lengthM">Length [m], above 0 to 200; outside throws.</param>
    /// <param name="roughnessM">Roughness of the surface [m], above 0 to 0.01; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double ForceN(double peakPa, double diameterM, double lengthM, double roughnessM = GalvanisedRoughnessM) =>
        EffectivePressurePa(peakPa, diameterM, lengthM, roughnessM) * diameterM * lengthM;

    private static double Diameter(double diameterM) => Limit.Between(diameterM, 0, 10, "diameter in m");
}
