namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Which part of the model gave the reference attenuation; the numbers are the codes of the published model.</summary>
public enum ItmMode
{
    /// <summary>No result.</summary>
    None = 0,

    /// <summary>
    /// Shorter than the smooth-earth line-of-sight distance. It does not say that the antennas see each other: ask
    /// <see cref="ItmPath.IsObstructed"/>.
    /// </summary>
    LineOfSight = 1,

    /// <summary>Diffraction.</summary>
    Diffraction = 2,

    /// <summary>Scatter.</summary>
    Scatter = 3,
}

/// <summary>An answer of the terrain model.</summary>
/// <param name="Refusal">Why there is no figure; then all losses are NaN.</param>
/// <param name="Warnings">Cautions found up to there.</param>
public readonly record struct ItmResult(ItmRefusal Refusal, ItmWarnings Warnings)
{
    /// <summary>
    /// Basic transmission loss between isotropic antennas [dB], not exceeded for the shares asked for. Print whole decibels: the spacing
    /// of the samples
    /// alone moves the rest.
    /// </summary>
    public double BasicLossDb { get; init; } = double.NaN;

    /// <summary>Free-space loss [dB].</summary>
    public double FreeSpaceLossDb { get; init; } = double.NaN;

    /// <summary>Reference attenuation over free space [dB].</summary>
    public double ReferenceAttenuationDb { get; init; } = double.NaN;

    /// <summary>Which part of the model gave it.</summary>
    public ItmMode Mode { get; init; }

    /// <summary>What the ground gave.</summary>
    public ItmTerrain Terrain { get; init; }

    /// <summary>The return code of the published model: 0 clean, 1 with warnings, else the refusal.</summary>
    public int ReturnCode => Refusal != ItmRefusal.None ? (int)Refusal : Warnings == ItmWarnings.None ? 0 : 1;

    /// <summary>How far the figure may be trusted.</summary>
    public ItmClass Class => Refusal != ItmRefusal.None ? ItmClass.OutOfRange : ItmClasses.Of(Warnings);
}
