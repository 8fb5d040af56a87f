using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What trees on the path cost, as a range: the methods differ by several decibels, and so do trees.</summary>
/// <param name="LowDb">The smaller figure [dB].</param>
/// <param name="HighDb">The larger figure [dB].</param>
/// <param name="BelowMeasured">True below the lowest frequency at which the woodland loss was measured.</param>
/// <param name="Provenance">The weaker of how the two figures are known.</param>
public readonly record struct VegetationLoss(double LowDb, double HighDb, bool BelowMeasured, Provenance Provenance)
{
    /// <summary>The same trees where the path over their tops costs less than the path through them.</summary>
    /// <param name="edgeDb">Loss over the edge of the trees taken as a screen [dB], see <see cref="Siting.KnifeEdge.LossDb"/>; negative
    /// throws.</param>
    /// <returns>The range with both ends capped.</returns>
    public VegetationLoss CappedBy(double edgeDb) =>
        this with { LowDb = Vegetation.ScreenCapDb(LowDb, edgeDb), HighDb = Vegetation.ScreenCapDb(HighDb, edgeDb) };
}

/// <summary>The loss through trees.</summary>
public static class Vegetation
{
    /// <summary>Greatest depth of trees [m].</summary>
    public const double GreatestDepthM = 400;

    /// <summary>Lowest frequency of the form for trees in leaf [MHz].</summary>
    public const double InLeafLowestMHz = 230;

    /// <summary>Trees without leaves are known to flatter above this frequency [MHz].</summary>
    public const double SeasonMHz = 500;

    private const double NearM = 14;

    /// <summary>The loss through trees in leaf.</summary>
    public static readonly Formula WeissbergerFormula = new(
        "vegetation-weissberger",
        "Loss through dry trees in leaf",
        "L = 0.45 f^0.284 d up to 14 m, 1.33 f^0.284 d^0.588 up to 400 m",
        new("L", "dB", "loss beyond that of the open path"),
            [new("f", "GHz", "frequency, 0.23 to 95"), new("d", "m", "way through the trees")],
        "weissberger-1982", "modified exponential decay, both branches; they differ by 0.4 % at 14 m")
    {
        Method = v => WeissbergerDb(1000 * v[0], v[1]),
    };

    /// <summary>The earlier form.</summary>
    public static readonly Formula EarlyFormula = new(
        "vegetation-early-itu",
        "Loss through trees, earlier form",
        "L = 0.2 f^0.3 d^0.6",
        new("L", "dB", "loss beyond that of the open path"),
            [new("f", "MHz", "frequency"), new("d", "m", "way through the trees, up to 400")],
        "itu-early-vegetation", "recalled; mostly the most pessimistic of the three", Provenance.Memory)
    {
        Method = v => EarlyDb(v[0], v[1]),
    };

    /// <summary>A measured loss of bare trees as it will be in leaf.</summary>
    public static readonly Formula InLeafFormula = new(
        "vegetation-in-leaf",
        "Loss of trees in leaf from a measurement on bare trees",
        "L = k L0, k = 1.2 to 1.3 above 500 MHz, else 1",
        new("L", "dB", "loss in leaf"), [new("L0", "dB", "loss measured without leaves"), new("k", "", "factor")],
        "project-notes", "reception, section 7", Provenance.Memory)
    {
        Method = v => v[0] * v[1],
    };

    /// <summary>The cap by the path over the trees.</summary>
    public static readonly Formula ScreenCapFormula = new(
        "vegetation-screen-cap",
        "Loss by trees that the path can also pass over",
        "L = min(Lv, J)",
        new("L", "dB", "loss"), [new("Lv", "dB", "loss through the trees"), new("J", "dB", "loss over the same trees as a screen")],
        "project-notes", "of two ways the stronger one is received; their sum in power would be less still", Provenance.Derived)
    {
        Method = v => ScreenCapDb(v[0], v[1]),
    };

    /// <summary>The loss through dry trees in leaf.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 230 to 95 000; outside throws.</param>
    /// <param name="depthM">Way through the trees [m], 0 to <see cref="GreatestDepthM"/>; outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double WeissbergerDb(double frequencyMHz, double depthM)
    {
        Limit.Within(frequencyMHz, InLeafLowestMHz, 95000, "frequency in MHz");
        Limit.Within(depthM, 0, GreatestDepthM, "depth of trees in m");
        var f = Math.Pow(frequencyMHz / 1000, 0.284);
        return depthM <= NearM ? 0.45 * f * depthM : 1.33 * f * Math.Pow(depthM, 0.588);
    }

    /// <summary>The loss by the earlier form.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 95 000; outside throws.</param>
    /// <param name="depthM">Way through the trees [m], 0 to <see cref="GreatestDepthM"/>; outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double EarlyDb(double frequencyMHz, double depthM)
    {
        Limit.Within(frequencyMHz, WoodlandLoss.LowestMHz, 95000, "frequency in MHz");
        Limit.Within(depthM, 0, GreatestDepthM, "depth of trees in m");
        return 0.2 * Math.Pow(frequencyMHz, 0.3) * Math.Pow(depthM, 0.6);
    }

    /// <summary>The loss through trees as a range: woodland at its low end, trees in leaf at its high end.</summary>
    /// <remarks>Below 230 MHz the form for trees in leaf does not hold; the recalled earlier form takes its place.</remarks>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 2117.5; outside throws.</param>
    /// <param name="depthM">Way through the trees [m], 0 to <see cref="GreatestDepthM"/>; outside throws.</param>
    /// <returns>Both ends and how they are known.</returns>
    public static VegetationLoss Through(double frequencyMHz, double depthM)
    {
        var woodland = WoodlandLoss.Db(frequencyMHz, depthM);
        var inLeaf = frequencyMHz >= InLeafLowestMHz;
        var other = inLeaf ? WeissbergerDb(frequencyMHz, depthM) : EarlyDb(frequencyMHz, depthM);
        return new(Math.Min(woodland, other), Math.Max(woodland, other), frequencyMHz < WoodlandLoss.LowestMeasuredMHz, inLeaf
            ? Provenance.Read : Provenance.Memory);
    }

    /// <summary>What a loss measured on bare trees becomes in leaf.</summary>
    /// <param name="bareDb">Loss measured without leaves [dB], not negative; outside throws.</param>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Range [dB]; up to 500 MHz the measured loss itself.</returns>
    public static DecibelRange InLeaf(double bareDb, double frequencyMHz)
    {
        Limit.AtLeast(bareDb, 0, "loss of bare trees in dB");
        var (low, high) = InLeafFactors(frequencyMHz);
        return new(low * bareDb, high * bareDb);
    }

    /// <summary>The factors from bare trees to trees in leaf.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Least and greatest factor.</returns>
    public static (double Low, double High) InLeafFactors(double frequencyMHz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        return frequencyMHz > SeasonMHz ? (1.2, 1.3) : (1, 1);
    }

    /// <summary>The smaller of the loss through trees and the loss over them.</summary>
    /// <param name="throughDb">Loss through the trees [dB], not negative; outside throws.</param>
    /// <param name="edgeDb">Loss over their tops as a screen [dB], not negative; outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double ScreenCapDb(double throughDb, double edgeDb) =>
        Math.Min(Limit.AtLeast(throughDb, 0, "loss through the trees in dB"), Limit.AtLeast(edgeDb, 0, "loss over the trees in dB"));
}
