using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>How much the field differs between places near each other, by the planning recommendations.</summary>
public static class LocationVariation
{
    /// <summary>Spread of a digital broadband channel over places somewhere in a neighbourhood [dB], the value of GE06 and
    /// BT.2033.</summary>
    public const double DigitalSigmaDb = 5.5;

    /// <summary>The spread within a small square.</summary>
    public static readonly Formula SmallSquareFormula = new(
        "location-sigma",
        "Spread of the field within a small square",
        "sigma = (0.024 f + 0.52) w^0.28",
        new("sigma", "dB", "standard deviation"), [new("f", "GHz", "frequency"), new("w", "m", "side of the square")],
        "itu-p1546-6", "location variability; only where the prediction is already site specific");

    /// <summary>The correction for a share of places.</summary>
    public static readonly Formula CorrectionFormula = new(
        "location-correction",
        "Correction from half to a share of the places",
        "Cl = mu sigma, mu = normal deviate of the share",
        new("Cl", "dB", "how much more the median must be"),
            [new("p", "", "share of the places"), new("sigma", "dB", "spread between places")],
        "itu-bt2033", "location correction factor");

    /// <summary>The standard deviation within a small square.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 4000; outside throws.</param>
    /// <param name="squareM">Side of the square [m], above 0; outside throws.</param>
    /// <returns>Standard deviation [dB].</returns>
    public static double SmallSquareSigmaDb(double frequencyMHz, double squareM)
    {
        // The path-specific method has the same form for an antenna below the clutter's top.
        Limit.Within(frequencyMHz, 30, 4000, "frequency in MHz");
        return LocationSpread.SigmaDb(frequencyMHz, 0, 0, squareM);
    }

    /// <summary>The correction from half of the places to a share of them.</summary>
    /// <param name="share">Share of places to be served, 1e-6 to 1 - 1e-6; outside throws.</param>
    /// <param name="sigmaDb">Spread between places [dB], not negative; outside throws.</param>
    /// <returns>Correction [dB], negative below one half.</returns>
    public static double CorrectionDb(double share, double sigmaDb) =>
        Probability.Quantile(share) * Limit.AtLeast(sigmaDb, 0, "spread in dB");
}
