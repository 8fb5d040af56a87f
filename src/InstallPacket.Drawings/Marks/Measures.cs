namespace InstallPacket.Drawings.Marks;

/// <summary>Lines of measure with a tick at each end.</summary>
internal static class Measures
{
    private const double SizeMm = 3.2;
    private const double TickMm = 1.2;

    /// <summary>A level measure; its words stand above the line, or beside it when they are wider.</summary>
    public static void Level(SheetCanvas canvas, double left, double right, double y, string words, Ink ink = Ink.Line)
    {
        var pen = new Pen(ink, 0.3);
        canvas.Line(pen, new(left, y), new(right, y));
        foreach (var x in new[] { left, right }) canvas.Line(pen, new(x, y - TickMm), new(x, y + TickMm));
        var wide = canvas.Measure.WidthMm(words, SizeMm) > right - left - 1;
        canvas.Text(wide ? new Caption(new(right + 1.5, y + 1.1), words, SizeMm, ink)
            : new Caption(new((left + right) / 2, y - 1), words, SizeMm, ink, Anchor.Middle));
    }

    /// <summary>An upright measure without words; its note stands elsewhere.</summary>
    public static void Upright(SheetCanvas canvas, double x, double top, double bottom, Ink ink = Ink.Line)
    {
        var pen = new Pen(ink, 0.3);
        canvas.Line(pen, new(x, top), new(x, bottom));
        foreach (var y in new[] { top, bottom }) canvas.Line(pen, new(x - TickMm, y), new(x + TickMm, y));
    }
}
