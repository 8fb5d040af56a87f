using System.Diagnostics;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The smooth surface laid through the bare ground, and what stands above it.</summary>
/// <param name="FitTxM">Fitted line at the transmitter [m above sea level].</param>
/// <param name="FitRxM">Fitted line at the receiver [m above sea level].</param>
/// <param name="TxM">The same, not above the ground, for ducting, hst [m above sea level].</param>
/// <param name="RxM">The same at the receiver, hsr [m above sea level].</param>
/// <param name="DiffractionTxM">Surface for diffraction at the transmitter, hstd [m above sea level].</param>
/// <param name="DiffractionRxM">Surface for diffraction at the receiver, hsrd [m above sea level].</param>
/// <param name="TxEffectiveM">Transmitting antenna above the surface, hte [m].</param>
/// <param name="RxEffectiveM">Receiving antenna above the surface, hre [m].</param>
/// <param name="RoughnessM">Highest ground above the surface between the horizons, hm [m]; may be negative.</param>
public sealed record SmoothSurface(
    double FitTxM, double FitRxM, double TxM, double RxM, double DiffractionTxM, double DiffractionRxM, double TxEffectiveM,
        double RxEffectiveM, double RoughnessM)
{
    /// <summary>The surface of a path.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="frame">The line between the antennas.</param>
    /// <param name="horizons">Its horizons.</param>
    /// <returns>Heights of the surface and above it.</returns>
    public static SmoothSurface Of(ZonedProfile profile, PathFrame frame, PathHorizons horizons)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(horizons);
        double first = profile.HeightsM[0], last = profile.HeightsM[^1];
        var (fitT, fitR) = Fit(profile);
        var (sinkT, sinkR) = SinkUnderObstruction(profile, frame);
        double surfaceT = Math.Min(fitT, first), surfaceR = Math.Min(fitR, last);
        return new(
            fitT, fitR, surfaceT, surfaceR, Math.Min(fitT - sinkT, first), Math.Min(fitR - sinkR, last),
            frame.TxAboveSeaM - surfaceT, frame.RxAboveSeaM - surfaceR, Roughness(profile, horizons, surfaceT, surfaceR));
    }

    // The straight line that fits the ground best, weighted by the length of each step.
    private static (double Tx, double Rx) Fit(ZonedProfile profile)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        double v1 = 0, v2 = 0, length = profile.LengthKm;
        for (var i = 1; i < d.Length; i++)
        {
            var step = d[i] - d[i - 1];
            v1 += step * (h[i] + h[i - 1]);
            v2 += step * (h[i] * (2 * d[i] + d[i - 1]) + h[i - 1] * (d[i] + 2 * d[i - 1]));
        }
        return ((2 * v1 * length - v2) / (length * length), (v2 - v1 * length) / (length * length));
    }

    // How far the ends of the surface sink when ground stands above the straight ray; no bulge of the earth here.
    private static (double Tx, double Rx) SinkUnderObstruction(ZonedProfile profile, PathFrame frame)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        double highest = double.NegativeInfinity, slopeT = double.NegativeInfinity, slopeR = double.NegativeInfinity;
        for (var i = 1; i < d.Length - 1; i++)
        {
            var above = h[i] - frame.RayM(d[i]);
            highest = Math.Max(highest, above);
            slopeT = Math.Max(slopeT, above / d[i]);
            slopeR = Math.Max(slopeR, above / (frame.LengthKm - d[i]));
        }
        // Only ground above the ray makes both slopes positive and the shares meaningful.
        return highest <= 0 ? (0, 0) : (highest * (slopeT / (slopeT + slopeR)), highest * (slopeR / (slopeT + slopeR)));
    }

    private static double Roughness(ZonedProfile profile, PathHorizons horizons, double surfaceT, double surfaceR)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        var slope = (surfaceR - surfaceT) / profile.LengthKm;
        var roughness = double.NegativeInfinity;
        Debug.Assert(horizons.TxPoint <= horizons.RxPoint, "The horizons cannot cross.");
        for (var i = horizons.TxPoint; i <= horizons.RxPoint; i++) roughness = Math.Max(roughness, h[i] - (surfaceT + slope * d[i]));
        return roughness;
    }
}
