using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>What wall brackets, plates and tripods hand to their fixings. Fixings in masonry take their capacity from the anchor's
/// approval.</summary>
public static class MountReactions
{
    private const string Balance = "balance of forces and moments";

    /// <summary>The share of a bolt.</summary>
    public static readonly Formula BoltShareFormula = new(
        "mount-bolt-share",
        "Share of a bolt in the force of a bracket",
        "T = R / n",
        new("T", "N", "pull or shear of a bolt"), [new("R", "N", "force of the bracket"), new("n", "", "bolts")],
        "project-notes", Balance, Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>The couple of the weight.</summary>
    public static readonly Formula StandoffFormula = new(
        "mount-standoff-couple",
        "Pull at the upper bracket from the weight on its standoff",
        "T = V e / b",
        new("T", "N", "pull"), [new("V", "N", "weight"), new("e", "m", "standoff from the wall"), new("b", "m", "between the brackets")],
        "project-notes", Balance, Provenance.Derived)
    {
        Method = v => StandoffPullN(v[0], v[1], v[2]),
    };

    /// <summary>The couple of wind along the wall.</summary>
    public static readonly Formula AlongWallFormula = new(
        "mount-along-wall",
        "Pull of the bolts from wind along the wall",
        "T = R e / g",
        new("T", "N", "pull"),
        [new("R", "N", "force of the bracket"), new("e", "m", "standoff from the wall"),
            new("g", "m", "lever: between the bolts across, or from bolts in one upright line to the plate's edge")],
        "project-notes", Balance, Provenance.Derived)
    {
        Method = v => AlongWallPullN(v[0], v[1], v[2]),
    };

    /// <summary>The moment on a plate.</summary>
    public static readonly Formula PlateFormula = new(
        "mount-plate-bolt",
        "Pull of a bolt from a moment on its plate",
        "Ti = M yi / sum(n y^2)",
        new("Ti", "N", "pull of a bolt"),
            [new("M", "N m", "moment"), new("yi", "m", "its distance from the pressed edge"), new("n", "", "bolts in a row"),
            new("y", "m", "distance of a row")],
        "project-notes", Balance + ", the plate turns about its pressed edge", Provenance.Derived);

    /// <summary>The tripod, one foot upwind.</summary>
    public static readonly Formula TripodOneFormula = new(
        "mount-tripod-one",
        "Pull of a tripod's foot, one foot upwind",
        "T = M / (1.5 r) - W / 3",
        new("T", "N", "pull, negative when it presses"),
            [new("M", "N m", "moment"), new("r", "m", "radius of the feet"), new("W", "N", "weight")],
        "project-notes", Balance, Provenance.Derived)
    {
        Method = v => TripodOnePullN(v[0], v[1], v[2]),
    };

    /// <summary>The tripod, two feet upwind.</summary>
    public static readonly Formula TripodTwoFormula = new(
        "mount-tripod-two",
        "Pull of each of two feet of a tripod upwind",
        "T = M / (3 r) - W / 3",
        new("T", "N", "pull of each, negative when it presses"),
            [new("M", "N m", "moment"), new("r", "m", "radius of the feet"), new("W", "N", "weight")],
        "project-notes", Balance, Provenance.Derived);

    /// <summary>The thrust of a tripod's foot.</summary>
    public static readonly Formula TripodThrustFormula = new(
        "mount-tripod-thrust",
        "Push of a tripod's foot downwind",
        "C = M / (1.5 r) + W / 3",
        new("C", "N", "push on the roof"), [new("M", "N m", "moment"), new("r", "m", "radius of the feet"), new("W", "N", "weight")],
        "project-notes", Balance, Provenance.Derived)
    {
        Method = v => TripodThrustN(v[0], v[1], v[2]),
    };

    /// <summary>The pull or shear of a bolt when all share alike.</summary>
    /// <param name="reactionN">Force of the bracket [N], not negative; outside throws.</param>
    /// <param name="bolts">Bolts, 1 to 100; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double BoltShareN(double reactionN, int bolts) => Reaction(reactionN) / Limit.Within(bolts, 1, 100, "count of bolts");

    /// <summary>The extra pull at the upper bracket from the weight that hangs on the standoff.</summary>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <param name="standoffM">Standoff from the wall [m], 0 to 5; outside throws.</param>
    /// <param name="spacingM">Between the brackets [m], above 0 to 100; outside throws.</param>
    /// <returns>Pull [N].</returns>
    public static double StandoffPullN(double weightN, double standoffM, double spacingM) =>
        Weight(weightN) * Standoff(standoffM) / Limit.Between(spacingM, 0, 100, "bracket spacing in m");

    /// <summary>The pull from wind along the wall.</summary>
    /// <param name="reactionN">Force of the bracket [N], not negative; outside throws.</param>
    /// <param name="standoffM">Standoff from the wall [m], 0 to 5; outside throws.</param>
    /// <param name="leverM">Between the bolts across the wall; with bolts in one upright line only from them to the plate's edge [m],
    /// above 0 to 5; outside throws.</param>
    /// <returns>Pull [N], of the one upwind bolt or of all in the line together.</returns>
    public static double AlongWallPullN(double reactionN, double standoffM, double leverM) =>
        Reaction(reactionN) * Standoff(standoffM) / Limit.Between(leverM, 0, 5, "lever of the bolts in m");

    /// <summary>The pull of a bolt in each row of a plate under a moment.</summary>
    /// <param name="momentNm">Moment [N m], not negative; outside throws.</param>
    /// <param name="rows">Rows of bolts: distance from the pressed edge [m], above 0 to 5, and count, 1 to 100; outside throws.</param>
    /// <returns>Pull of one bolt of each row [N], in the order of the rows.</returns>
    public static IReadOnlyList<double> PlateBoltsN(double momentNm, IReadOnlyList<BoltRow> rows)
    {
        Limit.Within(rows.Count, 1, 100, "count of bolt rows");
        var sum = rows.Sum(r =>
            Limit.Within(r.Bolts, 1, 100, "count of bolts") * Math.Pow(Limit.Between(r.FromEdgeM, 0, 5, "distance from the edge in m"), 2));
        return [.. rows.Select(r => Moment(momentNm) * r.FromEdgeM / sum)];
    }

    /// <summary>The pull of the one foot upwind of a tripod.</summary>
    /// <param name="momentNm">Moment at the feet [N m], not negative; outside throws.</param>
    /// <param name="radiusM">Radius of the feet [m], above 0 to 10; outside throws.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <returns>Pull [N]; negative when the foot still presses.</returns>
    public static double TripodOnePullN(double momentNm, double radiusM, double weightN) =>
        Moment(momentNm) / (1.5 * Radius(radiusM)) - Weight(weightN) / 3;

    /// <summary>The pull of each of the two feet upwind of a tripod.</summary>
    /// <param name="momentNm">Moment at the feet [N m], not negative; outside throws.</param>
    /// <param name="radiusM">Radius of the feet [m], above 0 to 10; outside throws.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <returns>Pull [N]; negative when the feet still press.</returns>
    public static double TripodTwoPullN(double momentNm, double radiusM, double weightN) =>
        Moment(momentNm) / (3 * Radius(radiusM)) - Weight(weightN) / 3;

    /// <summary>The push of the one foot downwind of a tripod.</summary>
    /// <param name="momentNm">Moment at the feet [N m], not negative; outside throws.</param>
    /// <param name="radiusM">Radius of the feet [m], above 0 to 10; outside throws.</param>
    /// <param name="weightN">Weight [N], not negative; outside throws.</param>
    /// <returns>Push on the roof [N].</returns>
    public static double TripodThrustN(double momentNm, double radiusM, double weightN) => Moment(momentNm) / (1.5 * Radius(radiusM))
        + Weight(weightN) / 3;

    private static double Reaction(double reactionN) => Limit.AtLeast(reactionN, 0, "force of the bracket in N");

    private static double Weight(double weightN) => Limit.AtLeast(weightN, 0, "weight in N");

    private static double Moment(double momentNm) => Limit.AtLeast(momentNm, 0, "moment in N m");

    private static double Standoff(double standoffM) => Limit.Within(standoffM, 0, 5, "standoff in m");

    private static double Radius(double radiusM) => Limit.Between(radiusM, 0, 10, "radius of the feet in m");
}

/// <summary>A row of bolts in a plate.</summary>
/// <param name="FromEdgeM">Distance from the pressed edge [m].</param>
/// <param name="Bolts">How many.</param>
public readonly record struct BoltRow(double FromEdgeM, int Bolts);
