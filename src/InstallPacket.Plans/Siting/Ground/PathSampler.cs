using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>Samples tiles, or a measured profile, along the geodesic from the antenna.</summary>
internal sealed class PathSampler(double latitudeDeg, double longitudeDeg, ITerrain? terrain)
{
    /// <summary>Longest hole that is bridged by a straight line [m]: three cells of a 3 arc-second tile (our rule).</summary>
    public const double BridgeM = 300;

    // Enough for the finest tiles at 120 km; more samples only repeat what the tile says.
    private const int MostSteps = 4000;
    private const double MetresPerArcSecond = 30.87;

    /// <summary>The path by the tiles; null without tiles.</summary>
    public GroundPath? Tiles(GeodesicLine line)
    {
        if (terrain is null) return null;
        terrain.At(latitudeDeg, longitudeDeg); // opens the tile of the house, so that the spacing is that of real tiles
        var steps = Math.Clamp((int)Math.Ceiling(line.DistanceM / (terrain.SpacingArcSeconds * MetresPerArcSecond)), 8, MostSteps);
        var walk = new GeodesicWalk(latitudeDeg, longitudeDeg, line.AzimuthDeg, line.DistanceM);
        var stepM = line.DistanceM / steps;
        var heights = new double[steps + 1];
        for (var i = 0; i <= steps; i++)
        {
            var (lat, lon) = walk.At(i * stepM);
            var ground = terrain.At(lat, lon);
            heights[i] = ground.State is HeightState.Known or HeightState.Partial ? ground.HeightM : double.NaN;
        }
        return Bridge(heights, stepM);
    }

    /// <summary>A measured profile at equal steps, with straight lines between its points.</summary>
    public static GroundPath Measured(MeasuredProfile profile, double distanceM)
    {
        var points = profile.Points;
        var steps = Math.Clamp((int)Math.Ceiling(distanceM / 50), 8, MostSteps);
        var heights = new double[steps + 1];
        for (int i = 0, leg = 0; i <= steps; i++)
        {
            var at = Math.Min(i * distanceM / steps, points[^1].DistanceM);
            while (leg < points.Count - 2 && points[leg + 1].DistanceM < at) leg++;
            var (a, b) = (points[leg], points[leg + 1]);
            heights[i] = a.GroundM + (b.GroundM - a.GroundM) * Math.Clamp((at - a.DistanceM) / (b.DistanceM - a.DistanceM), 0, 1);
        }
        return new GroundPath(heights, distanceM / steps, "measured", 0, 0);
    }

    private static GroundPath Bridge(double[] heights, double stepM)
    {
        int bridged = 0, hole = 0;
        for (var i = 0; i < heights.Length; i++)
        {
            if (!double.IsNaN(heights[i])) continue;
            var end = i;
            while (end < heights.Length && double.IsNaN(heights[end])) end++;
            var atAnEnd = i == 0 || end == heights.Length;
            if (atAnEnd || (end - i + 1) * stepM > BridgeM) hole += end - i;
            else
            {
                for (var k = i; k < end; k++) heights[k] = heights[i - 1] + (heights[end] - heights[i - 1]) * (k - i + 1) / (end - i + 1);
                bridged += end - i;
            }
            i = end;
        }
        return hole == 0 ? new(heights, stepM, "tiles", bridged, 0) : new([], stepM, "tiles", bridged, hole * stepM);
    }
}
