namespace InstallPacket.Jobs.Layers;

/// <summary>A wall of the house.</summary>
/// <param name="Number">From 1; number 1 runs from the first corner of the footprint to the second.</param>
/// <param name="FacesDeg">True bearing to which its outer side looks [deg].</param>
/// <param name="LengthM">Length [m].</param>
/// <param name="AlongDeg">True bearing from its first corner to its second [deg].</param>
/// <param name="StartsLeft">Whether its first corner is on the left of somebody who faces it from outside.</param>
internal sealed record HouseWall(int Number, double FacesDeg, double LengthM, double AlongDeg, bool StartsLeft)
{
    /// <summary>Whether its corner toward a bearing is the first one; null when neither lies clearly there.</summary>
    public bool? StartsAt(double bearingDeg) => HouseWalls.Apart(AlongDeg, bearingDeg) switch { < 80 => false, > 100 => true, _ => null };
}

/// <summary>The walls of a footprint by the way they face.</summary>
internal sealed class HouseWalls
{
    private const double ClearDeg = 44.9;
    private readonly HouseWall[] _walls;

    /// <summary>The walls of a footprint.</summary>
    /// <param name="corners">Right and up on the plan [m].</param>
    /// <param name="planUpDeg">True bearing of the plan's upward axis [deg].</param>
    public HouseWalls(IReadOnlyList<(double Right, double Up)> corners, double planUpDeg)
    {
        PlanUpDeg = planUpDeg;
        double Area(int i) => corners[i].Right * corners[(i + 1) % corners.Count].Up - corners[(i + 1) % corners.Count].Right * corners[i].Up;
        var leftTurning = Enumerable.Range(0, corners.Count).Sum(Area) > 0;
        _walls = [.. Enumerable.Range(0, corners.Count).Select(i => Wall(i, corners[i], corners[(i + 1) % corners.Count], leftTurning))];
    }

    /// <summary>True bearing of the plan's upward axis [deg].</summary>
    public double PlanUpDeg { get; }

    /// <summary>The one wall that faces a bearing; null when none or several do.</summary>
    public HouseWall? Facing(double bearingDeg)
    {
        var facing = _walls.Where(w => w.LengthM > 0 && Apart(w.FacesDeg, bearingDeg) < ClearDeg).ToArray();
        return facing.Length == 1 ? facing[0] : null;
    }

    /// <summary>The wall of a number; null when there is none.</summary>
    public HouseWall? Numbered(int number) => _walls.FirstOrDefault(w => w.Number == number && w.LengthM > 0);

    private HouseWall Wall(int index, (double Right, double Up) a, (double Right, double Up) b, bool leftTurning)
    {
        var (right, up) = (b.Right - a.Right, b.Up - a.Up);
        var along = Turned(Math.Atan2(right, up) * 180 / Math.PI + PlanUpDeg);
        return new(index + 1, Turned(along + (leftTurning ? 90 : -90)), Math.Sqrt(right * right + up * up), along, leftTurning);
    }

    private static double Turned(double deg) => ((deg % 360) + 360) % 360;

    /// <summary>The angle between two bearings [deg].</summary>
    internal static double Apart(double a, double b) => Math.Abs(Turned(a - b + 180) - 180);
}
