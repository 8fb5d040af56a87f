using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>The zone at the wall, below the roof edge, in which European practice needs no earthing conductor.</summary>
public static class FacadeZone
{
    /// <summary>The top of the antenna lies more than this below the roof edge [m].</summary>
    public const double BelowEdgeM = 2;

    /// <summary>The antenna stands out from the wall by less than this [m].</summary>
    public const double OutM = 1.5;

    /// <summary>The test.</summary>
    public static readonly Formula ExemptFormula = new(
        "facade-zone",
        "Antenna in the protected zone of the wall",
        "exempt = 1 when h > 2 and p < 1.5, else 0",
        new("exempt", "", "1 when no earthing conductor is asked for"),
            [new("h", "m", "top of antenna and mast below the roof edge"), new("p", "m", "farthest point from the wall")],
        "en-60728-11-earthing", "as paraphrased in a manual; both conditions strict")
    {
        Method = v => IsExempt(v[0], v[1]) ? 1 : 0,
    };

    /// <summary>True when both conditions hold.</summary>
    /// <param name="belowEdgeM">Top of antenna and mast below the roof edge [m]; negative above it; must be a number.</param>
    /// <param name="outM">Farthest point from the wall [m], not negative; outside throws.</param>
    public static bool IsExempt(double belowEdgeM, double outM) =>
        Limit.Within(belowEdgeM, -1000, 1000, "height below the roof edge in m") > BelowEdgeM
            && Limit.AtLeast(outM, 0, "distance from the wall in m") < OutM;
}
