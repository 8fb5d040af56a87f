using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>Power for the mast amplifier over the coax.</summary>
public static class DcFeed
{
    /// <summary>The resistance of the loop.</summary>
    public static readonly Formula LoopFormula = new(
        "dc-loop",
        "Resistance of the feed loop",
        "R = (ri + ro) L / 1000",
        new("R", "ohm", "loop resistance"),
        [new("ri", "ohm/km", "centre conductor"), new("ro", "ohm/km", "shield"), new("L", "m", "length")],
        "project-notes", "two conductors in series", Provenance.Derived)
    {
        Method = v => LoopOhm(v[0], v[1], v[2]),
    };

    /// <summary>The voltage at a load of constant current.</summary>
    public static readonly Formula ConstantCurrentFormula = new(
        "dc-feed",
        "Voltage at the mast amplifier",
        "V = Vs - I R",
        new("V", "V", "voltage at the load"), [new("Vs", "V", "supply"), new("I", "A", "current"), new("R", "ohm", "loop resistance")],
        "project-notes", "Ohm's law", Provenance.Derived)
    {
        Method = v => ConstantCurrentV(v[0], v[1], v[2]),
    };

    /// <summary>The voltage at a load of constant power.</summary>
    public static readonly Formula ConstantPowerFormula = new(
        "dc-feed-power",
        "Voltage at an amplifier with a regulator",
        "V = (Vs + sqrt(Vs^2 - 4 P R)) / 2, no solution when Vs^2 < 4 P R",
        new("V", "V", "voltage at the load"),
            [new("Vs", "V", "supply"), new("P", "W", "power of the load"), new("R", "ohm", "loop resistance")],
        "project-notes", "Ohm's law", Provenance.Derived);

    /// <summary>The resistance of the loop.</summary>
    /// <param name="centreOhmPerKm">Centre conductor [ohm per km], not negative; outside throws.</param>
    /// <param name="shieldOhmPerKm">Shield [ohm per km], not negative; outside throws.</param>
    /// <param name="lengthM">Length [m], not negative; outside throws.</param>
    /// <returns>Resistance there and back [ohm].</returns>
    public static double LoopOhm(double centreOhmPerKm, double shieldOhmPerKm, double lengthM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(centreOhmPerKm);
        ArgumentOutOfRangeException.ThrowIfNegative(shieldOhmPerKm);
        ArgumentOutOfRangeException.ThrowIfNegative(lengthM);
        return (centreOhmPerKm + shieldOhmPerKm) * lengthM / 1000;
    }

    /// <summary>The voltage at a load that draws a constant current.</summary>
    /// <param name="supplyV">Supply [V].</param>
    /// <param name="currentA">Current [A].</param>
    /// <param name="loopOhm">Loop resistance [ohm].</param>
    /// <returns>Voltage at the load [V]; at or below 0 the feed cannot work.</returns>
    public static double ConstantCurrentV(double supplyV, double currentA, double loopOhm) => supplyV - currentA * loopOhm;

    /// <summary>The voltage at a load that draws a constant power.</summary>
    /// <param name="supplyV">Supply [V].</param>
    /// <param name="loadW">Power of the load [W].</param>
    /// <param name="loopOhm">Loop resistance [ohm].</param>
    /// <returns>Voltage at the load [V], or null when the line cannot carry the power.</returns>
    public static double? ConstantPowerV(double supplyV, double loadW, double loopOhm)
    {
        // At the very limit 4 P R equals Vs^2 in the head but not in binary; a hair of slack keeps the limit feasible.
        var rest = supplyV * supplyV - 4 * loadW * loopOhm;
        if (rest < -1e-9 * supplyV * supplyV) return null;
        return (supplyV + Math.Sqrt(Math.Max(0, rest))) / 2;
    }
}
