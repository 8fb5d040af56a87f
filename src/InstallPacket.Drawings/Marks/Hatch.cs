namespace InstallPacket.Drawings.Marks;

/// <summary>Slanting lines that fill a box.</summary>
internal static class Hatch
{
    /// <summary>Draws lines that climb to the right, cut off at the edges of the box.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="box">The box.</param>
    /// <param name="pen">How the lines are drawn.</param>
    /// <param name="stepMm">Distance between lines along the lower edge.</param>
    public static void Draw(SheetCanvas canvas, PaperBox box, Pen pen, double stepMm)
    {
        // Each line is named by where it would meet the lower edge; those that start left of the box enter through its side.
        for (var foot = box.Left - box.Height + stepMm / 2; foot < box.Right; foot += stepMm)
        {
            var (from, to) = (Math.Max(foot, box.Left), Math.Min(foot + box.Height, box.Right));
            if (to - from > 0.05) canvas.Line(pen, new(from, box.Bottom - (from - foot)), new(to, box.Bottom - (to - foot)));
        }
    }
}
