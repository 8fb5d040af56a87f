using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>The moment a mast may bear, by allowable stress: compare it with loads from <see cref="AllowableStress"/>. A pass is no
/// certificate.</summary>
public static class MastStrength
{
    private const double SteelSafety = 1.67;
    private const double AluminiumSafety = 1.65;
    private const double WeldedShare = 0.5;
    private const double ThinFactor = 0.07;

    /// <summary>Steel with a thick wall.</summary>
    public static readonly Formula PlasticFormula = new(
        "mast-allowable-plastic",
        "Moment a steel mast may bear",
        "Ma = Fy Z / 1.67 when D / t <= 0.07 E / Fy",
        new("Ma", "N m", "allowable moment"), [new("Fy", "MPa", "yield strength"), new("Z", "mm3", "plastic modulus")],
        "aisc-360", "flexure of round tubes, allowable strength", Provenance.Memory)
    {
        Method = v => v[0] * v[1] / 1000 / 1.67,
    };

    /// <summary>Steel with a thin wall.</summary>
    public static readonly Formula ElasticFormula = new(
        "mast-allowable-elastic",
        "Moment a thin-walled steel mast may bear",
        "Ma = Fy S / 1.67 when D / t > 0.07 E / Fy",
        new("Ma", "N m", "allowable moment"), [new("Fy", "MPa", "yield strength"), new("S", "mm3", "section modulus")],
        "aisc-360", "flexure of round tubes; elastic as a safe side of the code's curve", Provenance.Memory)
    {
        Method = v => v[0] * v[1] / 1000 / 1.67,
    };

    /// <summary>Aluminium.</summary>
    public static readonly Formula AluminiumFormula = new(
        "mast-allowable-aluminium",
        "Moment an aluminium mast may bear",
        "Ma = Fy S / 1.65, half of it near welds",
        new("Ma", "N m", "allowable moment"), [new("Fy", "MPa", "yield strength"), new("S", "mm3", "section modulus")],
        "aluminium-design", "allowable strength at yield", Provenance.Memory)
    {
        Method = v => v[0] * v[1] / 1000 / 1.65,
    };

    /// <summary>The stress.</summary>
    public static readonly Formula StressFormula = new(
        "mast-stress",
        "Bending stress of the mast",
        "sigma = M / S",
        new("sigma", "MPa", "stress"), [new("M", "N m", "moment"), new("S", "mm3", "section modulus")],
        "project-notes", "mechanics of beams", Provenance.Derived)
    {
        Method = v => v[0] / v[1] * 1000,
    };

    /// <summary>The utilisation.</summary>
    public static readonly Formula UtilisationFormula = new(
        "mast-utilisation",
        "Share of the mast's strength that is used",
        "u = M / Ma, above 1 it fails",
        new("u", "", "utilisation"), [new("M", "N m", "moment"), new("Ma", "N m", "allowable moment")],
        "project-notes", "comparison of moments", Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>The moment a mast of a material may bear, by the rule that fits metal and wall.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="material">Material.</param>
    /// <param name="welded">A weld is near the bracket; only aluminium loses by it.</param>
    /// <returns>Moment [N m].</returns>
    public static double AllowableNm(MastSection section, MastMaterial material, bool welded = false)
    {
        if (material.IsAluminium) return AluminiumNm(section, material.YieldPa, welded);
        return IsThin(section, material.YieldPa, material.ModulusPa) ? ElasticNm(section, material.YieldPa)
            : PlasticNm(section, material.YieldPa);
    }

    /// <summary>True when the wall is so thin that it may dent before it yields.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="yieldPa">Yield strength [Pa], 1e6 to 2e9; outside throws.</param>
    /// <param name="modulusPa">Modulus of elasticity [Pa], 1e9 to 1e12; outside throws.</param>
    public static bool IsThin(MastSection section, double yieldPa, double modulusPa) =>
        section.Slenderness > ThinFactor * Limit.Within(modulusPa, 1e9, 1e12, "modulus of elasticity in Pa") / Yield(yieldPa);

    /// <summary>Steel with a thick wall.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="yieldPa">Yield strength [Pa], 1e6 to 2e9; outside throws.</param>
    /// <returns>Moment [N m].</returns>
    public static double PlasticNm(MastSection section, double yieldPa) => Yield(yieldPa) * section.PlasticModulusM3 / SteelSafety;

    /// <summary>Steel with a thin wall.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="yieldPa">Yield strength [Pa], 1e6 to 2e9; outside throws.</param>
    /// <returns>Moment [N m].</returns>
    public static double ElasticNm(MastSection section, double yieldPa) => Yield(yieldPa) * section.SectionModulusM3 / SteelSafety;

    /// <summary>Aluminium.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="yieldPa">Yield strength [Pa], 1e6 to 2e9; outside throws.</param>
    /// <param name="welded">A weld is near.</param>
    /// <returns>Moment [N m].</returns>
    public static double AluminiumNm(MastSection section, double yieldPa, bool welded) =>
        Yield(yieldPa) * section.SectionModulusM3 / AluminiumSafety * (welded ? WeldedShare : 1);

    /// <summary>The bending stress.</summary>
    /// <param name="momentNm">Moment [N m], not negative; outside throws.</param>
    /// <param name="section">Cross-section.</param>
    /// <returns>Stress [Pa].</returns>
    public static double StressPa(double momentNm, MastSection section) => Moment(momentNm) / section.SectionModulusM3;

    /// <summary>The share of the strength that is used.</summary>
    /// <param name="momentNm">Moment [N m], not negative; outside throws.</param>
    /// <param name="allowableNm">Allowable moment [N m], above 0; outside throws.</param>
    /// <returns>Pure number; above 1 the mast fails.</returns>
    public static double Utilisation(double momentNm, double allowableNm) =>
        Moment(momentNm) / Limit.Between(allowableNm, 0, 1e9, "allowable moment in N m");

    private static double Moment(double momentNm) => Limit.AtLeast(momentNm, 0, "moment in N m");

    private static double Yield(double yieldPa) => Limit.Within(yieldPa, 1e6, 2e9, "yield strength in Pa");
}
