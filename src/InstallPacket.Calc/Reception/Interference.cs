using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What other stations do to a wanted channel.</summary>
/// <remarks>All ratios hold at the tuner, after the antenna: D is the wanted channel, U the other one.</remarks>
public static class Interference
{
    /// <summary>Threshold of 8-VSB in the American rule [dB].</summary>
    public const double RuleThresholdDb = 15.19;

    /// <summary>From this signal-to-noise ratio on the American rule asks for 15 dB flat [dB].</summary>
    public const double RuleFlatDb = 28;

    /// <summary>Splatter of an 8-VSB station in each first adjacent channel, over the power of its own [dB].</summary>
    public const double SplatterDb = -44.5;

    /// <summary>The same through the filter of the receiver tuned there [dB].</summary>
    public const double FilteredSplatterDb = -46.5;

    /// <summary>The American co-channel rule.</summary>
    public static readonly Formula CochannelFormula = new(
        "cochannel-du",
        "Least ratio to a digital station on the same channel, American rule",
        "D/U = 15 + 10 log10(1 / (1 - 10^(-x/10))), x = S/N - 15.19, below 28 dB; 15 from there on",
        new("D/U", "dB", "least ratio at the tuner"), [new("S/N", "dB", "signal-to-noise ratio of the wanted channel")],
        "oet-69", "interference between digital stations", Provenance.Memory);

    /// <summary>What noise leaves to interference.</summary>
    public static readonly Formula RequiredDuFormula = new(
        "required-du",
        "Least ratio to noise-like interference on the same channel",
        "D/U = -10 log10(10^(-R/10) - 10^(-(S/N)/10))",
        new("D/U", "dB", "least ratio of the wanted channel to all interference together"),
        [new("R", "dB", "required carrier-to-noise ratio of the mode"), new("S/N", "dB", "signal-to-noise ratio of the wanted channel")],
        "project-notes", "noise and interference add in power", Provenance.Derived);

    /// <summary>Noise and interference together.</summary>
    public static readonly Formula EffectiveCnFormula = new(
        "effective-cn",
        "Carrier over noise and interference together",
        "C/(N+I) = -10 log10(10^(-(C/N)/10) + sum of 10^(-(D/U)i/10))",
        new("C/(N+I)", "dB", "ratio"),
            [new("C/N", "dB", "carrier-to-noise ratio"), new("(D/U)i", "dB", "ratio to each noise-like disturber")],
        "project-notes", "noise and interference add in power", Provenance.Derived)
    {
        Method = v => EffectiveCnDb(v[0], [v[1]]),
    };

    /// <summary>The ratio at the tuner.</summary>
    public static readonly Formula DuAtTunerFormula = new(
        "du-at-tuner",
        "Ratio of the wanted to another channel at the tuner",
        "D/U = (Ed + Gd) - (Eu + Gu)",
        new("D/U", "dB", "ratio"),
        [new("Ed", "dB(uV/m)", "field of the wanted channel"), new("Gd", "dBd", "antenna gain towards it"),
            new("Eu", "dB(uV/m)", "field of the other one"),
            new("Gu", "dBd", "antenna gain towards that")],
        "project-notes", "fields and gains of nearly equal frequencies", Provenance.Derived);

    /// <summary>Splatter as interference on the same channel.</summary>
    public static readonly Formula SplatterFormula = new(
        "adjacent-splatter",
        "Ratio to the splatter of a station on an adjacent channel",
        "D/I = D/U - s",
        new("D/I", "dB", "ratio to the splatter, which counts as noise"),
        [new("D/U", "dB", "ratio to the station itself"),
            new("s", "dB", "its splatter over its own power; 8-VSB -46.5 through the receiver's filter")],
        "atsc-mask", "mask of the transmitter; the figure was read in an article", Provenance.Read);

    /// <summary>The least ratio by the American co-channel rule.</summary>
    /// <param name="snDb">Signal-to-noise ratio of the wanted channel [dB]; not a number throws.</param>
    /// <returns>Ratio [dB], or null at and below the threshold, where noise alone fills it.</returns>
    public static double? CochannelDuDb(double snDb) => snDb switch
    {
        double.NaN => throw new ArgumentOutOfRangeException(nameof(snDb), snDb, "The ratio is no number."),
        <= RuleThresholdDb => null,
        < RuleFlatDb => 15 - 10 * Math.Log10(1 - Math.Pow(10, (RuleThresholdDb - snDb) / 10)),
        _ => 15,
    };

    /// <summary>The least ratio to all noise-like interference of the same channel together.</summary>
    /// <param name="requiredCnDb">Required carrier-to-noise ratio of the mode [dB]; not a number throws.</param>
    /// <param name="snDb">Signal-to-noise ratio of the wanted channel [dB], infinite without noise; not a number throws.</param>
    /// <returns>Ratio [dB], or null at and below the requirement, where noise alone fills it.</returns>
    public static double? RequiredDuDb(double requiredCnDb, double snDb)
    {
        var room = Ratio(requiredCnDb) - Ratio(snDb);
        return snDb > requiredCnDb && room > 0 ? -10 * Math.Log10(room) : null;
    }

    /// <summary>Carrier over noise and all interference together.</summary>
    /// <param name="cnDb">Carrier-to-noise ratio [dB]; not a number throws.</param>
    /// <param name="duDb">Ratio to each noise-like disturber [dB]: stations of the same channel, splatter, intermodulation; may be
    /// empty.</param>
    /// <returns>Ratio [dB], never above the carrier-to-noise ratio.</returns>
    public static double EffectiveCnDb(double cnDb, IEnumerable<double> duDb)
    {
        ArgumentNullException.ThrowIfNull(duDb);
        return -10 * Math.Log10(Ratio(cnDb) + duDb.Sum(Ratio));
    }

    /// <summary>The ratio of the wanted to another channel at the tuner.</summary>
    /// <param name="wantedDbuVm">Field of the wanted channel [dB(uV/m)].</param>
    /// <param name="wantedGainDbd">Antenna gain towards it [dBd].</param>
    /// <param name="otherDbuVm">Field of the other one [dB(uV/m)].</param>
    /// <param name="otherGainDbd">Antenna gain towards that, floor of the pattern included [dBd].</param>
    /// <returns>Ratio [dB].</returns>
    public static double DuAtTunerDb(double wantedDbuVm, double wantedGainDbd, double otherDbuVm, double otherGainDbd) =>
        wantedDbuVm + wantedGainDbd - (otherDbuVm + otherGainDbd);

    /// <summary>The ratio to the splatter of a station on an adjacent channel; no filter in the receiver lowers it.</summary>
    /// <param name="adjacentDuDb">Ratio to that station itself [dB].</param>
    /// <param name="splatterDb">Splatter over the station's own power [dB]; the figure of 8-VSB when left out.</param>
    /// <returns>Ratio [dB], for <see cref="EffectiveCnDb"/>.</returns>
    public static double SplatterDuDb(double adjacentDuDb, double splatterDb = FilteredSplatterDb) => adjacentDuDb - splatterDb;

    private static double Ratio(double db) =>
        double.IsNaN(db) ? throw new ArgumentOutOfRangeException(nameof(db), db, "A ratio is no number.") : Math.Pow(10, -db / 10);
}
