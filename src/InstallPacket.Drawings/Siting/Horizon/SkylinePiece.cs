using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>A stretch of skyline that is known in one way.</summary>
/// <param name="From">How: as in the plan.</param>
/// <param name="Points">Turn from the aim and angle, from left to right; the angles of an unknown stretch are not numbers.</param>
internal sealed record SkylinePiece(string From, IReadOnlyList<(double TurnDeg, double AngleDeg)> Points)
{
    /// <summary>Whether nothing is known here.</summary>
    public bool Unknown => double.IsNaN(Points[0].AngleDeg);

    /// <summary>Cuts the skyline where its origin changes, half way between two points, and at the seam behind the antenna.</summary>
    /// <param name="skyline">The skyline of the plan.</param>
    /// <param name="aimDeg">True bearing in the middle.</param>
    public static IReadOnlyList<SkylinePiece> Of(IReadOnlyList<SkylinePoint> skyline, double aimDeg)
    {
        if (skyline.Count == 0) return [];
        var points = skyline.Select(p =>
            (Turn: Bearing.Turn(aimDeg, p.BearingTrueDeg), Angle: p.AngleDeg ?? double.NaN, p.From)).OrderBy(p => p.Turn).ToArray();
        var pieces = new List<(string From, List<(double, double)> Points)>();
        for (var i = 0; i <= points.Length; i++)
        {
            // Around the circle: the last point stands before the first one, and the first one behind the last.
            var a = i > 0 ? points[i - 1] : points[^1] with { Turn = points[^1].Turn - 360 };
            var b = i < points.Length ? points[i] : points[0] with { Turn = points[0].Turn + 360 };
            var middle = (a.Turn + b.Turn) / 2;
            var between = double.IsNaN(a.Angle) ? b.Angle : double.IsNaN(b.Angle) ? a.Angle : (a.Angle + b.Angle) / 2;
            Add(pieces, a.From, (a.Turn, a.Angle), (middle, double.IsNaN(a.Angle) ? double.NaN : between));
            Add(pieces, b.From, (middle, double.IsNaN(b.Angle) ? double.NaN : between), (b.Turn, b.Angle));
        }
        return [.. pieces.Select(p => new SkylinePiece(p.From, p.Points))];
    }

    private static void Add(List<(string From, List<(double Turn, double)> Points)> pieces, string from, (double Turn, double Angle) a,
        (double Turn, double Angle) b)
    {
        var (left, right) = (Math.Max(a.Turn, -180), Math.Min(b.Turn, 180));
        if (left >= right) return;
        double At(double turn) => a.Angle + (b.Angle - a.Angle) * (turn - a.Turn) / (b.Turn - a.Turn);
        if (pieces.Count == 0 || pieces[^1].From != from) pieces.Add((from, [(left, At(left))]));
        pieces[^1].Points.Add((right, At(right)));
    }
}
