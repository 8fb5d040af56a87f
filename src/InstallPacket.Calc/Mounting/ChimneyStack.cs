using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A mast strapped to a chimney. Several codes refuse it; the arithmetic shows why, and a pass is no permission.</summary>
public static class ChimneyStack
{
    /// <summary>The strap.</summary>
    public static readonly Formula StrapFormula = new(
        "chimney-strap",
        "Pull in each leg of a chimney strap",
        "T = M / (2 s)",
        new("T", "N", "pull per leg"), [new("M", "N m", "moment of the mast"), new("s", "m", "between the straps")],
        "project-notes", "balance of moments, both legs of a strap all the way around share", Provenance.Derived)
    {
        Method = v => StrapLegN(v[0], v[1]),
    };

    /// <summary>The stress at the foot.</summary>
    public static readonly Formula TensionFormula = new(
        "chimney-tension",
        "Stress at the foot of a chimney stack",
        "sigma = 6 (M + F h) / B^3 - rho g h, above 0 it tears plain masonry",
        new("sigma", "MPa", "net tension, should not be above 0"),
        [new("M", "N m", "moment of the mast at the stack's top"), new("F", "N", "wind force of mast and antenna"),
            new("h", "m", "height of the stack"), new("B", "m", "side of the square stack"), new("rho", "kg/m3", "density of masonry")],
        "project-notes", "mechanics of beams; a solid stack, flues make it worse", Provenance.Derived)
    {
        Method = v => FootTensionPa(v[0], v[1], v[3], v[2], v[4]) / 1e6,
    };

    /// <summary>The pull in each leg of a strap that goes all the way around.</summary>
    /// <param name="momentNm">Moment of the mast [N m], not negative; outside throws.</param>
    /// <param name="spacingM">Between the straps [m], above 0 to 10; outside throws.</param>
    /// <returns>Pull [N].</returns>
    public static double StrapLegN(double momentNm, double spacingM) =>
        Moment(momentNm) / (2 * Limit.Between(spacingM, 0, 10, "spacing of the straps in m"));

    /// <summary>The net stress at the foot of a solid square stack.</summary>
    /// <param name="momentNm">Moment of the mast at the stack's top [N m], not negative; outside throws.</param>
    /// <param name="forceN">Wind force of mast and antenna [N], not negative; outside throws.</param>
    /// <param name="sideM">Side of the stack [m], above 0 to 10; outside throws.</param>
    /// <param name="heightM">Height of the stack [m], not negative; outside throws.</param>
    /// <param name="densityKgM3">Density of masonry [kg/m3], 500 to 3000; outside throws.</param>
    /// <returns>Stress [Pa]; above 0 it is tension, which plain masonry must not get.</returns>
    public static double FootTensionPa(double momentNm, double forceN, double sideM, double heightM, double densityKgM3)
    {
        Limit.AtLeast(heightM, 0, "height of the stack in m");
        var moment = Moment(momentNm) + Limit.AtLeast(forceN, 0, "wind force in N") * heightM;
        return 6 * moment / Math.Pow(Limit.Between(sideM, 0, 10, "side of the stack in m"), 3)
            - Limit.Within(densityKgM3, 500, 3000, "density of masonry in kg/m3") * StandardGravity.MS2 * heightM;
    }

    private static double Moment(double momentNm) => Limit.AtLeast(momentNm, 0, "moment in N m");
}
