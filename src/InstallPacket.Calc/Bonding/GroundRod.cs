using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>Resistance of driven rods in uniform soil.</summary>
public static class GroundRod
{
    /// <summary>One rod.</summary>
    public static readonly Formula OneFormula = new(
        "rod-resistance",
        "Resistance of one driven rod",
        "R = rho / (2 pi L) (ln(4 L / a) - 1)",
        new("R", "ohm", "resistance"),
            [new("rho", "ohm m", "resistivity of the soil, the same all round"), new("L", "m", "length in the soil"),
            new("a", "m", "radius, not diameter")],
        "dwight-rod", "rod formula after Dwight")
    {
        Method = v => OneOhm(v[0], v[1], v[2]),
    };

    /// <summary>Two rods.</summary>
    public static readonly Formula TwoFormula = new(
        "rod-resistance-two",
        "Resistance of two driven rods farther apart than they are long",
        "R = rho / (4 pi L) (ln(4 L / a) - 1) + rho / (4 pi s) (1 - L^2 / (3 s^2) + 2 L^4 / (5 s^4))",
        new("R", "ohm", "resistance"),
        [new("rho", "ohm m", "resistivity of the soil"), new("L", "m", "length in the soil"), new("a", "m", "radius"),
            new("s", "m", "spacing, above L")],
        "dwight-rod", "recalled: the page read prints it garbled", Provenance.Memory)
    {
        Method = v => TwoOhm(v[0], v[1], v[2], v[3]),
    };

    /// <summary>The potential.</summary>
    public static readonly Formula PotentialFormula = new(
        "rod-potential",
        "Potential of a rod in a surge, before the soil breaks down",
        "U = I R",
        new("U", "kV", "against far ground"), [new("I", "kA", "peak"), new("R", "ohm", "resistance of the rod")],
        "project-notes", "law of resistance", Provenance.Derived)
    {
        Method = v => PotentialV(v[0] * 1000, v[1]) / 1000,
    };

    /// <summary>The resistance of one rod.</summary>
    /// <param name="resistivityOhmM">Resistivity of the soil [ohm m], above 0 to 1e6; outside throws.</param>
    /// <param name="lengthM">Length in the soil [m], above 0 to 100; outside throws.</param>
    /// <param name="radiusM">Radius [m], above 0, below a twentieth of the length; outside throws.</param>
    /// <returns>Resistance [ohm].</returns>
    public static double OneOhm(double resistivityOhmM, double lengthM, double radiusM)
    {
        Check(resistivityOhmM, lengthM, radiusM);
        return resistivityOhmM / (2 * Math.PI * lengthM) * (Math.Log(4 * lengthM / radiusM) - 1);
    }

    /// <summary>The resistance of two equal rods.</summary>
    /// <param name="resistivityOhmM">Resistivity of the soil [ohm m], above 0 to 1e6; outside throws.</param>
    /// <param name="lengthM">Length in the soil [m], above 0 to 100; outside throws.</param>
    /// <param name="radiusM">Radius [m], above 0, below a twentieth of the length; outside throws.</param>
    /// <param name="spacingM">Spacing [m], above the length, to 1000; outside throws.</param>
    /// <returns>Resistance [ohm].</returns>
    public static double TwoOhm(double resistivityOhmM, double lengthM, double radiusM, double spacingM)
    {
        Check(resistivityOhmM, lengthM, radiusM);
        var share = Math.Pow(lengthM / Limit.Between(spacingM, lengthM, 1000, "spacing of the rods in m"), 2);
        return resistivityOhmM / (4 * Math.PI * lengthM) * (Math.Log(4 * lengthM / radiusM) - 1)
            + resistivityOhmM / (4 * Math.PI * spacingM) * (1 - share / 3 + 2 * share * share / 5);
    }

    /// <summary>The potential of a rod.</summary>
    /// <param name="peakA">Peak [A], not negative; outside throws.</param>
    /// <param name="rodOhm">Resistance of the rod [ohm], not negative; outside throws.</param>
    /// <returns>Voltage against far ground [V].</returns>
    public static double PotentialV(double peakA, double rodOhm) =>
        Limit.AtLeast(peakA, 0, "peak in A") * Limit.AtLeast(rodOhm, 0, "resistance in ohm");

    private static void Check(double resistivityOhmM, double lengthM, double radiusM)
    {
        Limit.Between(resistivityOhmM, 0, 1e6, "resistivity of the soil in ohm m");
        Limit.Between(lengthM, 0, 100, "length in the soil in m");
        Limit.Between(radiusM, 0, lengthM / 20, "radius of the rod in m");
    }
}
