using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The middle of the path, where its climate is taken.</summary>
public static class PathCentre
{
    /// <summary>The latitude of the centre.</summary>
    public static readonly Formula LatitudeFormula = new(
        "p1812-centre-latitude",
        "Latitude of the path's centre",
        "sin(phi) = sin(phi1) cos(c) + cos(phi1) sin(c) cos(B), c = D / (2 * 6371), B bearing of the other end on the sphere",
        new("phi", "deg", "latitude of the centre"),
        [new("phi1", "deg", "latitude of the transmitter"), new("lambda1", "deg", "its longitude"),
            new("phi2", "deg", "latitude of the receiver"), new("lambda2", "deg", "its longitude"), new("D", "km", "length of the path")],
        "itu-p1812", "path centre, great circle on a sphere of 6371 km");

    /// <summary>The latitude of the point half the path's length away, towards the receiver.</summary>
    /// <param name="txLatDeg">Latitude of the transmitter [deg].</param>
    /// <param name="txLonDeg">Longitude of the transmitter [deg].</param>
    /// <param name="rxLatDeg">Latitude of the receiver [deg].</param>
    /// <param name="rxLonDeg">Longitude of the receiver [deg].</param>
    /// <param name="lengthKm">Length of the profile [km], which rules even where the coordinates lie at another distance.</param>
    /// <returns>Latitude [deg]; that of the transmitter when the ends coincide.</returns>
    public static double LatitudeDeg(double txLatDeg, double txLonDeg, double rxLatDeg, double rxLonDeg, double lengthKm)
    {
        const double degree = Math.PI / 180;
        var (sinT, cosT) = Math.SinCos(txLatDeg * degree);
        var (sinR, cosR) = Math.SinCos(rxLatDeg * degree);
        var (sinTurn, cosTurn) = Math.SinCos((rxLonDeg - txLonDeg) * degree);
        var r = sinT * sinR + cosT * cosR * cosTurn;
        var x = sinR - r * sinT;
        var y = cosT * cosR * sinTurn;
        if (Math.Abs(x) < 1e-9 && Math.Abs(y) < 1e-9) return txLatDeg;
        var (sinC, cosC) = Math.SinCos(lengthKm / (2 * PathClimate.EarthRadiusKm));
        return Math.Asin(sinT * cosC + cosT * sinC * Math.Cos(Math.Atan2(y, x))) / degree;
    }
}
