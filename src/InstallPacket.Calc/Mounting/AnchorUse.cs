using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>An anchor in masonry, by the figures of its maker. There is no capacity of our own.</summary>
public static class AnchorUse
{
    /// <summary>How much of the anchor is used.</summary>
    public static readonly Formula UseFormula = new(
        "anchor-use",
        "Use of an anchor by its maker's figures",
        "u = N / NR + V / VR",
        new("u", "", "demand over capacity"),
            [new("N", "N", "pull"), new("V", "N", "shear"), new("NR", "N", "stated for pull"), new("VR", "N", "stated for shear")],
        "project-notes", "straight line between both, on the safe side of the approvals' curves", Provenance.Derived)
    {
        Method = v => Of(v[0], v[1], v[2], v[3]),
    };

    /// <summary>Demand over capacity.</summary>
    /// <param name="pullN">Pull [N], not negative; outside throws.</param>
    /// <param name="shearN">Shear [N], not negative; outside throws.</param>
    /// <param name="pullCapacityN">Stated for pull [N], above 0; outside throws.</param>
    /// <param name="shearCapacityN">Stated for shear [N], above 0; outside throws.</param>
    public static double Of(double pullN, double shearN, double pullCapacityN, double shearCapacityN) =>
        Limit.AtLeast(pullN, 0, "pull in N") / Limit.Between(pullCapacityN, 0, 1e7, "pull capacity in N")
        + Limit.AtLeast(shearN, 0, "shear in N") / Limit.Between(shearCapacityN, 0, 1e7, "shear capacity in N");
}
