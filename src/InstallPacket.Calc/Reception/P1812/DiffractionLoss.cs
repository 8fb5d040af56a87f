using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Diffraction for half of the time and for strong layers, and between them.</summary>
/// <param name="Median">For the median effective radius.</param>
/// <param name="Layered">For the effective radius under strong layers.</param>
/// <param name="Weight">How far the wanted share of time lies from the median to the layers, Fi, 0 to 1.</param>
/// <param name="WantedDb">Diffraction loss for the wanted share of time, Ldp [dB].</param>
/// <param name="MedianBasicDb">Basic loss with diffraction, half of the time, Lbd50 [dB].</param>
/// <param name="BasicDb">Basic loss with diffraction for the wanted share of time, Lbd [dB].</param>
public readonly record struct DiffractionLoss(
    DeltaBullingtonLoss Median, DeltaBullingtonLoss Layered, double Weight, double WantedDb, double MedianBasicDb, double BasicDb)
{
    /// <summary>Diffraction for a share of time.</summary>
    public static readonly Formula WantedFormula = new(
        "p1812-diffraction-time",
        "Diffraction loss for a share of time",
        "Ldp = Ld50 + Fi (Ldbeta - Ld50); Fi = I(p/100)/I(beta0/100), 0 at p = 50, 1 up to p = beta0",
        new("Ldp", "dB", "diffraction loss"),
        [new("Ld50", "dB", "for half of the time"), new("Ldbeta", "dB", "for strong layers"), new("p", "%", "share of time"),
            new("beta0", "%", "share of time with strong layers")],
        "itu-p1812", "equations (41) to (43)");

    internal static DiffractionLoss Of(PreparedPath path, RadioWave wave, double timePercent, in LineOfSightLoss sight)
    {
        var median = path.MedianDiffraction.Loss(wave, path.Statistics.SeaFraction);
        var layered = path.LayeredDiffraction.Loss(wave, path.Statistics.SeaFraction);
        var fi = TimeWeight(timePercent, path.Statistics.LayeredPercent);
        var wanted = median.TotalDb + fi * (layered.TotalDb - median.TotalDb); // (41)
        return new(median, layered, fi, wanted, sight.FreeSpaceDb + median.TotalDb, sight.BasicDb + wanted); // (42), (43)
    }

    private static double TimeWeight(double timePercent, double layeredPercent) => timePercent switch
    {
        50 => 0,
        _ when timePercent > layeredPercent => ShareQuantile.Inverse(timePercent / 100) / ShareQuantile.Inverse(layeredPercent / 100),
        _ => 1,
    };
}
