using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>Distances, bearings and points along a path on the WGS84 ellipsoid.</summary>
public static class Geodesic
{
    /// <summary>The distance between two points.</summary>
    public static readonly Formula DistanceFormula = new(
        "path-distance",
        "Distance along the earth to the transmitter",
        "s = b A1 (sigma12 + B1(sigma2) - B1(sigma1)), alpha1 solved by Newton's method from the longitude equation (order 6, WGS84)",
        new("s", "m", "length of the geodesic"),
        [new("lat1", "deg", "latitude of the receiving site"), new("lon1", "deg", "longitude of the receiving site"),
            new("lat2", "deg", "latitude of the transmitter"), new("lon2", "deg", "longitude of the transmitter")],
        "karney-2013", "inverse problem, series of order 6 (coefficients compared with a published implementation)")
    {
        Method = v => Inverse(v[0], v[1], v[2], v[3]).DistanceM,
    };

    /// <summary>The bearing from the first point to the second.</summary>
    public static readonly Formula BearingFormula = DistanceFormula with
    {
        Id = "true-bearing",
        Title = "True bearing of the transmitter from the site",
        Equation = "alpha1 such that lambda12(alpha1) = lon2 - lon1 on the geodesic through both points (order 6, WGS84)",
        Result = new("alpha1", "deg", "clockwise from true north"),
        Method = v => Inverse(v[0], v[1], v[2], v[3]).AzimuthDeg,
    };

    /// <summary>The point at a distance along a bearing.</summary>
    public static readonly Formula DirectFormula = new(
        "path-point",
        "Point along the path to the transmitter",
        "sigma12 from the reverted series D_l of s / (b A1); lat2, lon2 from the auxiliary sphere (order 6, WGS84)",
        new("lat2", "deg", "latitude of the point (its longitude follows from the same arc)"),
        [new("lat1", "deg", "latitude of the start"), new("lon1", "deg", "longitude of the start"),
            new("alpha1", "deg", "bearing from true north"), new("s", "m", "distance")],
        "karney-2013", "direct problem, series of order 6 (coefficients compared with a published implementation)");

    /// <summary>Length and bearings of the shortest line between two points.</summary>
    /// <remarks>
    /// Good to about 15 nanometres. At equal points the bearing has no meaning; at exactly opposite points two lines are equally short and
    /// one is returned.
    /// </remarks>
    /// <param name="lat1Deg">Latitude of the first point [deg], -90 to 90; outside throws.</param>
    /// <param name="lon1Deg">Longitude of the first point [deg], any turn.</param>
    /// <param name="lat2Deg">Latitude of the second point [deg], -90 to 90; outside throws.</param>
    /// <param name="lon2Deg">Longitude of the second point [deg], any turn.</param>
    /// <returns>The line.</returns>
    public static GeodesicLine Inverse(double lat1Deg, double lon1Deg, double lat2Deg, double lon2Deg)
    {
        CheckLatitude(lat1Deg, nameof(lat1Deg));
        CheckLatitude(lat2Deg, nameof(lat2Deg));
        return GeodesicInverse.Solve(lat1Deg, lon1Deg, lat2Deg, lon2Deg);
    }

    /// <summary>The point reached from a start along a bearing.</summary>
    /// <param name="lat1Deg">Latitude of the start [deg], -90 to 90; outside throws.</param>
    /// <param name="lon1Deg">Longitude of the start [deg], any turn.</param>
    /// <param name="azimuthDeg">Bearing from true north [deg], any turn.</param>
    /// <param name="distanceM">Distance [m]; negative goes backward.</param>
    /// <returns>The point, and the direction of travel there.</returns>
    public static GeodesicPoint Direct(double lat1Deg, double lon1Deg, double azimuthDeg, double distanceM)
    {
        CheckLatitude(lat1Deg, nameof(lat1Deg));
        return GeodesicDirect.Solve(lat1Deg, lon1Deg, azimuthDeg, distanceM);
    }

    // Adding zero turns a negative zero into a plain one, so that no sheet prints "-0".
    internal static double Azimuth(double sin, double cos) => Bearing.Wrap(Math.Atan2(sin, cos) * Degrees.PerRadian) + 0.0;

    private static void CheckLatitude(double latitudeDeg, string name)
    {
        if (!(Math.Abs(latitudeDeg) <= 90)) throw new ArgumentOutOfRangeException(name, latitudeDeg,
            "A latitude lies between -90 and 90 degrees.");
    }
}
