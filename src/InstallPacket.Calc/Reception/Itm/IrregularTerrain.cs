using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>
/// Loss over real ground: the Irregular Terrain Model 1.2.2 (Longley and Rice), point to point. Buildings and trees are not in it, except
/// through the
/// clutter of the measurements it was fitted to.
/// </summary>
/// <remarks>
/// The work comes in three stages, so that each is done once: <see cref="ItmPath"/> per path and pair of antenna heights,
/// <see cref="ItmChannel"/> per
/// frequency, <see cref="ItmChannel.Loss"/> per set of percentages. The order of operations follows the published program where the last
/// bit decides.
/// </remarks>
public static class IrregularTerrain
{
    /// <summary>Shortest path for which a figure should be used [m]; below, free space with the sight line clear is the honest
    /// answer.</summary>
    public const double ShortestUsefulM = 1000;

    /// <summary>Refractivity at the ground in studies of television service [N-units] (recalled, verify).</summary>
    public const double TelevisionRefractivity = 301;

    /// <summary>The basic transmission loss.</summary>
    public static readonly Formula<ItmResult> LossFormula = new Formula(
        "itm-basic-loss",
        "Basic transmission loss over real ground (Irregular Terrain Model 1.2.2)",
        "Lb = Afs(d, f) + A(Aref, T, L, S), Aref from the profile and the antennas",
        new("Lb", "dB", "loss between isotropic antennas, not exceeded for T % of time in L % of locations with S % confidence"),
        [new("d", "km", "length of the path"), new("f", "MHz", "frequency"), new("h1", "m", "transmitting antenna above ground"),
            new("h2", "m", "receiving antenna above ground"), new("dh", "m", "irregularity of the ground"),
                new("Aref", "dB", "reference attenuation"),
            new("T", "%", "share of time"), new("L", "%", "share of locations"), new("S", "%", "confidence")],
        "ntia-itm", "point-to-point mode with time, location and situation")
        .By<ItmResult>((result, _) => result.BasicLossDb);

    /// <summary>The free-space loss.</summary>
    public static readonly Formula FreeSpaceLossFormula = new(
        "itm-free-space-loss",
        "Free-space loss between isotropic antennas",
        "Afs = 32.45 + 20 log10(f) + 20 log10(d)",
        new("Afs", "dB", "loss"), [new("f", "MHz", "frequency"), new("d", "km", "distance")],
        "ntia-itm", "free-space basic transmission loss");

    /// <summary>The basic transmission loss.</summary>
    /// <param name="path">A worked path.</param>
    /// <param name="settings">Frequency, ground and climate.</param>
    /// <param name="timePct">Share of time [%], between 0 and 100.</param>
    /// <param name="locationPct">Share of locations [%], between 0 and 100.</param>
    /// <param name="situationPct">Share of situations, the confidence [%], between 0 and 100.</param>
    /// <returns>The answer, or a refusal.</returns>
    public static ItmResult Loss(in ItmPath path, in ItmSettings settings, double timePct, double locationPct, double situationPct) =>
        ItmChannel.Of(path, settings).Loss(timePct, locationPct, situationPct);

    /// <summary>The free-space loss with the constant of the model.</summary>
    /// <param name="distanceM">Distance [m].</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>Loss [dB].</returns>
    public static double FreeSpaceLossDb(double distanceM, double frequencyMHz) =>
        32.45 + 20 * Math.Log10(frequencyMHz) + 20 * Math.Log10(distanceM / 1000);
}
