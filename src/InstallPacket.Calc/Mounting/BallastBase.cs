using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>
/// A frame held down by blocks on a flat roof. The force is that of the ultimate wind and the weight is unfactored: the 0.6 of allowable
/// stress
/// stands on both sides. Not for sloped roofs nor for regions of hurricanes.
/// </summary>
public static class BallastBase
{
    /// <summary>Friction between frame and roof, unless measured; the low end of what was read.</summary>
    public const double Friction = 0.4;

    /// <summary>Above this pressure the owner's figures for the roof are needed [Pa]; our choice.</summary>
    public const double RoofPressureLimitPa = 1000;

    /// <summary>Weight against overturning.</summary>
    public static readonly Formula OverturningFormula = new(
        "ballast-overturning",
        "Weight against overturning",
        "D = 2 F h / B",
        new("D", "N", "total weight"),
            [new("F", "N", "ultimate wind force"), new("h", "m", "its height above the roof"), new("B", "m", "side of the square base")],
        "project-notes", "balance of moments, D B / 2 >= F h", Provenance.Derived)
    {
        Method = v => OverturningN(v[0], v[1], v[2]),
    };

    /// <summary>Weight against sliding.</summary>
    public static readonly Formula SlidingFormula = new(
        "ballast-sliding",
        "Weight against sliding",
        "D = F / mu",
        new("D", "N", "total weight"), [new("F", "N", "ultimate wind force"), new("mu", "", "friction, 0.4 unless measured")],
        "roof-ballast", "friction 0.4 to 0.7; the least is taken")
    {
        Method = v => SlidingN(v[0], v[1]),
    };

    /// <summary>The blocks.</summary>
    public static readonly Formula BlocksFormula = new(
        "ballast-blocks",
        "Number of ballast blocks",
        "n = ceil((D - W) / (m g)), D the larger of the two weights",
        new("n", "", "blocks"),
            [new("D", "N", "weight needed"), new("W", "N", "weight of frame and antenna"), new("m", "kg", "mass of a block")],
        "project-notes", "balance of weights", Provenance.Derived)
    {
        Method = v => Blocks(v[0], v[1], v[2]),
    };

    /// <summary>The pressure on the roof.</summary>
    public static readonly Formula RoofPressureFormula = new(
        "ballast-roof-pressure",
        "Pressure of the ballasted frame on the roof",
        "p = (W + n m g) / B^2",
        new("p", "Pa", "mean pressure under the frame"),
            [new("W", "N", "weight of frame and antenna"), new("n", "", "blocks"), new("m", "kg", "mass of a block"),
            new("B", "m", "side of the square base")],
        "project-notes", "weight over area", Provenance.Derived)
    {
        Method = v => RoofPressurePa(v[0], (int)v[1], v[2], v[3]),
    };

    /// <summary>Weight against overturning by service loads.</summary>
    public static readonly Formula ServiceFormula = new(
        "ballast-service",
        "Weight against overturning from service loads",
        "D = 2 SF Fa h / B",
        new("D", "N", "total weight"),
            [new("SF", "", "safety factor, 1.5"), new("Fa", "N", "wind force by allowable stress"),
            new("h", "m", "its height above the roof"), new("B", "m", "side of the square base")],
        "roof-ballast", "safety factor 1.5; for comparison, the larger weight governs");

    /// <summary>The total weight that keeps the frame from turning over.</summary>
    /// <param name="ultimateN">Ultimate wind force [N], not negative; outside throws.</param>
    /// <param name="heightM">Its height above the roof [m], not negative; outside throws.</param>
    /// <param name="baseM">Side of the square base [m], above 0 to 20; outside throws.</param>
    /// <returns>Weight [N].</returns>
    public static double OverturningN(double ultimateN, double heightM, double baseM) =>
        2 * Force(ultimateN) * Limit.AtLeast(heightM, 0, "height of the force in m") / Base(baseM);

    /// <summary>The total weight that keeps the frame from sliding.</summary>
    /// <param name="ultimateN">Ultimate wind force [N], not negative; outside throws.</param>
    /// <param name="friction">Friction, 0.05 to 1; outside throws.</param>
    /// <returns>Weight [N].</returns>
    public static double SlidingN(double ultimateN, double friction = Friction) =>
        Force(ultimateN) / Limit.Within(friction, 0.05, 1, "friction");

    /// <summary>The blocks that make up a weight.</summary>
    /// <param name="neededN">The larger of the two weights, with uplift of sails added [N], not negative; outside throws.</param>
    /// <param name="ownN">Weight of frame and antenna [N], not negative; outside throws.</param>
    /// <param name="blockKg">Mass of a block [kg], 0.1 to 1000; outside throws.</param>
    /// <returns>Whole blocks.</returns>
    public static int Blocks(double neededN, double ownN, double blockKg) =>
        // A hair of slack, so that a weight met exactly does not ask for one more block.
        (int)Math.Ceiling(Math.Max(0, Limit.Within(neededN, 0, 1e6, "weight needed in N") - Own(ownN)) / BlockN(blockKg) - 1e-9);

    /// <summary>The mean pressure under the frame.</summary>
    /// <param name="ownN">Weight of frame and antenna [N], not negative; outside throws.</param>
    /// <param name="blocks">Blocks, 0 to 10 000; outside throws.</param>
    /// <param name="blockKg">Mass of a block [kg], 0.1 to 1000; outside throws.</param>
    /// <param name="baseM">Side of the square base [m], above 0 to 20; outside throws.</param>
    /// <returns>Pressure [Pa].</returns>
    public static double RoofPressurePa(double ownN, int blocks, double blockKg, double baseM) =>
        (Own(ownN) + Limit.Within(blocks, 0, 10_000, "count of blocks") * BlockN(blockKg)) / (Base(baseM) * baseM);

    /// <summary>The weight against overturning from service loads with a stated safety factor.</summary>
    /// <param name="allowableStressN">Wind force by allowable stress [N], not negative; outside throws.</param>
    /// <param name="heightM">Its height above the roof [m], not negative; outside throws.</param>
    /// <param name="baseM">Side of the square base [m], above 0 to 20; outside throws.</param>
    /// <param name="safety">Safety factor, 1 to 5; outside throws.</param>
    /// <returns>Weight [N].</returns>
    public static double ServiceN(double allowableStressN, double heightM, double baseM, double safety = 1.5) =>
        Limit.Within(safety, 1, 5, "safety factor") * OverturningN(allowableStressN, heightM, baseM);

    private static double Force(double ultimateN) => Limit.AtLeast(ultimateN, 0, "wind force in N");

    private static double Own(double ownN) => Limit.AtLeast(ownN, 0, "weight of the frame in N");

    private static double Base(double baseM) => Limit.Between(baseM, 0, 20, "side of the base in m");

    private static double BlockN(double blockKg) => Limit.Within(blockKg, 0.1, 1000, "mass of a block in kg") * StandardGravity.MS2;
}
