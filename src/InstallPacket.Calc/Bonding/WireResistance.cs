using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>Resistance of a conductor to direct current.</summary>
public static class WireResistance
{
    /// <summary>Resistivity of copper at 20 C [ohm m].</summary>
    public const double CopperOhmM = 1e-6 / 58;

    /// <summary>Resistivity of aluminium at 20 C [ohm m].</summary>
    public const double AluminiumOhmM = 0.028264e-6;

    /// <summary>Resistivity of copper-clad steel of 30 % conductivity at 20 C [ohm m]; recalled.</summary>
    public const double CopperCladSteelOhmM = CopperOhmM / 0.30;

    private const double CopperPerK = 0.00393;

    /// <summary>The resistance per length.</summary>
    public static readonly Formula ResistanceFormula = new(
        "wire-resistance",
        "Resistance of a conductor at 20 C",
        "r = 1000 rho / A; rho = 1/58 copper, 0.028264 aluminium, 0.0575 copper-clad steel of 30 %",
        new("r", "ohm/km", "resistance per length"), [new("A", "mm2", "cross-section"), new("rho", "ohm mm2/m", "resistivity")],
        "wire-table", "seven published rows of copper are met by it; aluminium and copper-clad steel are recalled")
    {
        Method = v => OhmPerM(v[0] * 1e-6, v[1] * 1e-6) * 1000,
    };

    /// <summary>The resistance of warm copper.</summary>
    public static readonly Formula WarmFormula = new(
        "wire-resistance-warm",
        "Resistance of copper at another temperature",
        "R = R20 (1 + 0.00393 (T - 20))",
        new("R", "ohm/km", "resistance per length"), [new("R20", "ohm/km", "resistance at 20 C"), new("T", "C", "temperature")],
        "wire-table", "coefficient of annealed copper, recalled", Provenance.Memory);

    /// <summary>Resistivity of a metal at 20 C [ohm m], or null when it is not known.</summary>
    /// <param name="metal">Word for the metal.</param>
    public static double? ResistivityOhmM(string metal) => metal switch
    {
        "copper" => CopperOhmM,
        "aluminium" => AluminiumOhmM,
        "copper-clad-steel" => CopperCladSteelOhmM,
        _ => null,
    };

    /// <summary>The resistance per length at 20 C.</summary>
    /// <param name="areaM2">Cross-section [m2], above 0 to 0.001; outside throws.</param>
    /// <param name="resistivityOhmM">Resistivity [ohm m], above 0 to 1e-5; outside throws.</param>
    /// <returns>Resistance [ohm/m].</returns>
    public static double OhmPerM(double areaM2, double resistivityOhmM = CopperOhmM) =>
        Limit.Between(resistivityOhmM, 0, 1e-5, "resistivity in ohm m") / Limit.Between(areaM2, 0, 1e-3, "cross-section in m2");

    /// <summary>The resistance of copper at another temperature.</summary>
    /// <param name="ohm20">Resistance at 20 C in any unit, not negative; outside throws.</param>
    /// <param name="celsius">Temperature [C], -60 to 250; outside throws.</param>
    /// <returns>Resistance in the same unit.</returns>
    public static double Warm(double ohm20, double celsius) =>
        Limit.AtLeast(ohm20, 0, "resistance at 20 C") * (1 + CopperPerK * (Limit.Within(celsius, -60, 250, "temperature in C") - 20));
}
