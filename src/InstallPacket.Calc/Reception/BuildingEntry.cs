using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>How a building is made, as far as radio waves care.</summary>
public enum BuildingKind
{
    /// <summary>Ordinary walls and windows.</summary>
    Traditional,

    /// <summary>Metallised glass, foil-backed panels.</summary>
    ThermallyEfficient,
}

/// <summary>The loss between the street and a place in a building, by ITU-R P.2109.</summary>
public static class BuildingEntry
{
    /// <summary>Lowest frequency [MHz]; the American channels 2 to 5 lie below or across it.</summary>
    public const double LowestMHz = 80;

    /// <summary>Highest frequency [MHz].</summary>
    public const double HighestMHz = 100_000;

    private static readonly Lazy<IReadOnlyDictionary<string, Coefficients>> Kinds = new(() =>
        EmbeddedTable.Rows("Reception/building-entry.csv").ToDictionary(r => r["building"], r => new Coefficients(
            CsvNumber.Of(r["r"]), CsvNumber.Of(r["s"]), CsvNumber.Of(r["t"]), CsvNumber.Of(r["u"]), CsvNumber.Of(r["v"]),
            CsvNumber.Of(r["w"]), CsvNumber.Of(r["x"]), CsvNumber.Of(r["y"]), CsvNumber.Of(r["z"]))));

    /// <summary>The median loss on a level path.</summary>
    public static readonly Formula MedianFormula = new(
        "building-entry-median",
        "Median loss into a building on a level path",
        "Lh = r + s log10(f) + t log10(f)^2",
        new("Lh", "dB", "median loss"), [new("f", "GHz", "frequency, 0.08 to 100")],
        "itu-p2109", "horizontal path; r, s, t: traditional 12.64, 3.72, 0.96; thermally efficient 28.19, -3.00, 8.48");

    /// <summary>The loss that a share of places does not exceed.</summary>
    public static readonly Formula LossFormula = new(
        "building-entry-loss",
        "Loss into a building not exceeded with a probability",
        "L = 10 log10(10^(A/10) + 10^(B/10) + 10^(-0.3)); A = (u + v l) Q + Lh + 0.212 |e|; B = (y + z l) Q + w + x l; l = log10(f)",
        new("L", "dB", "loss"),
        [new("f", "GHz", "frequency, 0.08 to 100"), new("Lh", "dB", "median loss on a level path"),
            new("e", "deg", "elevation of the path at the wall"),
            new("Q", "", "normal deviate of the probability")],
        "itu-p2109", "u, v, w, x, y, z: traditional 9.6, 2.0, 9.1, -3.0, 4.5, -2.0; thermally efficient 13.5, 3.8, 27.8, -2.9, 9.4, -2.1");

    /// <summary>The median loss on a level path.</summary>
    /// <param name="kind">How the building is made.</param>
    /// <param name="frequencyMHz">Frequency [MHz], <see cref="LowestMHz"/> to <see cref="HighestMHz"/>; outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double MedianDb(BuildingKind kind, double frequencyMHz) => Of(kind).MedianDb(LogGHz(frequencyMHz));

    /// <summary>The loss that is not exceeded with a probability.</summary>
    /// <param name="kind">How the building is made.</param>
    /// <param name="frequencyMHz">Frequency [MHz], <see cref="LowestMHz"/> to <see cref="HighestMHz"/>; outside throws.</param>
    /// <param name="probability">Probability, 1e-6 to 1 - 1e-6; outside throws.</param>
    /// <param name="elevationDeg">Elevation of the path at the wall [deg], -90 to 90; outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double LossDb(BuildingKind kind, double frequencyMHz, double probability, double elevationDeg = 0)
    {
        Limit.Within(elevationDeg, -90, 90, "elevation in degrees");
        var l = LogGHz(frequencyMHz);
        var k = Of(kind);
        var q = Probability.Quantile(probability);
        var a = (k.U + k.V * l) * q + k.MedianDb(l) + 0.212 * Math.Abs(elevationDeg);
        var b = (k.Y + k.Z * l) * q + k.W + k.X * l;
        return DecibelSum.TotalDbm([a, b, -3]);
    }

    private static double LogGHz(double frequencyMHz) =>
        Math.Log10(Limit.Within(frequencyMHz, LowestMHz, HighestMHz, "frequency in MHz") / 1000);

    private static Coefficients Of(BuildingKind kind) =>
        Kinds.Value[kind == BuildingKind.Traditional ? "traditional" : "thermally efficient"];

    private sealed record Coefficients(double R, double S, double T, double U, double V, double W, double X, double Y, double Z)
    {
        public double MedianDb(double logGHz) => R + S * logGHz + T * logGHz * logGHz;
    }
}
