namespace InstallPacket.Drawings.Marks;

/// <summary>The sign of the antenna, whatever its kind: three rungs of falling width on a short stem.</summary>
internal static class AntennaMark
{
    /// <summary>Draws it on its foot.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="foot">Lower end of the stem.</param>
    /// <param name="size">1 for a mark 8.4 mm wide.</param>
    public static void Draw(SheetCanvas canvas, PaperPoint foot, double size = 1)
    {
        var pen = new Pen(Ink.Line, size < 1 ? 0.5 : 0.7);
        for (var i = 0; i < 3; i++)
        {
            var (y, half) = (foot.Y - size * (0.4 + i * 1.5), size * (4.2 - i * 1.1));
            canvas.Line(pen, new(foot.X - half, y), new(foot.X + half, y));
        }
        canvas.Line(pen, foot, foot with { Y = foot.Y - 4 * size });
    }
}
