using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What planners take a home antenna to reject, by ITU-R BT.419. The figures of a known antenna come first.</summary>
/// <param name="LowestMHz">Lower end of the band [MHz].</param>
/// <param name="HighestMHz">Upper end of the band [MHz].</param>
/// <param name="FlatDeg">Nothing is rejected up to this angle [deg].</param>
/// <param name="FloorDeg">The floor is reached at this angle [deg].</param>
/// <param name="FloorDb">Gain from there to the rear, against the axis [dB].</param>
/// <param name="OrthogonalDb">Gain for the other polarisation, in all directions [dB]; recalled in every band.</param>
/// <param name="Provenance">How the band's angles and floor are known.</param>
public sealed record ReceivingDiscrimination(
    double LowestMHz, double HighestMHz, double FlatDeg, double FloorDeg, double FloorDb, double OrthogonalDb, Provenance Provenance)
{
    /// <summary>The gain off the axis.</summary>
    public static readonly Formula GainFormula = new(
        "receiving-discrimination",
        "Gain of the planners' home antenna off its axis",
        "g = 0 up to a1, F (a - a1) / (a2 - a1) up to a2, F beyond; F for bands I, III, IV and V: -6, -12, -16",
        new("g", "dB", "gain relative to the axis"),
        [new("a", "deg", "angle from the axis"), new("a1", "deg", "50, 27, 20"), new("a2", "deg", "70, 60, 60"), new("F", "dB", "floor")],
        "itu-bt419", "curves of the three bands; UHF was read, bands I and III are recalled", Provenance.Memory);

    private static readonly Lazy<IReadOnlyList<ReceivingDiscrimination>> Loaded = new(Load);

    /// <summary>The bands.</summary>
    public static IReadOnlyList<ReceivingDiscrimination> All => Loaded.Value;

    /// <summary>The band of a frequency.</summary>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The band, or null outside the three.</returns>
    public static ReceivingDiscrimination? Find(double frequencyMHz) =>
        All.FirstOrDefault(b => frequencyMHz >= b.LowestMHz && frequencyMHz <= b.HighestMHz);

    /// <summary>The gain off the axis in the antenna's own polarisation.</summary>
    /// <param name="offAxisDeg">Angle from the axis [deg], any sign and turn.</param>
    /// <returns>Gain relative to the axis [dB].</returns>
    public double GainDb(double offAxisDeg)
    {
        if (!double.IsFinite(offAxisDeg)) throw new ArgumentOutOfRangeException(nameof(offAxisDeg), offAxisDeg, "The angle is no number.");
        var angle = Math.Abs(Math.IEEERemainder(offAxisDeg, 360));
        return FloorDb * Math.Clamp((angle - FlatDeg) / (FloorDeg - FlatDeg), 0, 1) + 0.0;
    }

    private static ReceivingDiscrimination[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/receiving-discrimination.csv").Select(r => new ReceivingDiscrimination(
            CsvNumber.Of(r["lower_mhz"]), CsvNumber.Of(r["upper_mhz"]), CsvNumber.Of(r["flat_deg"]), CsvNumber.Of(r["floor_deg"]),
            CsvNumber.Of(r["floor_db"]), CsvNumber.Of(r["orthogonal_db"]), CsvProvenance.Of(r["provenance"]))),
    ];
}
