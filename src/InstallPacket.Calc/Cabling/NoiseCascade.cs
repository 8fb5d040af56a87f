using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>One part of the chain.</summary>
/// <param name="Name">What it is.</param>
/// <param name="GainDb">Gain [dB], negative for a loss.</param>
/// <param name="NoiseFigureDb">Noise figure [dB]; for a passive part at 290 K its loss.</param>
public sealed record Stage(string Name, double GainDb, double NoiseFigureDb);

/// <summary>The chain up to and including one part.</summary>
/// <param name="Name">The last part.</param>
/// <param name="GainDb">Gain so far [dB].</param>
/// <param name="NoiseFigureDb">Noise figure so far, referred to the start of the chain [dB].</param>
/// <param name="NoiseFactor">The same as a ratio.</param>
public sealed record CascadeStage(string Name, double GainDb, double NoiseFigureDb, double NoiseFactor);

/// <summary>The noise of parts in a row.</summary>
public static class NoiseCascade
{
    private const double ReferenceK = 290;

    /// <summary>The noise figure of parts in a row.</summary>
    public static readonly Formula FriisFormula = new(
        "noise-cascade",
        "Noise figure of the chain up to a part",
        "F = F1 + (F2 - 1) / G1 + (F3 - 1) / (G1 G2) + ..., NF = 10 log10(F)",
        new("NF", "dB", "noise figure referred to the start"),
        [new("NF before", "dB", "noise figure of the chain before the part"), new("G before", "dB", "gain of the chain before the part"),
            new("NF part", "dB", "noise figure of the part")],
        "s50-noise-post", "two-stage case as read, applied part by part", Provenance.Derived)
    {
        Method = v => 10 * Math.Log10(Math.Pow(10, v[0] / 10) + (Math.Pow(10, v[2] / 10) - 1) / Math.Pow(10, v[1] / 10)),
    };

    /// <summary>The noise figure of a passive part.</summary>
    public static readonly Formula PassiveFormula = new(
        "passive-noise-figure",
        "Noise figure of a passive part at its temperature",
        "NF = 10 log10(1 + (10^(L/10) - 1) T / 290)",
        new("NF", "dB", "noise figure"), [new("L", "dB", "loss"), new("T", "K", "physical temperature")],
        "s50-noise-post", "line term 290 (L - 1), with the line's own temperature", Provenance.Derived);

    /// <summary>Gain and noise figure of a chain after each of its parts.</summary>
    /// <param name="stages">Parts from the antenna on.</param>
    /// <returns>One entry for each part, in order.</returns>
    public static IReadOnlyList<CascadeStage> Friis(IReadOnlyList<Stage> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        var result = new List<CascadeStage>(stages.Count);
        double gainDb = 0, factor = 1;
        foreach (var stage in stages)
        {
            factor += (Math.Pow(10, stage.NoiseFigureDb / 10) - 1) / Math.Pow(10, gainDb / 10);
            gainDb += stage.GainDb;
            result.Add(new CascadeStage(stage.Name, gainDb, 10 * Math.Log10(factor), factor));
        }
        return result;
    }

    /// <summary>The noise figure of a passive part.</summary>
    /// <param name="lossDb">Loss [dB], not negative; outside throws.</param>
    /// <param name="physicalK">Temperature of the part [K], not negative; outside throws.</param>
    /// <returns>Noise figure [dB]; the loss itself at 290 K.</returns>
    public static double PassiveNoiseFigureDb(double lossDb, double physicalK)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(lossDb);
        ArgumentOutOfRangeException.ThrowIfNegative(physicalK);
        return 10 * Math.Log10(1 + (Math.Pow(10, lossDb / 10) - 1) * physicalK / ReferenceK);
    }
}
