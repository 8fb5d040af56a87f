using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>Parts of a profile in which something holds.</summary>
internal static class Stretch
{
    /// <summary>Runs of points with a positive margin; each begins and ends where the margin passes zero on the line between two
    /// points.</summary>
    public static IEnumerable<IReadOnlyList<PathPoint>> Of(IReadOnlyList<PathPoint> points, Func<PathPoint, double> margin)
    {
        var run = new List<PathPoint>();
        for (var i = 0; i < points.Count; i++)
        {
            var (here, before) = (margin(points[i]), i > 0 ? margin(points[i - 1]) : 0);
            if (i > 0 && here > 0 != before > 0) run.Add(Between(points[i - 1], points[i], before / (before - here)));
            if (here > 0) run.Add(points[i]);
            if (run.Count == 0 || (here > 0 && i < points.Count - 1)) continue;
            if (run.Count > 1) yield return [.. run];
            run.Clear();
        }
    }

    private static PathPoint Between(PathPoint a, PathPoint b, double share)
    {
        double At(Func<PathPoint, double> value) => value(a) + (value(b) - value(a)) * share;
        return new(At(p => p.DistanceKm), At(p => p.GroundM), At(p => p.CurvedM), At(p => p.BulgeM), At(p => p.RayM), At(p => p.FresnelM));
    }
}
