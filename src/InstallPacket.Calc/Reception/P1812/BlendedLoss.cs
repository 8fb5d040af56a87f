using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The mechanisms put together by smooth steps.</summary>
/// <param name="SightWeight">Weight of a path in sight, Fj, near 1 in sight and 0 beyond.</param>
/// <param name="DistanceWeight">Weight of diffraction against ducting by distance, Fk.</param>
/// <param name="LeastSightDb">Notional least loss in sight and by diffraction over the sea's edge, Lminb0p [dB].</param>
/// <param name="LeastDuctedDb">Notional least loss in sight and by ducts, Lminbap [dB].</param>
/// <param name="DuctedDb">Diffraction eased by ducts, Lbda [dB].</param>
/// <param name="UnscatteredDb">All but scatter, Lbam [dB].</param>
/// <param name="MedianPlaceDb">With scatter, at half of the places, Lbc [dB].</param>
public readonly record struct BlendedLoss(
    double SightWeight, double DistanceWeight, double LeastSightDb, double LeastDuctedDb, double DuctedDb, double UnscatteredDb,
        double MedianPlaceDb)
{
    /// <summary>All but scatter.</summary>
    public static readonly Formula UnscatteredFormula = new(
        "p1812-blend",
        "Loss in sight, by diffraction and along ducts together",
        "Lbam = Lbda + (Lminb0p - Lbda) Fj; Lbda = Lminbap + (Lbd - Lminbap) Fk where Lminbap <= Lbd, else Lbd; Lminbap = 2.5 ln(exp(Lba/2.5) + exp(Lb0p/2.5)); "
            + "Lminb0p = Lb0p + (1 - omega) Ldp below p = beta0, Lbd50 + (Lb0beta + (1 - omega) Ldp - Lbd50) I(p/100)/I(beta0/100) from it; "
            + "Fj = 1 - 0.5 (1 + tanh(2.4 (theta - 0.3)/0.3)), Fk = 1 - 0.5 (1 + tanh(1.5 (D - 20)/20))",
        new("Lbam", "dB", "basic transmission loss"),
        [new("Lb0p", "dB", "free path"), new("Lb0beta", "dB", "free path under strong layers"), new("Ldp", "dB", "diffraction"),
            new("Lbd50", "dB", "with diffraction, half of the time"),
            new("Lbd", "dB", "with diffraction"), new("Lba", "dB", "along ducts"), new("omega", "", "share of sea"),
                new("theta", "mrad", "angular distance"), new("D", "km", "length of the path")],
        "itu-p1812", "equations (57) to (62)");

    internal static BlendedLoss Of(PreparedPath path, double timePercent, in LineOfSightLoss sight, in DiffractionLoss diffraction,
        (double DuctingDb, double ScatterDb) other)
    {
        var fj = 1 - 0.5 * (1 + Math.Tanh(3 * 0.8 * (path.Horizons.AngularDistanceMrad - 0.3) / 0.3)); // (57)
        var fk = 1 - 0.5 * (1 + Math.Tanh(3 * 0.5 * (path.Frame.LengthKm - 20) / 20)); // (58)
        var leastSight = LeastSight(path.Statistics, timePercent, sight, diffraction);
        var leastDucted = SoftMaximum(other.DuctingDb, sight.BasicDb); // (60)
        var ducted = leastDucted <= diffraction.BasicDb ? leastDucted + (diffraction.BasicDb - leastDucted) * fk
            : diffraction.BasicDb; // (61)
        var unscattered = ducted + (leastSight - ducted) * fj; // (62)
        var medianPlace = -5 * Math.Log10(Math.Pow(10, -0.2 * other.ScatterDb) + Math.Pow(10, -0.2 * unscattered)); // (63)
        return new(fj, fk, leastSight, leastDucted, ducted, unscattered, medianPlace);
    }

    // (59)
    private static double LeastSight(PathStatistics statistics, double timePercent, in LineOfSightLoss sight,
        in DiffractionLoss diffraction)
    {
        var landDiffraction = (1 - statistics.SeaFraction) * diffraction.WantedDb;
        if (timePercent < statistics.LayeredPercent) return sight.BasicDb + landDiffraction;
        var share = ShareQuantile.Inverse(timePercent / 100) / ShareQuantile.Inverse(statistics.LayeredPercent / 100);
        return diffraction.MedianBasicDb + (sight.LayeredDb + landDiffraction - diffraction.MedianBasicDb) * share;
    }

    // The larger exponent is taken out first, so that no loss can overflow.
    private static double SoftMaximum(double oneDb, double otherDb)
    {
        var larger = Math.Max(oneDb, otherDb);
        return larger + 2.5 * Math.Log(Math.Exp((oneDb - larger) / 2.5) + Math.Exp((otherDb - larger) / 2.5));
    }
}
