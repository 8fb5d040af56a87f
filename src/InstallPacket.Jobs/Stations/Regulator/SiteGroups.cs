using InstallPacket.Calc.Siting;

namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>Puts transmitters that stand close together into sites.</summary>
internal static class SiteGroups
{
    /// <summary>Greatest distance from the first transmitter of a site [m].</summary>
    public const double ReachM = 300;

    // Cells of a sphere are a little wider than the reach, because the earth is no sphere; a neighbour is never two cells away.
    private const double CellM = 310;
    private const double SphereM = 6371000;

    /// <summary>The site of each point: the first one founded within reach, otherwise a new one.</summary>
    /// <param name="points">Latitude and longitude [deg].</param>
    /// <returns>A number for each point; sites are numbered from 0 in the order in which they are founded.</returns>
    public static int[] Of(IReadOnlyList<(double LatitudeDeg, double LongitudeDeg)> points)
    {
        var founders = new List<(double LatitudeDeg, double LongitudeDeg)>();
        var cells = new Dictionary<(int, int, int), List<int>>();
        return [.. points.Select(p => Near(p, founders, cells) ?? Found(p, founders, cells))];
    }

    private static int? Near((double LatitudeDeg, double LongitudeDeg) p, List<(double LatitudeDeg, double LongitudeDeg)> founders,
        Dictionary<(int, int, int), List<int>> cells)
    {
        int? best = null;
        foreach (var site in Around(Cell(p)).SelectMany(c => cells.GetValueOrDefault(c) ?? []))
            if ((best is null || site < best)
                && Geodesic.Inverse(p.LatitudeDeg, p.LongitudeDeg, founders[site].LatitudeDeg,
                founders[site].LongitudeDeg).DistanceM <= ReachM)
                best = site;
        return best;
    }

    private static int Found((double LatitudeDeg, double LongitudeDeg) p, List<(double LatitudeDeg, double LongitudeDeg)> founders,
        Dictionary<(int, int, int), List<int>> cells)
    {
        var cell = Cell(p);
        if (!cells.TryGetValue(cell, out var here)) cells[cell] = here = [];
        here.Add(founders.Count);
        founders.Add(p);
        return founders.Count - 1;
    }

    private static (int X, int Y, int Z) Cell((double LatitudeDeg, double LongitudeDeg) p)
    {
        var (latitude, longitude) = (double.DegreesToRadians(p.LatitudeDeg), double.DegreesToRadians(p.LongitudeDeg));
        static int Index(double share) => (int)Math.Floor(share * SphereM / CellM);
        return (Index(Math.Cos(latitude) * Math.Cos(longitude)), Index(Math.Cos(latitude) * Math.Sin(longitude)),
            Index(Math.Sin(latitude)));
    }

    private static IEnumerable<(int, int, int)> Around((int X, int Y, int Z) c)
    {
        for (var x = -1; x <= 1; x++)
            for (var y = -1; y <= 1; y++)
                for (var z = -1; z <= 1; z++) yield return (c.X + x, c.Y + y, c.Z + z);
    }
}
