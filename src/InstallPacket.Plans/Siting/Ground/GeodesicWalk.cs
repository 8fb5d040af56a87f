using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>Places along a geodesic. Nodes are computed exactly every kilometre; between them a straight line in latitude and longitude
/// errs by less than 0.2 m below 80 degrees of latitude.</summary>
internal sealed class GeodesicWalk
{
    private const double NodeM = 1000;
    private readonly GeodesicPoint[] _nodes;
    private readonly double _nodeM;

    public GeodesicWalk(double latitudeDeg, double longitudeDeg, double azimuthDeg, double lengthM)
    {
        var count = Math.Max(1, (int)Math.Ceiling(lengthM / NodeM));
        _nodeM = lengthM / count;
        _nodes = [.. Enumerable.Range(0, count + 1).Select(i => Geodesic.Direct(latitudeDeg, longitudeDeg, azimuthDeg, i * _nodeM))];
    }

    /// <summary>The place at a distance from the start [m].</summary>
    public (double LatitudeDeg, double LongitudeDeg) At(double distanceM)
    {
        var i = Math.Clamp((int)(distanceM / _nodeM), 0, _nodes.Length - 2);
        var share = distanceM / _nodeM - i;
        var (a, b) = (_nodes[i], _nodes[i + 1]);
        var turn = b.LonDeg - a.LonDeg;
        if (Math.Abs(turn) > 180) turn -= 360 * Math.Sign(turn);
        return (a.LatDeg + share * (b.LatDeg - a.LatDeg), a.LonDeg + share * turn);
    }
}
