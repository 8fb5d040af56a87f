using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>How much man-made noise surrounds a place.</summary>
public enum NoiseEnvironment
{
    /// <summary>City, business district.</summary>
    City,

    /// <summary>Residential.</summary>
    Residential,

    /// <summary>Rural.</summary>
    Rural,

    /// <summary>Quiet rural.</summary>
    QuietRural,
}

/// <summary>The noise the antenna brings in from outside.</summary>
/// <remarks>
/// The man-made lines were measured with short vertical antennas near the ground and hold to 250 MHz; for a horizontal antenna on a roof
/// they are on the safe side.
/// </remarks>
public static class ExternalNoise
{
    /// <summary>Highest frequency of the man-made lines [MHz].</summary>
    public const double ManMadeLimitMHz = 250;

    private static readonly Lazy<IReadOnlyDictionary<string, (double C, double D)>> Lines = new(() =>
        EmbeddedTable.Rows("Reception/external-noise.csv").ToDictionary(r => r["environment"], r =>
            (CsvNumber.Of(r["c"]), CsvNumber.Of(r["d"]))));

    /// <summary>One line of the noise chart.</summary>
    public static readonly Formula LineFormula = new(
        "external-noise-line",
        "Median external noise figure",
        "Fa = c - d log10(f); c, d: city 76.8, 27.7; residential 72.5, 27.7; rural 67.2, 27.7; quiet rural 53.6, 28.6; galactic 52, 23",
        new("Fa", "dB", "external noise over k T0 B"), [new("f", "MHz", "frequency")],
        "itu-p372", "man-made and galactic lines, constants as implemented in public programs");

    /// <summary>Man-made and galactic noise together.</summary>
    public static readonly Formula TotalFormula = new(
        "external-noise",
        "External noise figure, man-made and galactic together",
        "Fa = 10 log10(10^(Fm/10) + 10^(Fg/10)) up to 250 MHz; 0 dB above",
        new("Fa", "dB", "external noise over k T0 B"), [new("Fm", "dB", "man-made"), new("Fg", "dB", "galactic")],
        "project-notes", "power sum of independent sources; 0 dB at UHF, where a cold sky is not credible on a terrestrial path",
            Provenance.Derived);

    /// <summary>Man-made noise.</summary>
    /// <param name="environment">Surroundings.</param>
    /// <param name="frequencyMHz">Frequency [MHz], 0.3 to <see cref="ManMadeLimitMHz"/>; outside throws: the line is not
    /// extrapolated.</param>
    /// <returns>Noise figure [dB].</returns>
    public static double ManMadeDb(NoiseEnvironment environment, double frequencyMHz)
    {
        if (!(frequencyMHz is >= 0.3 and <= ManMadeLimitMHz))
            throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz, "The man-made lines hold from 0.3 to 250 MHz.");
        return Line(environment switch
        {
            NoiseEnvironment.City => "city (business)",
            NoiseEnvironment.Residential => "residential",
            NoiseEnvironment.Rural => "rural",
            _ => "quiet rural",
        }, frequencyMHz);
    }

    /// <summary>Galactic noise.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], at least 10; below throws.</param>
    /// <returns>Noise figure [dB].</returns>
    public static double GalacticDb(double frequencyMHz)
    {
        if (!(frequencyMHz >= 10)) throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz,
            "The galactic line holds above 10 MHz.");
        return Line("galactic", frequencyMHz);
    }

    /// <summary>Man-made and galactic noise together; 0 dB above 250 MHz.</summary>
    /// <param name="environment">Surroundings.</param>
    /// <param name="frequencyMHz">Frequency [MHz], at least 10; below throws.</param>
    /// <returns>Noise figure [dB].</returns>
    public static double FigureDb(NoiseEnvironment environment, double frequencyMHz)
    {
        var galactic = GalacticDb(frequencyMHz);
        return frequencyMHz > ManMadeLimitMHz ? 0 : DecibelSum.TotalDbm([ManMadeDb(environment, frequencyMHz), galactic]);
    }

    private static double Line(string name, double frequencyMHz)
    {
        var (c, d) = Lines.Value[name];
        return c - d * Math.Log10(frequencyMHz);
    }
}
