using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Ice on a round part. Thickness and the wind that goes with it come from the ice map for the site; neither is ever
/// guessed.</summary>
public static class IceLoad
{
    /// <summary>Density of glaze [kg/m3].</summary>
    public const double GlazeKgM3 = 900;

    /// <summary>The weight.</summary>
    public static readonly Formula WeightFormula = new(
        "ice-weight",
        "Weight of ice on a round part",
        "w = pi t (D + t) rho g",
        new("w", "N/m", "weight per metre"),
            [new("D", "m", "diameter"), new("t", "m", "radial thickness"), new("rho", "kg/m3", "density of ice")],
        "asce-7-ice", "least density of glaze 56 lb/ft3; the area is plain geometry");

    /// <summary>The diameter for the wind.</summary>
    public static readonly Formula DiameterFormula = new(
        "ice-diameter",
        "Diameter of a round part with ice",
        "Di = D + 2 t",
        new("Di", "m", "diameter for the wind"), [new("D", "m", "diameter"), new("t", "m", "radial thickness")],
        "asce-7-ice", "radial thickness on all sides");

    /// <summary>The weight per metre.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="thicknessM">Radial thickness [m], 0 to 0.3; outside throws.</param>
    /// <param name="densityKgM3">Density of ice [kg/m3], 100 to 920; outside throws.</param>
    /// <returns>Weight [N/m].</returns>
    public static double WeightNPerM(double diameterM, double thicknessM, double densityKgM3 = GlazeKgM3) =>
        Math.PI * Thickness(thicknessM) * (Diameter(diameterM) + thicknessM) * Limit.Within(densityKgM3, 100, 920,
            "density of ice in kg/m3") * StandardGravity.MS2;

    /// <summary>The diameter for the wind.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="thicknessM">Radial thickness [m], 0 to 0.3; outside throws.</param>
    /// <returns>Diameter [m].</returns>
    public static double DiameterM(double diameterM, double thicknessM) => Diameter(diameterM) + 2 * Thickness(thicknessM);

    private static double Diameter(double diameterM) => Limit.Between(diameterM, 0, 10, "diameter in m");

    private static double Thickness(double thicknessM) => Limit.Within(thicknessM, 0, 0.3, "thickness of ice in m");
}
