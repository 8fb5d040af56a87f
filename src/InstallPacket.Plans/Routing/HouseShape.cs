namespace InstallPacket.Plans.Routing;

/// <summary>Where a place is, as seen from the house.</summary>
internal enum HouseSide
{
    /// <summary>In the open.</summary>
    Outside,

    /// <summary>On the outer face of wall or roof.</summary>
    Face,

    /// <summary>Within the walls and under the roof.</summary>
    Inside,

    /// <summary>Between eaves and ridge of a roof whose form the job does not tell.</summary>
    Unknown,
}

/// <summary>Where a leg goes through wall or roof.</summary>
internal sealed record Pierce(double RightM, double UpM, double HeightM, bool ByRoof);

/// <summary>The body of the house: footprint, walls up to the eaves, and the roof over the box around the footprint.</summary>
internal sealed class HouseShape(House house)
{
    /// <summary>Nearer than this a point counts as on the face.</summary>
    public const double FaceM = 0.02;

    private const int SamplesPerPiece = 16;
    private readonly double _left = house.Footprint.Min(c => c.Right), _right = house.Footprint.Max(c => c.Right);
    private readonly double _lower = house.Footprint.Min(c => c.Up), _upper = house.Footprint.Max(c => c.Up);

    private IEnumerable<((double X, double Y) A, (double X, double Y) B)> Walls =>
        house.Footprint.Select((c, i) => (c, house.Footprint[(i + 1) % house.Footprint.Count]));

    /// <summary>Two walls that cross, by their numbers, and where; null in a sound footprint.</summary>
    public (int First, int Second, double RightM, double UpM)? Crossing()
    {
        var walls = Walls.ToArray();
        for (var i = 0; i < walls.Length; i++)
            for (var k = i + 2; k < walls.Length; k++)
                if ((i > 0 || k < walls.Length - 1) && Cut(walls[i].A, walls[i].B, walls[k].A, walls[k].B) is { } t)
                    return (i + 1, k + 1, walls[i].A.X + t * (walls[i].B.X - walls[i].A.X), walls[i].A.Y
                        + t * (walls[i].B.Y - walls[i].A.Y));
        return null;
    }

    /// <summary>How far outside the footprint a place is [m]; 0 within it.</summary>
    public double BeyondM(double x, double y) => Within(house.Footprint, x, y) ? 0 : WallDistance(x, y);

    /// <summary>Height of the roof over a place [m]; null when its form is unknown.</summary>
    public double? RoofM(double x, double y)
    {
        var rise = house.Ridge.Metres - house.Eaves.Metres;
        double Along(double at, double from, double to) => 1 - Math.Abs(at - (from + to) / 2) / Math.Max(1e-9, (to - from) / 2);
        double? share = (house.Roof, house.RidgeAlong) switch
        {
            (RoofForm.Flat, _) => 0,
            (RoofForm.Gable, RidgeAxis.Right) => Along(y, _lower, _upper),
            (RoofForm.Gable, RidgeAxis.Up) => Along(x, _left, _right),
            (RoofForm.Hip, _) =>
                Math.Min(1,
                new[] { x - _left, _right - x, y - _lower, _upper - y }.Min() / Math.Max(1e-9,
                Math.Min(_right - _left, _upper - _lower) / 2)),
            _ => null,
        };
        return share is { } s ? house.Eaves.Metres + Math.Clamp(s, 0, 1) * rise : null;
    }

    /// <summary>Where a place is.</summary>
    public HouseSide At(double x, double y, double z)
    {
        var onWall = WallDistance(x, y) <= FaceM;
        if (!onWall && !Within(house.Footprint, x, y)) return HouseSide.Outside;
        var roof = RoofM(x, y);
        if (onWall) return z <= (roof ?? house.Ridge.Metres) + FaceM ? HouseSide.Face : HouseSide.Outside;
        if (z < Math.Min(house.Eaves.Metres, roof ?? house.Eaves.Metres) - FaceM) return HouseSide.Inside;
        if (roof is not { } top) return z <= house.Ridge.Metres + FaceM ? HouseSide.Unknown : HouseSide.Outside;
        return z < top - FaceM ? HouseSide.Inside : z <= top + FaceM ? HouseSide.Face : HouseSide.Outside;
    }

    /// <summary>Where a straight leg goes in or out.</summary>
    public IReadOnlyList<Pierce> Pierces(HousePoint a, HousePoint b)
    {
        (double X, double Y, double Z) At(double t) =>
            (a.RightM + t * (b.RightM - a.RightM), a.UpM + t * (b.UpM - a.UpM), a.HeightM + t * (b.HeightM - a.HeightM));
        HouseSide Side(double t) { var p = At(t); return this.At(p.X, p.Y, p.Z); }
        double[] cuts = [0, .. Walls.Select(w => Cut((a.RightM, a.UpM), (b.RightM, b.UpM), w.A, w.B)).OfType<double>().Order(), 1];
        var times = cuts.Zip(cuts.Skip(1)).SelectMany(c =>
            Enumerable.Range(0, SamplesPerPiece).Select(i => c.First
            + (c.Second - c.First) * (i + 0.5) / SamplesPerPiece)).Prepend(0).Append(1);
        // A cable that lies on the face is still outdoors.
        var known = times.Select(t => (T: t, Side: Side(t))).Where(s => s.Side != HouseSide.Unknown).ToArray();
        var found = new List<Pierce>();
        for (var i = 1; i < known.Length; i++)
        {
            var inside = known[i].Side == HouseSide.Inside;
            if (inside == (known[i - 1].Side == HouseSide.Inside)) continue;
            var (from, to) = (known[i - 1].T, known[i].T);
            for (var n = 0; n < 40; n++)
            {
                var middle = (from + to) / 2;
                if ((Side(middle) == HouseSide.Inside) == inside) to = middle;
                else from = middle;
            }
            var p = At(to);
            found.Add(new(p.X, p.Y, p.Z, WallDistance(p.X, p.Y) > 2 * FaceM));
        }
        return found;
    }

    /// <summary>The room around a place, or null.</summary>
    public Room? RoomAt(double x, double y, double z)
    {
        var storey = house.Storeys.Where(s => s.FloorM <= z + 1e-6).MaxBy(s => s.FloorM);
        return house.Rooms.FirstOrDefault(r => r.Storey.Value == storey?.Name
            && (Within(r.Corners, x, y) || Distance(r.Corners, x, y) <= FaceM));
    }

    private double WallDistance(double x, double y) => Distance(house.Footprint, x, y);

    private static double Distance(IReadOnlyList<(double Right, double Up)> polygon, double x, double y) =>
        polygon.Select((a, i) => ToLine(a, polygon[(i + 1) % polygon.Count], x, y)).Min();

    private static double ToLine((double X, double Y) a, (double X, double Y) b, double x, double y)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length2 = dx * dx + dy * dy;
        var t = length2 > 0 ? Math.Clamp(((x - a.X) * dx + (y - a.Y) * dy) / length2, 0, 1) : 0;
        var (px, py) = (x - a.X - t * dx, y - a.Y - t * dy);
        return Math.Sqrt(px * px + py * py);
    }

    // Counts the walls to the right of the place: an odd number means within.
    private static bool Within(IReadOnlyList<(double Right, double Up)> polygon, double x, double y)
    {
        var odd = false;
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            if (a.Up > y != b.Up > y && x < a.Right + (y - a.Up) / (b.Up - a.Up) * (b.Right - a.Right)) odd = !odd;
        }
        return odd;
    }

    // Where along the first line the second crosses it; null when they are parallel or miss each other.
    private static double? Cut((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d)
    {
        var (rx, ry, sx, sy) = (b.X - a.X, b.Y - a.Y, d.X - c.X, d.Y - c.Y);
        var cross = rx * sy - ry * sx;
        if (Math.Abs(cross) < 1e-12) return null;
        var t = ((c.X - a.X) * sy - (c.Y - a.Y) * sx) / cross;
        var u = ((c.X - a.X) * ry - (c.Y - a.Y) * rx) / cross;
        return t is >= 0 and <= 1 && u is >= 0 and <= 1 ? t : null;
    }
}
