namespace InstallPacket.Drawings.Marks;

/// <summary>Directions on the sheet: degrees clockwise from the upper edge.</summary>
internal static class Polar
{
    /// <summary>The point at a distance in a direction.</summary>
    public static PaperPoint From(PaperPoint centre, double bearingDeg, double mm)
    {
        var (sin, cos) = Math.SinCos(bearingDeg * Math.PI / 180);
        return new(centre.X + mm * sin, centre.Y - mm * cos);
    }

    /// <summary>The direction from one point to another, 0 &lt;= value &lt; 360.</summary>
    public static double BearingDeg(PaperPoint from, PaperPoint to)
    {
        var deg = Math.Atan2(to.X - from.X, from.Y - to.Y) * 180 / Math.PI;
        return deg < 0 ? deg + 360 : deg;
    }

    public static double Distance(PaperPoint a, PaperPoint b) => Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    /// <summary>Points along an arc, close enough to look round.</summary>
    public static PaperPoint[] Arc(PaperPoint centre, double radius, double fromDeg, double sweepDeg)
    {
        var steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(sweepDeg) / 3));
        return [.. Enumerable.Range(0, steps + 1).Select(i => From(centre, fromDeg + sweepDeg * i / steps, radius))];
    }
}
