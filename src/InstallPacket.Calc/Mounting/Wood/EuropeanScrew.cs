using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>
/// A hexagon wood screw through a steel plate into timber, after EN 1995-1-1. All of it is recalled; the approval of the screw goes before
/// it. The helping pull of the screw
/// head (rope effect) is left out, and the plate counts as thin, both on the safe side.
/// </summary>
public static class EuropeanScrew
{
    /// <summary>Partial factor of connections.</summary>
    public const double MaterialFactor = 1.3;

    /// <summary>Tensile strength taken for the screw [Pa]; a low value of our own.</summary>
    public const double TensilePa = 400e6;

    /// <summary>Working diameter over nominal diameter: 1.1 times a core of seven tenths.</summary>
    private const double WorkingShare = 0.77;

    /// <summary>The withdrawal strength.</summary>
    public static readonly Formula StrengthFormula = new(
        "ec5-withdrawal-strength",
        "Withdrawal strength of a screw",
        "fax = 0.52 d^-0.5 l^-0.1 rho^0.8, d and l in mm",
        new("fax", "MPa", "characteristic strength"),
            [new("d", "mm", "diameter"), new("l", "mm", "thread in the timber"), new("rho", "kg/m3", "characteristic density")],
        "en-1995-1-1", "screws of 6 to 12 mm, axial", Provenance.Memory)
    {
        Method = v => StrengthPa(v[0] / 1000, v[1] / 1000, v[2]) / 1e6,
    };

    /// <summary>The withdrawal of one screw.</summary>
    public static readonly Formula WithdrawalFormula = new(
        "ec5-withdrawal",
        "Withdrawal of one screw across the grain, characteristic",
        "Fax = fax d l min(1, d / 8 mm)",
        new("Fax", "N", "characteristic resistance"),
            [new("fax", "MPa", "strength"), new("d", "mm", "diameter"), new("l", "mm", "thread in the timber, six diameters at least")],
        "en-1995-1-1", "screws, axial; the factor n^0.9 of a group is not used, each screw is checked alone", Provenance.Memory)
    {
        Method = v => v[2] < 6 * v[1] - 1e-6 ? 0 : v[0] * v[1] * v[2] * Math.Min(1, v[1] / 8),
            // a thread shorter than six diameters does not count
    };

    /// <summary>The shear of one screw.</summary>
    public static readonly Formula LateralFormula = new(
        "ec5-lateral",
        "Shear of one screw through a thin steel plate, characteristic",
        "Fv = min(0.4 fh t d1, 1.15 sqrt(2 My fh d1)), fh = 0.082 (1 - 0.01 d1) rho, My = 0.3 fu d1^2.6, d1 = 0.77 d, in mm and MPa",
        new("Fv", "N", "characteristic resistance"),
            [new("d", "mm", "diameter"), new("t", "mm", "screw in the timber"), new("rho", "kg/m3", "characteristic density"),
            new("fu", "MPa", "tensile strength")],
        "en-1995-1-1", "single shear, thin plate, holes drilled before", Provenance.Memory)
    {
        Method = v => LateralN(v[0] / 1000, v[1] / 1000, v[2]),
    };

    /// <summary>The design value.</summary>
    public static readonly Formula DesignFormula = new(
        "ec5-design",
        "Design value of one screw",
        "Rd = kmod Rk / 1.3",
        new("Rd", "N", "design value"), [new("kmod", "", "0.9 dry, 0.7 outdoors, short-term load"), new("Rk", "N", "characteristic value")],
        "en-1995-1-1", "design value of a resistance", Provenance.Memory)
    {
        Method = v => DesignN(v[1], v[0]),
    };

    /// <summary>Pull and shear together.</summary>
    public static readonly Formula UseFormula = new(
        "ec5-use",
        "Use of a screw that is pulled and sheared",
        "u = sqrt((N / Rax)^2 + (V / Rv)^2)",
        new("u", "", "demand over capacity"),
            [new("N", "N", "pull"), new("V", "N", "shear"), new("Rax", "N", "against pull"), new("Rv", "N", "against shear")],
        "en-1995-1-1", "combined loads of screws; the root of the sum that the standard limits to 1", Provenance.Memory)
    {
        Method = v => Use(v[0], v[1], v[2], v[3]),
    };

    /// <summary>Withdrawal strength [Pa].</summary>
    /// <param name="diameterM">Diameter [m], 6 to 12 mm; outside throws.</param>
    /// <param name="threadM">Thread in the timber [m], above 0 to 1; outside throws.</param>
    /// <param name="densityKgM3">Characteristic density [kg/m3], 250 to 700; outside throws.</param>
    public static double StrengthPa(double diameterM, double threadM, double densityKgM3) =>
        0.52e6 * Math.Pow(Diameter(diameterM), -0.5) * Math.Pow(1000 * Limit.Between(threadM, 0, 1, "thread in m"),
            -0.1) * Math.Pow(Density(densityKgM3), 0.8);

    /// <summary>Characteristic withdrawal of one screw [N]; 0 when less than six diameters of thread bite.</summary>
    /// <param name="diameterM">Diameter [m], 6 to 12 mm; outside throws.</param>
    /// <param name="threadM">Thread in the timber [m], above 0 to 1; outside throws.</param>
    /// <param name="densityKgM3">Characteristic density [kg/m3], 250 to 700; outside throws.</param>
    public static double WithdrawalN(double diameterM, double threadM, double densityKgM3) =>
        threadM < 6 * diameterM - 1e-9 ? 0
            : StrengthPa(diameterM, threadM, densityKgM3) * diameterM * threadM * Math.Min(1, Diameter(diameterM) / 8);

    /// <summary>Characteristic shear of one screw [N].</summary>
    /// <param name="diameterM">Diameter [m], 6 to 12 mm; outside throws.</param>
    /// <param name="depthM">Screw in the timber [m], above 0 to 1; outside throws.</param>
    /// <param name="densityKgM3">Characteristic density [kg/m3], 250 to 700; outside throws.</param>
    public static double LateralN(double diameterM, double depthM, double densityKgM3)
    {
        var (d, t) = (WorkingShare * Diameter(diameterM), 1000 * Limit.Between(depthM, 0, 1, "depth in m"));
        var crush = 0.082 * (1 - 0.01 * d) * Density(densityKgM3);
        var bend = 0.3 * TensilePa / 1e6 * Math.Pow(d, 2.6);
        return Math.Min(0.4 * crush * t * d, 1.15 * Math.Sqrt(2 * bend * crush * d));
    }

    /// <summary>Duration and moisture factor for wind.</summary>
    /// <param name="wet">Whether the timber stands outdoors.</param>
    public static double Modification(bool wet) => wet ? 0.7 : 0.9;

    /// <summary>Design value [N].</summary>
    /// <param name="characteristicN">Characteristic value [N], not negative; outside throws.</param>
    /// <param name="modification">Duration and moisture factor.</param>
    public static double DesignN(double characteristicN, double modification) =>
        modification * Limit.AtLeast(characteristicN, 0, "resistance in N") / MaterialFactor;

    /// <summary>Demand over capacity.</summary>
    /// <param name="pullN">Pull [N].</param>
    /// <param name="shearN">Shear [N].</param>
    /// <param name="pullDesignN">Design value against pull [N], above 0; outside throws.</param>
    /// <param name="shearDesignN">Design value against shear [N], above 0; outside throws.</param>
    public static double Use(double pullN, double shearN, double pullDesignN, double shearDesignN)
    {
        var (pull, shear) = (pullN / Limit.Between(pullDesignN, 0, 1e7, "pull in N"),
            shearN / Limit.Between(shearDesignN, 0, 1e7, "shear in N"));
        return Math.Sqrt(pull * pull + shear * shear);
    }

    private static double Diameter(double diameterM) =>
        1000 * Limit.Within(diameterM, 0.006 - 1e-9, 0.012 + 1e-9, "diameter of the screw in m");

    private static double Density(double densityKgM3) => Limit.Within(densityKgM3, 250, 700, "density of timber in kg/m3");
}
