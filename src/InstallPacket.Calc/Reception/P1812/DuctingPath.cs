namespace InstallPacket.Calc.Reception.P1812;

/// <summary>What ducts and reflecting layers make of a path, as far as it does not depend on frequency and time.</summary>
/// <param name="LengthKm">Length of the path [km].</param>
/// <param name="MedianRadiusKm">Median effective radius of the earth [km].</param>
/// <param name="Horizons">The horizons.</param>
/// <param name="TxCoastDb">Gain of a transmitter near the coast, Act, not above 0 [dB].</param>
/// <param name="RxCoastDb">Gain of a receiver near the coast, Acr, not above 0 [dB].</param>
/// <param name="AngleMrad">Angular distance with limited horizon angles, theta1 [mrad].</param>
/// <param name="Mu2">Weakening by the heights of the antennas, 0 to 1.</param>
/// <param name="Mu3">Weakening by rough ground, 0 to 1.</param>
/// <param name="DuctedPercent">Share of time with ducts along the whole path, beta [%].</param>
/// <param name="Gamma">Exponent of the time term.</param>
public sealed record DuctingPath(
    double LengthKm, double MedianRadiusKm, PathHorizons Horizons, double TxCoastDb, double RxCoastDb,
    double AngleMrad, double Mu2, double Mu3, double DuctedPercent, double Gamma)
{
    /// <summary>The ducting part of a path.</summary>
    /// <param name="frame">The line between the antennas.</param>
    /// <param name="statistics">Sea, land and layers.</param>
    /// <param name="horizons">The horizons.</param>
    /// <param name="surface">The smooth surface.</param>
    /// <returns>Its constants.</returns>
    public static DuctingPath Of(PathFrame frame, PathStatistics statistics, PathHorizons horizons, SmoothSurface surface)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(statistics);
        ArgumentNullException.ThrowIfNull(horizons);
        ArgumentNullException.ThrowIfNull(surface);
        var mu2 = Mu2Of(frame, statistics.Tau, surface);
        var mu3 = Mu3Of(frame.LengthKm - horizons.TxDistanceKm - horizons.RxDistanceKm, surface.RoughnessM);
        var beta = statistics.LayeredPercent * mu2 * mu3; // (54)
        return new(
            frame.LengthKm, frame.MedianRadiusKm, horizons,
            CoastDb(statistics.SeaFraction, frame.TxCoastKm, horizons.TxDistanceKm, frame.TxAboveSeaM),
            CoastDb(statistics.SeaFraction, frame.RxCoastKm, horizons.RxDistanceKm, frame.RxAboveSeaM),
            LimitedAngle(frame, horizons), mu2, mu3, beta, GammaOf(frame.LengthKm, beta));
    }

    private static double CoastDb(double seaFraction, double coastKm, double horizonKm, double aboveSeaM) =>
        seaFraction >= 0.75 && coastKm <= horizonKm && coastKm <= 5
            ? -3 * Math.Exp(-0.25 * coastKm * coastKm) * (1 + Math.Tanh(0.07 * (50 - aboveSeaM)))
            : 0;

    // (52)
    private static double LimitedAngle(PathFrame frame, PathHorizons horizons) =>
        1000 * frame.LengthKm / frame.MedianRadiusKm
        + Math.Min(horizons.TxElevationMrad, 0.1 * horizons.TxDistanceKm) + Math.Min(horizons.RxElevationMrad, 0.1 * horizons.RxDistanceKm);

    // (55), (55a)
    private static double Mu2Of(PathFrame frame, double tau, SmoothSurface surface)
    {
        var alpha = Math.Max(-3.4, -0.6 - 3.5e-9 * Math.Pow(frame.LengthKm, 3.1) * tau);
        var roots = Math.Sqrt(surface.TxEffectiveM) + Math.Sqrt(surface.RxEffectiveM);
        return Math.Min(1, Math.Pow(500 * frame.LengthKm * frame.LengthKm / (frame.MedianRadiusKm * roots * roots), alpha));
    }

    // (56)
    private static double Mu3Of(double betweenHorizonsKm, double roughnessM) =>
        roughnessM > 10 ? Math.Exp(-4.6e-5 * (roughnessM - 10) * (43 + 6 * Math.Min(betweenHorizonsKm, 40))) : 1;

    // (53a)
    private static double GammaOf(double lengthKm, double ductedPercent)
    {
        var w = Math.Log10(ductedPercent);
        return 1.076 / Math.Pow(2.0058 - w, 1.012) * Math.Exp(-(9.51 - 4.8 * w + 0.198 * w * w) * 1e-6 * Math.Pow(lengthKm, 1.13));
    }
}
