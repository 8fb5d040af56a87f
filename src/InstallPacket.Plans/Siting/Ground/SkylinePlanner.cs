using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>The skyline around the antenna: measured where the survey gives it, else by the tiles.</summary>
internal sealed class SkylinePlanner(Job job, CompassPlan compass, ITerrain? terrain)
{
    private const int StepDeg = 2;
    private const double NearestM = 90;   // nearer than a cell of a 3 arc-second tile the tile knows only the house itself
    private const double FarthestM = 40000;
    private const double NearHoleM = 10000; // a hole nearer than this may hide the skyline itself (our rule)

    public IReadOnlyList<SkylinePoint> Plan()
    {
        if (terrain is null && job.Siting.Horizon.Count == 0) return [];
        return [.. Enumerable.Range(0, 360 / StepDeg).Select(i => Point(i * StepDeg))];
    }

    private SkylinePoint Point(double bearing)
    {
        var arc = job.Siting.Horizon.FirstOrDefault(h =>
            Math.Abs(Bearing.Turn(TrueBearing.Of(h.Bearing, compass), bearing)) <= h.WidthDeg / 2);
        if (arc is not null) return new(bearing, arc.AngleDeg, null, "measured");
        return terrain is not null && Highest(terrain, bearing) is { } top
            ? new(bearing, top.AngleDeg, top.DistanceM / 1000, top.Whole ? "tiles" : "tiles in part") : new(bearing, null, null, "unknown");
    }

    // Steps grow with distance: a hill of one degree is as wide as its distance / 57.
    private (double AngleDeg, double DistanceM, bool Whole)? Highest(ITerrain tiles, double bearing)
    {
        var (lat, lon) = (job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value);
        if (!Known(tiles.At(lat, lon), out var own)) return null;
        own += job.Siting.AntennaHeight.Value.Metres;
        var walk = new GeodesicWalk(lat, lon, bearing, FarthestM);
        var best = (AngleDeg: double.NegativeInfinity, DistanceM: 0.0);
        double unknownM = 0, firstHoleM = double.PositiveInfinity;
        for (double d = NearestM, step; d <= FarthestM; d += step)
        {
            step = Math.Max(60, d / 150);
            var (pointLat, pointLon) = walk.At(d);
            if (!Known(tiles.At(pointLat, pointLon), out var height))
            {
                unknownM += step;
                firstHoleM = Math.Min(firstHoleM, d);
                continue;
            }
            var angle = EffectiveEarth.ElevationAngleDeg(own, height, d);
            if (angle > best.AngleDeg) best = (angle, d);
        }
        var whole = unknownM <= PathSampler.BridgeM;
        return double.IsInfinity(best.AngleDeg) || (!whole && firstHoleM < NearHoleM) ? null : (best.AngleDeg, best.DistanceM, whole);
    }

    private static bool Known(GroundHeight ground, out double heightM)
    {
        heightM = ground.HeightM;
        return ground.State is HeightState.Known or HeightState.Partial;
    }
}
