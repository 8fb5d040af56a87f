using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Guys of a mast, three or four in a set, all at the same angle. Slack and pretension come on top.</summary>
public static class Guys
{
    /// <summary>Least angle between guy and mast [deg]; read in city ordinances.</summary>
    public const double LeastAngleDeg = 30;

    /// <summary>Breaking strength over tension.</summary>
    public const double BreakingFactor = 2;

    // AISC allowable strength of slender columns; recalled.
    private const double ColumnSafety = 1.92;

    /// <summary>The tension in line with a guy.</summary>
    public static readonly Formula TensionFormula = new(
        "guy-tension",
        "Tension of a guy, wind in line with it",
        "T = H / sin(phi)",
        new("T", "N", "tension"), [new("H", "N", "push of the mast at the ring"), new("phi", "deg", "between guy and mast")],
        "project-notes", "balance of forces", Provenance.Derived);

    /// <summary>The tension of two guys.</summary>
    public static readonly Formula MidwayFormula = new(
        "guy-tension-midway",
        "Tension of two guys, wind midway between them",
        "T = H / (2 cos(180 deg / n) sin(phi))",
        new("T", "N", "tension of each"),
            [new("H", "N", "push of the mast at the ring"), new("phi", "deg", "between guy and mast"),
            new("n", "", "guys in the set, 3 or 4")],
        "project-notes", "balance of forces; with three guys the same as in line with one", Provenance.Derived);

    /// <summary>The largest tension.</summary>
    public static readonly Formula WorstTensionFormula = new(
        "guy-tension-worst",
        "Largest tension of a guy",
        "T = H / (sin(360 deg / n) sin(phi))",
        new("T", "N", "tension"),
            [new("H", "N", "push of the mast at the ring"), new("phi", "deg", "between guy and mast"),
            new("n", "", "guys in the set, 3 or 4")],
        "project-notes", "balance of forces; with three guys the wind 30 deg beside a guy pulls it 15 % harder than in line with it",
            Provenance.Derived)
    {
        Method = v => WorstTensionN(v[0], v[1], (int)v[2]),
    };

    /// <summary>The compression of one guy.</summary>
    public static readonly Formula CompressionFormula = new(
        "guy-compression",
        "Push of a guy down the mast",
        "P = T cos(phi)",
        new("P", "N", "compression from one guy"), [new("T", "N", "tension"), new("phi", "deg", "between guy and mast")],
        "project-notes", "balance of forces", Provenance.Derived);

    /// <summary>The largest compression.</summary>
    public static readonly Formula WorstCompressionFormula = new(
        "guy-compression-worst",
        "Largest push of the guys down the mast",
        "P = H / (cos(180 deg / n) tan(phi))",
        new("P", "N", "compression"),
            [new("H", "N", "push of the mast at the ring"), new("phi", "deg", "between guy and mast"),
            new("n", "", "guys in the set, 3 or 4")],
        "project-notes", "two guys pull when the wind stands midway; twice the push of one with three guys", Provenance.Derived)
    {
        Method = v => WorstCompressionN(v[0], v[1], (int)v[2]),
    };

    /// <summary>The Euler load.</summary>
    public static readonly Formula EulerFormula = new(
        "mast-euler",
        "Load at which the mast buckles",
        "Pe = pi^2 E I / (k L)^2",
        new("Pe", "N", "buckling load"),
            [new("E I", "N m2", "stiffness"), new("L", "m", "between the supports"), new("k", "", "1 with both ends held")],
        "project-notes", "buckling after Euler", Provenance.Derived)
    {
        Method = v => Math.PI * Math.PI * v[0] / Math.Pow(v[2] * v[1], 2),
    };

    /// <summary>The allowable compression.</summary>
    public static readonly Formula AllowableCompressionFormula = new(
        "mast-allowable-compression",
        "Compression the mast may bear",
        "Pa = Pe / 1.92",
        new("Pa", "N", "allowable compression"), [new("Pe", "N", "buckling load")],
        "aisc-360", "slender columns, allowable strength", Provenance.Memory)
    {
        Method = v => AllowableCompressionN(v[0]),
    };

    /// <summary>The anchor's distance.</summary>
    public static readonly Formula AnchorRadiusFormula = new(
        "guy-anchor-radius",
        "Distance of the guy's anchor from the mast",
        "r = hr tan(phi)",
        new("r", "m", "distance on level ground"),
            [new("hr", "m", "height of the ring above the anchor"), new("phi", "deg", "between guy and mast")],
        "project-notes", "geometry", Provenance.Derived);

    /// <summary>The breaking strength.</summary>
    public static readonly Formula BreakingFormula = new(
        "guy-breaking-strength",
        "Least breaking strength of a guy",
        "B = 2 T",
        new("B", "N", "breaking strength"), [new("T", "N", "tension")],
        "project-notes", "twice the tension; our choice", Provenance.CommonPractice);

    /// <summary>The tension of a guy when the wind is in line with it.</summary>
    /// <param name="pushN">Push of the mast at the ring [N], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <returns>Tension [N]; the largest with four guys, not with three: see <see cref="WorstTensionN"/>.</returns>
    public static double TensionN(double pushN, double angleDeg) => Push(pushN) / Math.Sin(Radians(angleDeg));

    /// <summary>The tension of each of the two guys that pull when the wind stands midway between them.</summary>
    /// <param name="pushN">Push of the mast at the ring [N], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <param name="guys">Guys in the set, 3 or 4; outside throws.</param>
    /// <returns>Tension [N].</returns>
    public static double MidwayTensionN(double pushN, double angleDeg, int guys) =>
        Push(pushN) / (2 * HalfAngleCos(guys) * Math.Sin(Radians(angleDeg)));

    /// <summary>The largest tension of a guy, whichever way the wind comes; the one to choose wire and anchors by.</summary>
    /// <param name="pushN">Push of the mast at the ring [N], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <param name="guys">Guys in the set, 3 or 4; outside throws.</param>
    /// <returns>Tension [N].</returns>
    public static double WorstTensionN(double pushN, double angleDeg, int guys) =>
        TensionN(pushN, angleDeg) / Math.Sin(2 * Math.PI / Limit.Within(guys, 3, 4, "count of guys"));

    /// <summary>What one guy pushes down the mast.</summary>
    /// <param name="tensionN">Tension [N], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <returns>Compression [N]; weight and pretension come on top.</returns>
    public static double CompressionN(double tensionN, double angleDeg) => Tension(tensionN) * Math.Cos(Radians(angleDeg));

    /// <summary>The most that the guys of a set push down the mast, whichever way the wind comes.</summary>
    /// <param name="pushN">Push of the mast at the ring [N], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <param name="guys">Guys in the set, 3 or 4; outside throws.</param>
    /// <returns>Compression [N]; weight and pretension come on top.</returns>
    public static double WorstCompressionN(double pushN, double angleDeg, int guys) =>
        2 * CompressionN(MidwayTensionN(pushN, angleDeg, guys), angleDeg);

    /// <summary>The load at which the mast buckles between its supports.</summary>
    /// <param name="section">Cross-section.</param>
    /// <param name="modulusPa">Modulus of elasticity [Pa], 1e9 to 1e12; outside throws.</param>
    /// <param name="lengthM">Between the supports [m], above 0 to 100; outside throws.</param>
    /// <param name="endFactor">1 with both ends held, 2 for a free top, 0.5 to 2.5; outside throws.</param>
    /// <returns>Load [N].</returns>
    public static double EulerN(MastSection section, double modulusPa, double lengthM, double endFactor = 1) =>
        Math.PI * Math.PI * MastSway.StiffnessNm2(section, modulusPa)
        / Math.Pow(Limit.Within(endFactor, 0.5, 2.5, "end factor") * Limit.Between(lengthM, 0, 100, "length between the supports in m"), 2);

    /// <summary>The compression the mast may bear as a slender column.</summary>
    /// <param name="eulerN">Buckling load [N], not negative; outside throws.</param>
    /// <returns>Compression [N].</returns>
    public static double AllowableCompressionN(double eulerN) => Limit.AtLeast(eulerN, 0, "buckling load in N") / ColumnSafety;

    /// <summary>The distance of the anchor from the mast on level ground.</summary>
    /// <param name="ringHeightM">Height of the ring above the anchor [m], not negative; outside throws.</param>
    /// <param name="angleDeg">Between guy and mast [deg], 1 to 89; outside throws.</param>
    /// <returns>Distance [m].</returns>
    public static double AnchorRadiusM(double ringHeightM, double angleDeg) =>
        Limit.AtLeast(ringHeightM, 0, "height of the ring in m") * Math.Tan(Radians(angleDeg));

    /// <summary>The least breaking strength of a guy.</summary>
    /// <param name="tensionN">Tension [N], not negative; outside throws.</param>
    /// <returns>Strength [N].</returns>
    public static double BreakingN(double tensionN) => BreakingFactor * Tension(tensionN);

    private static double Push(double pushN) => Limit.AtLeast(pushN, 0, "push at the guy ring in N");

    private static double Tension(double tensionN) => Limit.AtLeast(tensionN, 0, "tension of the guy in N");

    private static double Radians(double angleDeg) =>
        Limit.Within(angleDeg, 1, 89, "angle between guy and mast in degrees") * Math.PI / 180;

    private static double HalfAngleCos(int guys) => Math.Cos(Math.PI / Limit.Within(guys, 3, 4, "count of guys"));
}
