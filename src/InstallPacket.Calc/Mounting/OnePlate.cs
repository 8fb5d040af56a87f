using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>
/// A mount of one plate with an arm: the rows of its own holes carry the couple of the mast. The plate is taken to turn about its
/// lower row, which lies nearer than its pressed edge: the pull is then larger than it is. Rows between the outer ones are not counted.
/// </summary>
public static class OnePlate
{
    private const string Own = "project-notes";
    private const string Balance = "balance of forces and moments";

    /// <summary>How far the arm holds the mast from the wall.</summary>
    public static readonly Formula ReachFormula = new(
        "plate-reach", "Level distance from the plate to the mast", "e = L cos(tilt)", new("e", "m", "reach"),
        [new("L", "m", "arm"), new("tilt", "deg", "arm above the level")], Own, "right triangle", Provenance.Derived)
    {
        Method = v => ReachM(v[0], v[1]),
    };

    /// <summary>How far the arm lifts the mast above the plate.</summary>
    public static readonly Formula RiseFormula = new(
        "plate-rise", "Height of the mast's clamp above the middle of the plate", "z = L sin(tilt)", new("z", "m", "rise"),
        [new("L", "m", "arm"), new("tilt", "deg", "arm above the level")], Own, "right triangle", Provenance.Derived)
    {
        Method = v => RiseM(v[0], v[1]),
    };

    /// <summary>All wind that the plate takes.</summary>
    public static readonly Formula ForceFormula = new(
        "plate-force", "Wind force on the plate", "H = F + w a", new("H", "N", "force"),
        [new("F", "N", "force on the antennas"), new("w", "N/m", "line load of the mast"), new("a", "m", "free length")],
        Own, "sum of forces", Provenance.Derived)
    {
        Method = v => v[0] + v[1] * v[2],
    };

    /// <summary>The moment on the plate.</summary>
    public static readonly Formula MomentFormula = new(
        "plate-moment", "Moment that turns the plate", "Mp = M + H z + V e", new("Mp", "N m", "moment"),
        [new("M", "N m", "moment of the mast at its clamp"), new("H", "N", "wind force"), new("z", "m", "rise of the arm"),
            new("V", "N", "weight"), new("e", "m", "reach of the arm")],
        Own, Balance + "; in wind along the wall the weight does not turn the plate in its own plane", Provenance.Derived)
    {
        Method = v => MomentNm(v[0], v[1], v[2], v[3], v[4]),
    };

    /// <summary>Pull of a fixing in the upper row, wind away from the wall.</summary>
    public static readonly Formula RowPullFormula = new(
        "plate-row-pull", "Pull of a fixing in the upper row, wind away from the wall", "N = Mp / (m b) + H / n",
        new("N", "N", "pull"),
        [new("Mp", "N m", "moment on the plate"), new("m", "", "fixings of the upper row"), new("b", "m", "between the outer rows"),
            new("H", "N", "wind force"), new("n", "", "fixings of the plate")],
        Own, Balance + ", the upper row pulls alone", Provenance.Derived)
    {
        Method = v => RowPullN(v[0], (int)v[1], v[2], v[3], (int)v[4]),
    };

    /// <summary>Pull of the corner fixing, wind along the wall.</summary>
    public static readonly Formula SidePullFormula = new(
        "plate-side-pull", "Pull of a fixing, wind along the wall", "N = H e / (k g) + V e / (m b)", new("N", "N", "pull"),
        [new("H", "N", "wind force"), new("e", "m", "reach of the arm"), new("k", "", "fixings that share the couple of the wind"),
            new("g", "m", "lever: between the outer holes across, or from holes in one upright line to the plate's edge"),
            new("V", "N", "weight"), new("m", "", "fixings of the upper row"), new("b", "m", "between the outer rows")],
        Own, Balance + "; the upper fixing upwind takes both", Provenance.Derived)
    {
        Method = v => SidePullN(v[0], v[1], (int)v[2], v[3], v[4], (int)v[5], v[6]),
    };

    /// <summary>Shear of the corner fixing, wind along the wall.</summary>
    public static readonly Formula TurnShearFormula = new(
        "plate-turn-shear", "Shear of a corner fixing, wind along the wall",
        "S = sqrt((H / n + 2 T b / (c (g^2 + b^2)))^2 + (V / n + 2 T g / (c (g^2 + b^2)))^2)", new("S", "N", "shear"),
        [new("H", "N", "wind force"), new("V", "N", "weight"), new("n", "", "fixings of the plate"),
            new("T", "N m", "moment that turns the plate in its plane"), new("c", "", "outer fixings: 4 corners, or 2 of one upright line"),
            new("g", "m", "between the outer holes across; 0 for one upright line"), new("b", "m", "between the outer rows")],
        Own, Balance + "; the plate turns about its middle, the corner where all add counts", Provenance.Derived)
    {
        Method = v => TurnShearN(v[0], v[1], (int)v[2], v[3], (int)v[4], v[5], v[6]),
    };

    /// <summary>Level distance from plate to mast.</summary>
    /// <param name="armM">Arm [m], 0 to 5; outside throws.</param>
    /// <param name="tiltDeg">Arm above the level [deg], -89 to 89; outside throws.</param>
    /// <returns>Reach [m].</returns>
    public static double ReachM(double armM, double tiltDeg) => Arm(armM) * Math.Cos(Tilt(tiltDeg));

    /// <summary>Height of the clamp above the middle of the plate.</summary>
    /// <param name="armM">Arm [m], 0 to 5; outside throws.</param>
    /// <param name="tiltDeg">Arm above the level [deg], -89 to 89; outside throws.</param>
    /// <returns>Rise [m]; below 0 for an arm that hangs.</returns>
    public static double RiseM(double armM, double tiltDeg) => Arm(armM) * Math.Sin(Tilt(tiltDeg));

    /// <summary>The moment on the plate.</summary>
    /// <param name="momentNm">Moment of the mast at its clamp [N m], not negative; outside throws.</param>
    /// <param name="forceN">Wind force [N], not negative; outside throws.</param>
    /// <param name="riseM">Rise of the arm [m]; one that hangs counts as level, on the safe side.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <param name="reachM">Reach of the arm [m], 0 to 5; outside throws.</param>
    /// <returns>Moment [N m].</returns>
    public static double MomentNm(double momentNm, double forceN, double riseM, double weightN, double reachM) =>
        Limit.AtLeast(momentNm, 0, "moment in N m") + Force(forceN) * Math.Max(0, riseM) + Weight(weightN) * Arm(reachM);

    /// <summary>Pull of a fixing in the upper row.</summary>
    /// <param name="momentNm">Moment on the plate [N m], not negative; outside throws.</param>
    /// <param name="inRow">Fixings of the upper row, 1 to 10000; outside throws.</param>
    /// <param name="rowsM">Between the outer rows [m], above 0 to 5; outside throws.</param>
    /// <param name="forceN">Direct pull [N], not negative; outside throws.</param>
    /// <param name="fixings">Fixings of the plate, 1 to 10000; outside throws.</param>
    /// <returns>Pull [N].</returns>
    public static double RowPullN(double momentNm, int inRow, double rowsM, double forceN, int fixings) =>
        Limit.AtLeast(momentNm, 0, "moment in N m") / (Count(inRow) * Rows(rowsM)) + Force(forceN) / Count(fixings);

    /// <summary>Pull of the upper fixing upwind.</summary>
    /// <param name="forceN">Wind force [N], not negative; outside throws.</param>
    /// <param name="reachM">Reach of the arm [m], 0 to 5; outside throws.</param>
    /// <param name="sharing">Fixings that share the couple of the wind, 1 to 10000; outside throws.</param>
    /// <param name="leverM">Lever across [m], above 0 to 5; outside throws.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <param name="inRow">Fixings of the upper row, 1 to 10000; outside throws.</param>
    /// <param name="rowsM">Between the outer rows [m], above 0 to 5; outside throws.</param>
    /// <returns>Pull [N].</returns>
    public static double SidePullN(double forceN, double reachM, int sharing, double leverM, double weightN, int inRow, double rowsM) =>
        Force(forceN) * Arm(reachM) / (Count(sharing) * Limit.Between(leverM, 0, 5, "lever across in m"))
        + Weight(weightN) * Arm(reachM) / (Count(inRow) * Rows(rowsM));

    /// <summary>Shear of the corner fixing.</summary>
    /// <param name="forceN">Wind force [N], not negative; outside throws.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <param name="fixings">Fixings of the plate, 1 to 10000; outside throws.</param>
    /// <param name="turnNm">Moment in the plane of the plate [N m], not negative; outside throws.</param>
    /// <param name="outer">Outer fixings, 1 to 10000; outside throws.</param>
    /// <param name="acrossM">Between the outer holes across [m], 0 to 5; outside throws.</param>
    /// <param name="rowsM">Between the outer rows [m], above 0 to 5; outside throws.</param>
    /// <returns>Shear [N].</returns>
    public static double TurnShearN(double forceN, double weightN, int fixings, double turnNm, int outer, double acrossM, double rowsM)
    {
        var diagonal = Math.Pow(Limit.Within(acrossM, 0, 5, "width of the pattern in m"), 2) + Math.Pow(Rows(rowsM), 2);
        var turn = 2 * Limit.AtLeast(turnNm, 0, "moment in N m") / (Count(outer) * diagonal);
        return Math.Sqrt(Math.Pow(Force(forceN) / Count(fixings) + turn * rowsM, 2)
            + Math.Pow(Weight(weightN) / Count(fixings) + turn * acrossM, 2));
    }

    private static double Arm(double armM) => Limit.Within(armM, 0, 5, "arm in m");

    private static double Tilt(double tiltDeg) => Limit.Within(tiltDeg, -89, 89, "tilt of the arm in deg") * Math.PI / 180;

    private static double Rows(double rowsM) => Limit.Between(rowsM, 0, 5, "height of the pattern in m");

    private static double Force(double forceN) => Limit.AtLeast(forceN, 0, "wind force in N");

    private static double Weight(double weightN) => Limit.AtLeast(weightN, 0, "weight in N");

    private static int Count(int count) => (int)Limit.Within(count, 1, 10000, "count of fixings");
}
