using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Edition of the American load standard.</summary>
public enum AsceEdition
{
    /// <summary>7-10 and 7-16, whose profiles are alike.</summary>
    Asce716,

    /// <summary>7-22.</summary>
    Asce722,
}

/// <summary>How the ground around the house slows the wind. C when unsure.</summary>
public enum WindExposure
{
    /// <summary>Town or woodland.</summary>
    B,

    /// <summary>Open country.</summary>
    C,

    /// <summary>At open water.</summary>
    D,
}

/// <summary>The wind profile of an exposure.</summary>
/// <param name="Edition">Edition of the standard.</param>
/// <param name="Exposure">Kind of ground.</param>
/// <param name="Coefficient">Factor in front of the power law.</param>
/// <param name="Alpha">Exponent of the power law.</param>
/// <param name="GradientM">Height at which the ground no longer slows the wind [m].</param>
/// <param name="Provenance">How it is known.</param>
public sealed record WindProfile(
    AsceEdition Edition, WindExposure Exposure, double Coefficient, double Alpha, double GradientM, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<WindProfile>> Loaded = new(Load);

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<WindProfile> All => Loaded.Value;

    /// <summary>The profile of an edition and an exposure.</summary>
    public static WindProfile Of(AsceEdition edition, WindExposure exposure) =>
        All.FirstOrDefault(p => p.Edition == edition && p.Exposure == exposure)
        ?? throw new ArgumentOutOfRangeException(nameof(exposure), exposure, $"No wind profile for {edition} and exposure {exposure}.");

    private static WindProfile[] Load() =>
    [
        .. EmbeddedTable.Rows("Mounting/wind-exposure.csv").Select(r => new WindProfile(
            r["edition"] == "7-22" ? AsceEdition.Asce722 : AsceEdition.Asce716, Enum.Parse<WindExposure>(r["exposure"]),
            CsvNumber.Of(r["coefficient"]), CsvNumber.Of(r["alpha"]), CsvNumber.Of(r["gradient_m"]), CsvProvenance.Of(r["provenance"]))),
    ];
}
