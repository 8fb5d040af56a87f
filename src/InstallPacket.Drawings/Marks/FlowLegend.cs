namespace InstallPacket.Drawings.Marks;

/// <summary>An entry of a legend.</summary>
/// <param name="Words">What the sample means.</param>
/// <param name="Sample">Draws the sample from its left end, <see cref="FlowLegend.SampleMm"/> wide.</param>
internal sealed record LegendEntry(string Words, Action<PaperPoint> Sample);

/// <summary>A legend whose entries flow from left to right and on to the next line, as words do.</summary>
internal static class FlowLegend
{
    /// <summary>Width of a sample.</summary>
    public const double SampleMm = 11;

    private const double SizeMm = 3.2;
    private const double RowMm = 6;

    /// <summary>Draws it and gives its lower edge.</summary>
    public static double Draw(SheetCanvas canvas, IEnumerable<LegendEntry> entries, PaperPoint corner, double right)
    {
        var (x, y) = (corner.X, corner.Y);
        foreach (var entry in entries)
        {
            var needed = SampleMm + 2 + canvas.Measure.WidthMm(entry.Words, SizeMm) + 6;
            if (x + needed > right && x > corner.X) (x, y) = (corner.X, y + RowMm);
            entry.Sample(new(x, y));
            canvas.Text(new(new(x + SampleMm + 2, y + 1.1), entry.Words, SizeMm));
            x += needed;
        }
        return y + RowMm / 2;
    }
}
