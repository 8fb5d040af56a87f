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

    /// <summary>The current on cable that several loads share.</summary>
    public static readonly Formula CurrentSumFormula = new(
        "dc-current-sum",
        "Current of several amplifiers on one cable, one after the other",
        "I = I0 + Ii",
        new("I", "A", "current so far"), [new("I0", "A", "current of those before"), new("Ii", "A", "current of this amplifier")],
        "project-notes", "currents add where cables join", Provenance.Derived)
    {
        Method = v => CurrentA([v[0], v[1]]),
    };

    /// <summary>The voltage behind a steered port.</summary>
    public static readonly Formula SteeredPortFormula = new(
        "dc-steered-port",
        "Voltage behind a steered port",
        "V = V0 - Vd",
        new("V", "V", "voltage behind the diode"), [new("V0", "V", "voltage before it"), new("Vd", "V", "drop of the diode")],
        "project-notes", "one silicon diode", Provenance.Derived)
    {
        Method = v => SteeredV(v[0], 1, v[1]),
    };

    /// <summary>Drop of the diode of a steered port [V]: recalled, the bad end of 0.6 to 0.7 V of a silicon diode.</summary>
    public const double DiodeV = 0.7;

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

    /// <summary>The current on a cable that feeds several loads.</summary>
    /// <param name="loadsA">Current of each load [A].</param>
    /// <returns>Their sum [A].</returns>
    public static double CurrentA(IReadOnlyList<double> loadsA)
    {
        ArgumentNullException.ThrowIfNull(loadsA);
        var sum = 0.0;
        foreach (var load in loadsA) sum += load;
        return sum;
    }

    /// <summary>The voltage behind steered ports in a row.</summary>
    /// <param name="beforeV">Voltage before them [V].</param>
    /// <param name="ports">How many, not negative; outside throws.</param>
    /// <param name="diodeV">Drop of one diode [V].</param>
    /// <returns>Voltage behind them [V].</returns>
    public static double SteeredV(double beforeV, int ports, double diodeV = DiodeV)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(ports);
        return beforeV - ports * diodeV;
    }

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
