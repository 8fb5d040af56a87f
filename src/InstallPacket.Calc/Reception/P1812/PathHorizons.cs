namespace InstallPacket.Calc.Reception.P1812;

/// <summary>What each antenna sees as its horizon, over bare ground and the median effective earth.</summary>
/// <param name="BeyondHorizon">True when the antennas do not see each other.</param>
/// <param name="TxDistanceKm">Distance of the transmitter's horizon from it, dlt [km].</param>
/// <param name="RxDistanceKm">Distance of the receiver's horizon from it, dlr [km].</param>
/// <param name="TxElevationMrad">Elevation of the transmitter's horizon [mrad].</param>
/// <param name="RxElevationMrad">Elevation of the receiver's horizon [mrad].</param>
/// <param name="AngularDistanceMrad">Angular distance, theta [mrad]; about 0 in sight.</param>
/// <param name="TxPoint">Number of the transmitter's horizon in the profile.</param>
/// <param name="RxPoint">Number of the receiver's horizon in the profile.</param>
public sealed record PathHorizons(
    bool BeyondHorizon, double TxDistanceKm, double RxDistanceKm, double TxElevationMrad, double RxElevationMrad,
        double AngularDistanceMrad, int TxPoint, int RxPoint)
{
    /// <summary>The horizons of a path.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="frame">The line between the antennas.</param>
    /// <returns>Distances, elevations and the angular distance.</returns>
    public static PathHorizons Of(ZonedProfile profile, PathFrame frame)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(frame);
        double length = frame.LengthKm, ae = frame.MedianRadiusKm;
        var step = (frame.RxAboveSeaM - frame.TxAboveSeaM) / (1000 * length);
        double rayT = step - length / (2 * ae), rayR = -step - length / (2 * ae);
        var (slopeT, t) = TxHorizon(profile, frame);
        if (!(slopeT > rayT))
        {
            var near = NearestToRay(profile, frame);
            var km = profile.DistancesKm[near];
            return new(false, km, length - km, Mrad(rayT), Mrad(rayR), 1000 * length / ae + Mrad(rayT) + Mrad(rayR), near, near);
        }
        var (slopeR, r) = RxHorizon(profile, frame);
        return new(
            true, profile.DistancesKm[t], length - profile.DistancesKm[r], Mrad(slopeT), Mrad(slopeR),
            1000 * length / ae + Mrad(slopeT) + Mrad(slopeR), t, r);
    }

    // Slopes stand for angles until the end: the arc tangent keeps their order. The first of equal maxima counts here.
    private static (double Slope, int Point) TxHorizon(ZonedProfile profile, PathFrame frame)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        var (best, point) = (double.NegativeInfinity, 0);
        for (var i = 1; i < d.Length - 1; i++)
        {
            var slope = (h[i] - frame.TxAboveSeaM) / (1000 * d[i]) - d[i] / (2 * frame.MedianRadiusKm);
            if (slope > best) (best, point) = (slope, i);
        }
        return (best, point);
    }

    // The last of equal maxima counts here.
    private static (double Slope, int Point) RxHorizon(ZonedProfile profile, PathFrame frame)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        var (best, point) = (double.NegativeInfinity, 0);
        for (var i = 1; i < d.Length - 1; i++)
        {
            var rest = frame.LengthKm - d[i];
            var slope = (h[i] - frame.RxAboveSeaM) / (1000 * rest) - rest / (2 * frame.MedianRadiusKm);
            if (slope >= best) (best, point) = (slope, i);
        }
        return (best, point);
    }

    // In sight: the last point of the largest diffraction parameter. The wavelength is one factor for all points, so it is left out.
    private static int NearestToRay(ZonedProfile profile, PathFrame frame)
    {
        ReadOnlySpan<double> d = profile.DistancesKm, h = profile.HeightsM;
        var (best, point) = (double.NegativeInfinity, 0);
        for (var i = 1; i < d.Length - 1; i++)
        {
            var product = d[i] * (frame.LengthKm - d[i]);
            var nu = (h[i] + 500 * product / frame.MedianRadiusKm - frame.RayM(d[i])) * Math.Sqrt(0.002 * frame.LengthKm / product);
            if (nu >= best) (best, point) = (nu, i);
        }
        return point;
    }

    private static double Mrad(double slope) => 1000 * Math.Atan(slope);
}
