namespace InstallPacket.Drawings.Canvas;

/// <summary>A point on the sheet: millimetres from the upper left corner, y downwards.</summary>
/// <param name="X">Millimetres to the right.</param>
/// <param name="Y">Millimetres down.</param>
public readonly record struct PaperPoint(double X, double Y);

/// <summary>What a mark means; the painter chooses the colour, and every ink must also read in black and white.</summary>
public enum Ink
{
    /// <summary>Ordinary lines and text.</summary>
    Line,

    /// <summary>Grids, rings, construction lines, secondary text.</summary>
    Faint,

    /// <summary>The thing the figure is about (the aim, the cable).</summary>
    Accent,

    /// <summary>Limits and dangers.</summary>
    Warning,

    /// <summary>The colour of the sheet, for text on dark or for masks.</summary>
    Paper,
}

/// <summary>How a closed shape is filled.</summary>
public enum Fill
{
    /// <summary>Not filled.</summary>
    None,

    /// <summary>Solid in its ink.</summary>
    Solid,

    /// <summary>A light tint of its ink.</summary>
    Tint,

    /// <summary>Filled with the colour of the sheet (hides what lies below).</summary>
    Paper,
}

/// <summary>The pattern of a line.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Long dashes.</summary>
    Dashed,

    /// <summary>Dots.</summary>
    Dotted,

    /// <summary>Dash and dot in turn.</summary>
    DashDot,
}

/// <summary>Where a text hangs on its point.</summary>
public enum Anchor
{
    /// <summary>Text starts at the point.</summary>
    Start,

    /// <summary>Text is centred on the point.</summary>
    Middle,

    /// <summary>Text ends at the point.</summary>
    End,
}

/// <summary>The weight and pattern of a line.</summary>
/// <param name="Ink">What it means.</param>
/// <param name="WeightMm">Line width in millimetres.</param>
/// <param name="Dash">Its pattern.</param>
public readonly record struct Pen(Ink Ink, double WeightMm = 0.25, Dash Dash = Dash.Solid);

/// <summary>One mark on the sheet; later marks lie above earlier ones.</summary>
public abstract record Shape;

/// <summary>A line through points, closed or open.</summary>
public sealed record Polyline(IReadOnlyList<PaperPoint> Points, Pen Pen, bool Closed = false, Fill Fill = Fill.None) : Shape;

/// <summary>A circle.</summary>
public sealed record Circle(PaperPoint Centre, double RadiusMm, Pen Pen, Fill Fill = Fill.None) : Shape;

/// <summary>A line of text; <paramref name="At"/> is on the base line.</summary>
/// <param name="At">The anchor point on the base line.</param>
/// <param name="Text">The words.</param>
/// <param name="SizeMm">Font size in millimetres (10 pt is 3.53 mm).</param>
/// <param name="Ink">What it means.</param>
/// <param name="Anchor">How it hangs on the point.</param>
/// <param name="Strong">Semibold.</param>
/// <param name="TurnDeg">Clockwise turn about the point in degrees.</param>
public sealed record Caption(
    PaperPoint At, string Text, double SizeMm, Ink Ink = Ink.Line, Anchor Anchor = Anchor.Start, bool Strong = false, double TurnDeg = 0)
        : Shape;

/// <summary>A figure: an immutable list of marks in millimetres on a sheet of stated size.</summary>
/// <param name="Id">Kebab-case name, also the file name.</param>
/// <param name="Title">Short title, shown as the caption.</param>
/// <param name="Description">What a person who cannot see it needs to know; the alternative text everywhere.</param>
/// <param name="WidthMm">Width of the sheet.</param>
/// <param name="HeightMm">Height of the sheet.</param>
/// <param name="Shapes">The marks from back to front.</param>
public sealed record Drawing(
    string Id, string Title, string Description, double WidthMm, double HeightMm, IReadOnlyList<Shape> Shapes);

/// <summary>Widths of words, so that labels can be placed; the theme's fonts give it, a fixed width stands in for tests.</summary>
public interface ITextMeasure
{
    /// <summary>Width of a text in millimetres.</summary>
    /// <param name="text">The words.</param>
    /// <param name="sizeMm">Font size in millimetres.</param>
    /// <param name="strong">Semibold.</param>
    double WidthMm(string text, double sizeMm, bool strong = false);
}
