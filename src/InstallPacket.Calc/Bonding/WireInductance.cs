using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>Inductance of a bonding conductor: why it is short, straight and never coiled.</summary>
public static class WireInductance
{
    /// <summary>A straight wire in a surge.</summary>
    public static readonly Formula StraightFormula = new(
        "wire-inductance-surge",
        "Inductance of a straight round wire in a surge",
        "L = 0.2 l (ln(4 l / d) - 1)",
        new("L", "uH", "inductance"), [new("l", "m", "length"), new("d", "m", "diameter")],
        "wire-inductance", "high frequency: the current runs in the skin")
    {
        Method = v => StraightH(v[0], v[1]) * 1e6,
    };

    /// <summary>A straight wire with direct current.</summary>
    public static readonly Formula SlowFormula = new(
        "wire-inductance-slow",
        "Inductance of a straight round wire at low frequency",
        "L = 0.2 l (ln(4 l / d) - 0.75)",
        new("L", "uH", "inductance"), [new("l", "m", "length"), new("d", "m", "diameter")],
        "wire-inductance", "low frequency: the current fills the wire");

    /// <summary>One loop.</summary>
    public static readonly Formula LoopFormula = new(
        "wire-inductance-loop",
        "Inductance of one round loop of wire",
        "L = mu0 R (ln(8 R / a) - 2)",
        new("L", "uH", "inductance"), [new("R", "m", "radius of the loop"), new("a", "m", "radius of the wire")],
        "wire-inductance", "high frequency; recalled", Provenance.Memory)
    {
        Method = v => LoopH(v[0], v[1]) * 1e6,
    };

    /// <summary>A coil.</summary>
    public static readonly Formula CoilFormula = new(
        "wire-inductance-coil",
        "Inductance of coiled slack, upper estimate",
        "L = n^2 L1",
        new("L", "uH", "inductance"), [new("n", "", "turns that lie together"), new("L1", "uH", "inductance of one loop")],
        "project-notes", "all turns share one field: an upper estimate", Provenance.Derived)
    {
        Method = v => CoilH(v[0], v[1] * 1e-6) * 1e6,
    };

    /// <summary>The inductance of a straight wire in a surge.</summary>
    /// <param name="lengthM">Length [m], above the diameter to 1000; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 0.1; outside throws.</param>
    /// <returns>Inductance [H].</returns>
    public static double StraightH(double lengthM, double diameterM) => Straight(lengthM, diameterM, 1);

    /// <summary>The inductance of a straight wire at low frequency.</summary>
    /// <param name="lengthM">Length [m], above the diameter to 1000; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0 to 0.1; outside throws.</param>
    /// <returns>Inductance [H].</returns>
    public static double SlowH(double lengthM, double diameterM) => Straight(lengthM, diameterM, 0.75);

    /// <summary>The inductance of one loop.</summary>
    /// <param name="loopRadiusM">Radius of the loop [m], at least five radii of the wire, to 100; outside throws.</param>
    /// <param name="wireRadiusM">Radius of the wire [m], above 0 to 0.05; outside throws.</param>
    /// <returns>Inductance [H].</returns>
    public static double LoopH(double loopRadiusM, double wireRadiusM)
    {
        Limit.Between(wireRadiusM, 0, 0.05, "radius of the wire in m");
        Limit.Within(loopRadiusM, 5 * wireRadiusM, 100, "radius of the loop in m");
        return 4e-7 * Math.PI * loopRadiusM * (Math.Log(8 * loopRadiusM / wireRadiusM) - 2);
    }

    /// <summary>The inductance of turns that lie together.</summary>
    /// <param name="turns">Turns, not negative; outside throws.</param>
    /// <param name="loopH">Inductance of one loop [H], not negative; outside throws.</param>
    /// <returns>Inductance [H], an upper estimate.</returns>
    public static double CoilH(double turns, double loopH) =>
        Limit.AtLeast(turns, 0, "number of turns") * turns * Limit.AtLeast(loopH, 0, "inductance of a loop in H");

    private static double Straight(double lengthM, double diameterM, double end)
    {
        Limit.Between(diameterM, 0, 0.1, "diameter in m");
        Limit.Within(lengthM, diameterM, 1000, "length in m");
        return 0.2e-6 * lengthM * (Math.Log(4 * lengthM / diameterM) - end);
    }
}
