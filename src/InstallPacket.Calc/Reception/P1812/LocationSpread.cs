using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>How much the field differs from place to place.</summary>
public static class LocationSpread
{
    /// <summary>The spread between places.</summary>
    public static readonly Formula SigmaFormula = new(
        "p1812-location-spread",
        "Spread of the field between places",
        "sigma = (0.52 + 0.024 f) wa^0.28 u; u = 1 below the clutter's top, falling to 0 at 10 m above it",
        new("sigma", "dB", "standard deviation"),
        [new("f", "GHz", "frequency"), new("h", "m", "antenna above ground"), new("R", "m", "clutter above ground"),
            new("wa", "m", "side of the square")],
        "itu-p1812", "location variability (P.1812-5 misprints the factor as 0.0024)");

    /// <summary>The standard deviation between places of a square.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 6000; outside throws.</param>
    /// <param name="antennaM">Antenna above ground [m], not negative; outside throws.</param>
    /// <param name="clutterM">Clutter above ground at the receiver [m], not negative; outside throws.</param>
    /// <param name="squareM">Side of the square over which the field is predicted [m], above 0; outside throws.</param>
    /// <returns>Standard deviation [dB].</returns>
    public static double SigmaDb(double frequencyMHz, double antennaM, double clutterM, double squareM)
    {
        Limit.Within(frequencyMHz, PredictionCase.LowestMHz, PredictionCase.HighestMHz, "frequency in MHz");
        Limit.Within(antennaM, 0, 3000, "antenna height in m");
        Limit.Within(clutterM, 0, 1000, "clutter height in m");
        Limit.Between(squareM, 0, double.PositiveInfinity, "side of the square in m");
        var above = Math.Clamp(1 - (antennaM - clutterM) / 10, 0, 1);
        return (0.52 + 0.024 * frequencyMHz / 1000) * Math.Pow(squareM, 0.28) * above;
    }
}
