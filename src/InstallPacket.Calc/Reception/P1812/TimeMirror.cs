using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Why nine tenths of the time cannot be estimated by mirroring.</summary>
public enum MirrorBar
{
    /// <summary>Nothing stands against it.</summary>
    None,

    /// <summary>Sea lies in the path.</summary>
    Sea,

    /// <summary>A wide spread where strong layers are frequent.</summary>
    FrequentLayers,

    /// <summary>A wide spread that ducts make.</summary>
    Ducts,
}

/// <summary>A loss not exceeded for nine tenths of the time, estimated from a method that ends at half of it.</summary>
/// <remarks>
/// For the common shares of time the method lays diffraction on a normal scale, whose other half is the mirror image. Ducts and layers
/// have no mirror image. An estimate, to be printed as one; a second opinion beside a method made for service.
/// </remarks>
/// <param name="Median">For half of the time.</param>
/// <param name="Tenth">For a tenth of the time.</param>
/// <param name="Bar">What stands against the estimate.</param>
public readonly record struct TimeMirror(PathLoss Median, PathLoss Tenth, MirrorBar Bar)
{
    /// <summary>Spread up to which frequent layers and ducts do no harm [dB]; a choice of this project.</summary>
    public const double HarmlessSpreadDb = 3;

    // Strong layers for more than this share of time are frequent; a choice of this project.
    private const double FrequentPercent = 10;

    /// <summary>The mirrored loss.</summary>
    public static readonly Formula MirroredFormula = new(
        "p1812-time-mirror",
        "Estimated loss not exceeded for 90 % of the time",
        "Lb(90) = 2 Lb(50) - Lb(10)",
        new("Lb(90)", "dB", "basic transmission loss"),
            [new("Lb(50)", "dB", "for half of the time"), new("Lb(10)", "dB", "for a tenth of the time")],
        "project-notes", "the construction of the regulator's F(50,90), applied to a loss over the profile", Provenance.Derived)
    {
        Method = v => Math.Max(v[0], 2 * v[0] - v[1]),
    };

    /// <summary>Difference of half and a tenth of the time [dB].</summary>
    public double SpreadDb => Median.LossDb - Tenth.LossDb;

    /// <summary>Loss not exceeded for nine tenths of the time [dB]; none where something stands against the estimate.</summary>
    public double? LossDb => Bar == MirrorBar.None ? MirroredDb : null;

    /// <summary>Field exceeded for nine tenths of the time, for 1 kW [dB(uV/m)]; none where something stands against the
    /// estimate.</summary>
    public double? FieldDbuVm => Median.FieldDbuVm + Median.LossDb - LossDb;

    /// <summary>The mirror image, whatever stands against it; never below the loss for half of the time.</summary>
    internal double MirroredDb => Math.Max(Median.LossDb, 2 * Median.LossDb - Tenth.LossDb);

    /// <summary>The estimate for one channel, at half of the places.</summary>
    /// <param name="path">The path.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <param name="polarisation">Plane of the electric field.</param>
    /// <returns>Both losses and what stands against the mirror.</returns>
    public static TimeMirror Of(PreparedPath path, double frequencyMHz, WavePolarisation polarisation = WavePolarisation.Horizontal)
    {
        ArgumentNullException.ThrowIfNull(path);
        var median = PathSpecificPrediction.Loss(path, new(frequencyMHz, 50, polarisation));
        var tenth = PathSpecificPrediction.Loss(path, new(frequencyMHz, 10, polarisation));
        return new(median, tenth, BarOf(path.Statistics, median.LossDb - tenth.LossDb, DuctsRule(tenth)));
    }

    /// <summary>True when ducts ease the loss.</summary>
    internal static bool DuctsRule(in PathLoss loss) => loss.Blend.DuctedDb < loss.Diffraction.BasicDb;

    private static MirrorBar BarOf(PathStatistics statistics, double spreadDb, bool ductsRule) =>
        statistics.SeaFraction > 0 ? MirrorBar.Sea
        : spreadDb <= HarmlessSpreadDb ? MirrorBar.None
        : statistics.LayeredPercent > FrequentPercent ? MirrorBar.FrequentLayers
        : ductsRule ? MirrorBar.Ducts
        : MirrorBar.None;
}
