namespace InstallPacket.Drawings.Marks;

/// <summary>Collects the marks of a sheet in painting order.</summary>
internal sealed class SheetCanvas(ITextMeasure measure)
{
    private readonly List<Shape> _shapes = [];

    public IReadOnlyList<Shape> Shapes => _shapes;

    public ITextMeasure Measure => measure;

    public void Line(Pen pen, params PaperPoint[] points) => _shapes.Add(new Polyline(points, pen));

    public void Area(Pen pen, Fill fill, params PaperPoint[] points) => _shapes.Add(new Polyline(points, pen, Closed: true, fill));

    public void Box(PaperBox b, Pen pen, Fill fill) =>
        Area(pen, fill, new(b.Left, b.Top), new(b.Right, b.Top), new(b.Right, b.Bottom), new(b.Left, b.Bottom));

    public void Ring(PaperPoint centre, double radius, Pen pen, Fill fill = Fill.None) =>
        _shapes.Add(new Circle(centre, radius, pen, fill));

    public void Text(Caption caption) => _shapes.Add(caption);

    /// <summary>A text whose capitals stand centred on a point.</summary>
    public Caption Centred(PaperPoint at, string text, double size, bool strong = false, Ink ink = Ink.Line)
    {
        var caption = new Caption(new(at.X, at.Y + 0.35 * size), text, size, ink, Anchor.Middle, strong);
        _shapes.Add(caption);
        return caption;
    }

    /// <summary>A solid arrow head with its tip at a point.</summary>
    public void Head(PaperPoint tip, double bearingDeg, double length, double halfWidth, Ink ink)
    {
        var back = Polar.From(tip, bearingDeg + 180, length);
        Area(new(ink, 0.2), Fill.Solid, tip, Polar.From(back, bearingDeg + 90, halfWidth), Polar.From(back, bearingDeg - 90, halfWidth));
    }

    /// <summary>A line that ends in an arrow head.</summary>
    public void Arrow(PaperPoint from, PaperPoint tip, double weight, double headLength, Ink ink)
    {
        var bearing = Polar.BearingDeg(from, tip);
        Line(new(ink, weight), from, Polar.From(tip, bearing + 180, headLength * 0.8));
        Head(tip, bearing, headLength, headLength * 0.36, ink);
    }
}
