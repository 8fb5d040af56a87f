using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>American wire gauge, and the round wire that belongs to a cross-section.</summary>
public static class WireGauge
{
    private const double Number36M = 0.127e-3;
    private const double Steps = 39;

    /// <summary>The diameter of a gauge.</summary>
    public static readonly Formula DiameterFormula = new(
        "wire-gauge-diameter",
        "Diameter of a wire by its American gauge",
        "d = 0.127 x 92^((36 - n) / 39)",
        new("d", "mm", "diameter"), [new("n", "", "gauge; 0 for 1/0, -1 for 2/0 and so on")],
        "wire-table", "the rule of the gauge, recalled; seven published diameters are met by it", Provenance.Memory)
    {
        Method = v => DiameterM(v[0]) * 1000,
    };

    /// <summary>The gauge of a diameter.</summary>
    public static readonly Formula NearestFormula = new(
        "wire-gauge-nearest",
        "American gauge that a diameter comes near",
        "n = 36 - 39 ln(d / 0.127) / ln(92)",
        new("n", "", "gauge, not rounded"), [new("d", "mm", "diameter")],
        "wire-table", "the same rule, solved for the gauge", Provenance.Derived);

    /// <summary>The cross-section.</summary>
    public static readonly Formula AreaFormula = new(
        "wire-area",
        "Cross-section of a solid round wire",
        "A = pi d^2 / 4",
        new("A", "mm2", "cross-section"), [new("d", "mm", "diameter")],
        "project-notes", "geometry", Provenance.Derived)
    {
        Method = v => AreaM2(v[0] / 1000) * 1e6,
    };

    /// <summary>The diameter of a cross-section.</summary>
    public static readonly Formula EquivalentFormula = new(
        "wire-equivalent-diameter",
        "Diameter of the solid round wire of a cross-section",
        "d = sqrt(4 A / pi)",
        new("d", "mm", "diameter"), [new("A", "mm2", "cross-section")],
        "project-notes", "geometry", Provenance.Derived)
    {
        Method = v => EquivalentDiameterM(v[0] * 1e-6) * 1000,
    };

    /// <summary>The diameter of a gauge.</summary>
    /// <param name="gauge">Gauge, -3 (4/0) to 40; outside throws.</param>
    /// <returns>Diameter [m].</returns>
    public static double DiameterM(double gauge) => Number36M * Math.Pow(92, (36 - Limit.Within(gauge, -3, 40, "wire gauge")) / Steps);

    /// <summary>The gauge that a diameter comes near.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 0.1; outside throws.</param>
    /// <returns>Gauge, not rounded.</returns>
    public static double Nearest(double diameterM) => 36 - Steps * Math.Log(Diameter(diameterM) / Number36M) / Math.Log(92);

    /// <summary>The cross-section of a solid round wire.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 0.1; outside throws.</param>
    /// <returns>Cross-section [m2].</returns>
    public static double AreaM2(double diameterM) => Math.PI * Diameter(diameterM) * diameterM / 4;

    /// <summary>The diameter of the solid round wire of a cross-section.</summary>
    /// <param name="areaM2">Cross-section [m2], above 0 to 0.001; outside throws.</param>
    /// <returns>Diameter [m].</returns>
    public static double EquivalentDiameterM(double areaM2) =>
        Math.Sqrt(4 * Limit.Between(areaM2, 0, 1e-3, "cross-section in m2") / Math.PI);

    private static double Diameter(double diameterM) => Limit.Between(diameterM, 0, 0.1, "diameter in m");
}
