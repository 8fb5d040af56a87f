namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>A label beside the ring.</summary>
/// <param name="Pin">Index of its pin.</param>
/// <param name="Right">Whether it stands in the right column.</param>
/// <param name="Lines">Name lines, then facts.</param>
/// <param name="Names">How many of the lines are the name.</param>
/// <param name="Ideal">Middle height at which it would like to stand.</param>
internal sealed record RingLabel(int Pin, bool Right, IReadOnlyList<string> Lines, int Names, double Ideal)
{
    public const double SizeMm = 3.4;
    public const double LeadMm = 4.1;

    public double Height => Lines.Count * LeadMm;
}

/// <summary>Stacks labels in a column left and right of the ring, in the order of their bearings, so that leaders do not cross.</summary>
internal static class RingLabels
{
    public const double ColumnMm = 26;
    private const double GapMm = 2.4;

    public static IReadOnlyList<RingLabel> Of(IReadOnlyList<RingPin> pins, double[] spread, RingGeometry ring, ITextMeasure measure) =>
        [.. Enumerable.Range(0, pins.Count).Where(i => pins[i].Name.Length > 0).Select(i =>
        {
            var at = ring.At(spread[i], ring.Lane + 4);
            var strong = pins[i].Kind == PinKind.WantedSite;
            var name = TextWrap.Lines(pins[i].Sign.Length > 0 ? pins[i].Sign + "\u00A0" + pins[i].Name : pins[i].Name, RingLabel.SizeMm,
                strong, ColumnMm, 3, measure);
            return new RingLabel(i, at.X >= ring.Centre.X, [.. name, .. pins[i].Facts], name.Count, at.Y);
        })];

    /// <summary>Height that the fuller column needs.</summary>
    public static double Needed(IReadOnlyList<RingLabel> labels) =>
        labels.GroupBy(l => l.Right).Select(side => side.Sum(l => l.Height + GapMm)).DefaultIfEmpty(0).Max();

    /// <summary>Upper edges of the labels of both columns, by pin.</summary>
    public static IReadOnlyDictionary<int, double> Tops(IReadOnlyList<RingLabel> labels, double top, double bottom)
    {
        var tops = new Dictionary<int, double>();
        foreach (var side in labels.GroupBy(l => l.Right))
        {
            var column = side.OrderBy(l => l.Ideal).ThenBy(l => l.Pin).ToArray();
            var edges = ColumnStack.Tops([.. column.Select(l => (l.Ideal, l.Height))], GapMm, top, bottom);
            for (var i = 0; i < column.Length; i++) tops[column[i].Pin] = edges[i];
        }
        return tops;
    }
}
