using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The loss of a path that ends inside or behind woodland, by ITU-R P.833.</summary>
public static class WoodlandLoss
{
    /// <summary>Lowest frequency [MHz].</summary>
    public const double LowestMHz = 30;

    /// <summary>Highest frequency [MHz], the last measured one.</summary>
    public const double HighestMHz = 2117.5;

    private static readonly Lazy<(double MHz, double Gamma, double Most)[]> Measured = new(() =>
    [
        .. EmbeddedTable.Rows("Reception/vegetation-p833.csv").Select(r =>
            (CsvNumber.Of(r["freq_mhz"]), CsvNumber.Of(r["gamma_db_per_m"]), CsvNumber.Of(r["am_db"]))),
    ]);

    /// <summary>The loss.</summary>
    public static readonly Formula LossFormula = new(
        "vegetation-woodland",
        "Loss in woodland",
        "A = Am (1 - exp(-d gamma / Am))",
        new("A", "dB", "loss beyond that of the open path"),
        [new("d", "m", "way through the trees"), new("gamma", "dB/m", "loss per length at short depth"), new("Am", "dB", "greatest loss")],
        "itu-p833", "one terminal in woodland");

    /// <summary>The two constants of the loss.</summary>
    public static readonly Formula ConstantsFormula = new(
        "vegetation-woodland-constants",
        "Constants of the woodland loss at a frequency",
        "log y = log y1 + (log y2 - log y1) (log f - log f1) / (log f2 - log f1), y = gamma and y = Am",
        new("y", "dB/m or dB", "gamma or Am"), [new("f", "MHz", "frequency")],
        "project-notes",
            "straight in both logarithms between the five measured frequencies of P.833; the first line goes on below 105.9 MHz",
            Provenance.Derived);

    /// <summary>Lowest measured frequency [MHz]; below, the first line goes on.</summary>
    public static double LowestMeasuredMHz => Measured.Value[0].MHz;

    /// <summary>The constants at a frequency.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], <see cref="LowestMHz"/> to <see cref="HighestMHz"/>; outside throws.</param>
    /// <returns>Loss per length at short depth [dB/m] and greatest loss [dB].</returns>
    public static (double GammaDbPerM, double MostDb) Constants(double frequencyMHz)
    {
        Limit.Within(frequencyMHz, LowestMHz, HighestMHz, "frequency in MHz");
        var rows = Measured.Value;
        var upper = 1;
        while (upper < rows.Length - 1 && frequencyMHz > rows[upper].MHz) upper++;
        var (low, high) = (rows[upper - 1], rows[upper]);
        var share = Math.Log(frequencyMHz / low.MHz) / Math.Log(high.MHz / low.MHz);
        return (low.Gamma * Math.Pow(high.Gamma / low.Gamma, share), low.Most * Math.Pow(high.Most / low.Most, share));
    }

    /// <summary>The loss.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], <see cref="LowestMHz"/> to <see cref="HighestMHz"/>; outside throws.</param>
    /// <param name="depthM">Way through the trees [m], not negative; outside throws.</param>
    /// <returns>Loss [dB], 0 without trees.</returns>
    public static double Db(double frequencyMHz, double depthM)
    {
        Limit.AtLeast(depthM, 0, "depth of trees in m");
        var (gamma, most) = Constants(frequencyMHz);
        return most * (1 - Math.Exp(-depthM * gamma / most));
    }
}
