using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>A screw that is pulled and sheared at once.</summary>
public static class CombinedFixing
{
    /// <summary>The value for both.</summary>
    public static readonly Formula AllowableFormula = new(
        "fixing-combined",
        "Design value of a screw that is pulled and sheared",
        "Za = W' Z' / (W' cos^2 a + Z' sin^2 a), a = atan(N / V)",
        new("Za", "N", "against the resultant"),
            [new("W'", "N", "withdrawal"), new("Z'", "N", "lateral"), new("a", "deg", "between resultant and face of the timber")],
        "nds-chapter-12", "combined lateral and withdrawal loads")
    {
        Method = v => AllowableN(v[0], v[1], v[2]),
    };

    /// <summary>How much of the value is used.</summary>
    public static readonly Formula UseFormula = new(
        "fixing-use",
        "Use of a screw",
        "u = sqrt(N^2 + V^2) / Za",
        new("u", "", "demand over capacity"), [new("N", "N", "pull"), new("V", "N", "shear"), new("Za", "N", "design value")],
        "nds-chapter-12", "the resultant is compared, not the shear alone")
    {
        Method = v => Use(v[0], v[1], v[2]),
    };

    /// <summary>The design value against the resultant [N].</summary>
    /// <param name="withdrawalN">Withdrawal value [N], above 0; outside throws.</param>
    /// <param name="lateralN">Lateral value [N], above 0; outside throws.</param>
    /// <param name="angleDeg">Angle between resultant and face [deg], 0 for pure shear, 90 for pure pull.</param>
    public static double AllowableN(double withdrawalN, double lateralN, double angleDeg)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(withdrawalN);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lateralN);
        var (sin, cos) = Math.SinCos(angleDeg * Math.PI / 180);
        return withdrawalN * lateralN / (withdrawalN * cos * cos + lateralN * sin * sin);
    }

    /// <summary>Angle of the resultant to the face [deg].</summary>
    /// <param name="pullN">Pull [N].</param>
    /// <param name="shearN">Shear [N].</param>
    public static double AngleDeg(double pullN, double shearN) => Math.Atan2(pullN, shearN) * 180 / Math.PI;

    /// <summary>Demand over capacity.</summary>
    /// <param name="pullN">Pull [N].</param>
    /// <param name="shearN">Shear [N].</param>
    /// <param name="allowableN">Design value [N].</param>
    public static double Use(double pullN, double shearN, double allowableN) => Math.Sqrt(pullN * pullN + shearN * shearN) / allowableN;
}
