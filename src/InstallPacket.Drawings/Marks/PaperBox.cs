namespace InstallPacket.Drawings.Marks;

/// <summary>An upright rectangle on the sheet, in millimetres, y downwards.</summary>
internal readonly record struct PaperBox(double Left, double Top, double Right, double Bottom)
{
    // Shared edges are no overlap; the slack also swallows the last bits of a sum.
    private const double SlackMm = 1e-6;

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public PaperBox Grow(double mm) => new(Left - mm, Top - mm, Right + mm, Bottom + mm);

    public bool Overlaps(PaperBox other) =>
        Left < other.Right - SlackMm && other.Left < Right - SlackMm && Top < other.Bottom - SlackMm && other.Top < Bottom - SlackMm;

    public bool Holds(PaperBox other) =>
        other.Left >= Left - SlackMm && other.Right <= Right + SlackMm && other.Top >= Top - SlackMm && other.Bottom <= Bottom + SlackMm;

    /// <summary>Whether a straight line passes through the rectangle (clipping by its four sides, after Liang and Barsky).</summary>
    public bool CutBy(PaperPoint a, PaperPoint b)
    {
        var (from, to) = (0.0, 1.0);
        foreach (var (move, room) in new[] { (a.X - b.X, a.X - Left), (b.X - a.X, Right - a.X), (a.Y - b.Y, a.Y - Top),
            (b.Y - a.Y, Bottom - a.Y) })
        {
            if (Math.Abs(move) < SlackMm)
            {
                if (room <= 0) return false;
                continue;
            }
            if (move < 0) from = Math.Max(from, room / move);
            else to = Math.Min(to, room / move);
        }
        return from < to - SlackMm;
    }

    public static PaperBox Around(PaperPoint centre, double halfWidth, double halfHeight) =>
        new(centre.X - halfWidth, centre.Y - halfHeight, centre.X + halfWidth, centre.Y + halfHeight);

    /// <summary>The ground that a caption covers, turned ones by the rectangle around them.</summary>
    public static PaperBox Of(Caption c, ITextMeasure measure)
    {
        var width = measure.WidthMm(c.Text, c.SizeMm, c.Strong);
        var left = c.Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
        var (sin, cos) = Math.SinCos(c.TurnDeg * Math.PI / 180);
        // Capitals reach 0.72 of the size above the base line, tails 0.22 below it, in the faces of the theme.
        PaperPoint[] corners = [.. from x in new[] { left, left + width } from y in new[] { -0.72 * c.SizeMm, 0.22 * c.SizeMm }
            select new PaperPoint(c.At.X + x * cos - y * sin, c.At.Y + x * sin + y * cos)];
        return new(corners.Min(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.X), corners.Max(p => p.Y));
    }
}
