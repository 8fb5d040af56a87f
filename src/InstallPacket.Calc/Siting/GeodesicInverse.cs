namespace InstallPacket.Calc.Siting;

/// <summary>
/// The inverse problem: two points give distance and bearings. Newton's method on the starting azimuth inside a bracket, so that it cannot
/// fail.
/// </summary>
internal static class GeodesicInverse
{
    // Below this arc (about 0.2 m) the sphere already gives every digit and Newton's slope would be noise.
    private const double ShortArc = 3.6e-8;

    public static GeodesicLine Solve(double lat1Deg, double lon1Deg, double lat2Deg, double lon2Deg)
    {
        var turnDeg = Math.IEEERemainder(lon2Deg - lon1Deg, 360);
        var east = turnDeg < 0 ? -1 : 1;
        var swapped = Math.Abs(lat1Deg) < Math.Abs(lat2Deg);
        var (latA, latB) = swapped ? (lat2Deg, lat1Deg) : (lat1Deg, lat2Deg);
        // On the equator, where a far line is as short to the north as to the south, flipping picks the northern one.
        var flip = latA < 0 ? 1 : -1;

        var pair = new PointPair(flip * latA, flip * latB, Math.Abs(turnDeg));
        var (distance, first, second) = Canonical(pair);

        // The line back runs the other way: exchanging the ends also turns both directions by 180 degrees in latitude sense.
        if (swapped) (first, second) = (second, first);
        var latitudeSign = (swapped ? -1 : 1) * flip;
        return new GeodesicLine(
            distance,
            Geodesic.Azimuth(first.Sin * east, first.Cos * latitudeSign),
            Geodesic.Azimuth(second.Sin * east, second.Cos * latitudeSign));
    }

    private static (double, Direction, Direction) Canonical(PointPair p)
    {
        if (p.TurnDeg is 0 or 180 || p.Lat1Deg == -90)
        {
            // On an oblate earth the meridian is the shortest way whenever the longitudes differ by 0 or 180 degrees.
            var alpha1 = new Direction(p.SinLambda, p.CosLambda);
            var alpha2 = new Direction(0, 1);
            var arc = new GeodesicArc(p, alpha1, alpha2, 1);
            return (arc.DistanceM(), alpha1, alpha2);
        }
        if (p.SinBeta1 == 0 && p.SinBeta2 == 0 && p.TurnDeg <= (1 - Wgs84.F) * 180)
        {
            var due = new Direction(1, 0);
            return (Wgs84.A * Degrees.ToRadians(p.TurnDeg), due, due);
        }
        var start = Start(p);
        return start.Arc < ShortArc ? ShortLine(p, start) : Newton(p, start.Alpha1);
    }

    private static SphereStart Start(PointPair p)
    {
        var mean = (p.CosBeta1 + p.CosBeta2) / 2;
        var w = Math.Sqrt(1 - Wgs84.E2 * mean * mean);
        var (s, c) = Math.SinCos(Degrees.ToRadians(p.TurnDeg) / w);
        var difference = p.SinBeta2 * p.CosBeta1 - p.CosBeta2 * p.SinBeta1;
        var sum = p.SinBeta2 * p.CosBeta1 + p.CosBeta2 * p.SinBeta1;
        var sin = p.CosBeta2 * s;
        // Both forms are the same angle; each keeps its digits on its own half of the turn.
        var cos = c >= 0
            ? difference + p.CosBeta2 * p.SinBeta1 * s * s / (1 + c)
            : sum - p.CosBeta2 * p.SinBeta1 * s * s / (1 - c);
        var arc = Math.Sqrt(sin * sin + cos * cos);
        var alpha1 = sin > 0 ? Direction.Of(sin, cos) : new Direction(1, 0);
        return new SphereStart(alpha1, arc, s, c, difference);
    }

    private static (double, Direction, Direction) ShortLine(PointPair p, SphereStart start)
    {
        var (s, c) = (start.SinOmega, start.CosOmega);
        var alpha2 = Direction.Of(p.CosBeta1 * s, start.Difference - p.CosBeta1 * p.SinBeta2 * s * s / (1 + c));
        var sinMid = (p.SinBeta1 + p.SinBeta2) / 2;
        var arc = Math.Atan2(start.Arc, p.SinBeta1 * p.SinBeta2 + p.CosBeta1 * p.CosBeta2 * c);
        return (Wgs84.B * arc * Math.Sqrt(1 + Wgs84.Ep2 * sinMid * sinMid), start.Alpha1, alpha2);
    }

    private static (double, Direction, Direction) Newton(PointPair p, Direction alpha1)
    {
        var low = new Direction(Wgs84.Tiny, 1);
        var high = new Direction(Wgs84.Tiny, -1);
        var arc = new GeodesicArc(p, alpha1);
        for (var step = 0; step < 100; step++)
        {
            var (v, slope) = arc.LongitudeError(p);
            var close = Math.Abs(v) < 2e-15;
            // A last step sharpens the azimuth of nearly opposite points, but only where the slope is more than noise.
            if (close && !(Math.Abs(v) < 1e-9 * slope)) break;
            if (v > 0 && alpha1.Cos / alpha1.Sin > high.Cos / high.Sin) high = alpha1;
            else if (v < 0 && alpha1.Cos / alpha1.Sin < low.Cos / low.Sin) low = alpha1;
            alpha1 = Next(alpha1, -v / slope, slope, low, high);
            arc = new GeodesicArc(p, alpha1);
            if (close) break;
        }
        return (arc.DistanceM(), arc.Alpha1, arc.Alpha2);
    }

    private static Direction Next(Direction alpha1, double turn, double slope, Direction low, Direction high)
    {
        var (s, c) = Math.SinCos(turn);
        var sin = alpha1.Sin * c + alpha1.Cos * s;
        return slope > 0 && Math.Abs(turn) < Math.PI && sin > 0
            ? Direction.Of(sin, alpha1.Cos * c - alpha1.Sin * s)
            : Direction.Of((low.Sin + high.Sin) / 2, (low.Cos + high.Cos) / 2);
    }

    private readonly record struct SphereStart(Direction Alpha1, double Arc, double SinOmega, double CosOmega, double Difference);
}
