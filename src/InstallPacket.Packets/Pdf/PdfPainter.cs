using InstallPacket.Drawings;
using PdfSharp.Drawing;

namespace InstallPacket.Packets.Pdf;

/// <summary>Draws a figure as vectors with real text on a page.</summary>
/// <param name="canvas">The page.</param>
/// <param name="fonts">The faces.</param>
internal sealed class PdfPainter(PageCanvas canvas, FontSet fonts)
{
    /// <summary>Draws the figure.</summary>
    /// <param name="drawing">The figure.</param>
    /// <param name="corner">Its upper left corner on the page in points.</param>
    /// <param name="scale">Points per millimetre of its sheet.</param>
    public void Paint(Drawing drawing, XPoint corner, double scale)
    {
        var state = canvas.Graphics.Save();
        canvas.Graphics.TranslateTransform(corner.X, corner.Y);
        canvas.Graphics.ScaleTransform(scale, scale);
        foreach (var shape in drawing.Shapes) Paint(shape);
        canvas.Graphics.Restore(state);
    }

    private void Paint(Shape shape)
    {
        switch (shape)
        {
            case Polyline { Points.Count: < 2 }: break;
            case Polyline { Closed: true } area:
                Ink(area.Pen, area.Fill, (pen, brush) => canvas.Graphics.DrawPolygon(pen, brush, Points(area), XFillMode.Winding));
                break;
            case Polyline line when line.Fill == Fill.None:
                if (PenOf(line.Pen) is { } stroke) canvas.Graphics.DrawLines(stroke, Points(line));
                break;
            case Polyline open:
                Ink(open.Pen, open.Fill, (pen, brush) => canvas.Graphics.DrawPath(pen, brush, PathOf(open)));
                break;
            case Circle c:
                var box = new XRect(c.Centre.X - c.RadiusMm, c.Centre.Y - c.RadiusMm, 2 * c.RadiusMm, 2 * c.RadiusMm);
                Ink(c.Pen, c.Fill, (pen, brush) => canvas.Graphics.DrawEllipse(pen, brush, box));
                break;
            case Caption caption: PaintText(caption); break;
            default: throw new NotSupportedException($"the PDF painter does not know the shape {shape.GetType().Name}");
        }
    }

    private void Ink(Pen pen, Fill fill, Action<XPen?, XBrush?> draw)
    {
        XBrush? brush = Palette.FillRgb(fill, pen.Ink) is { } rgb ? canvas.Fonts.Brush(rgb) : null;
        var stroke = PenOf(pen);
        if (brush is not null || stroke is not null) draw(stroke, brush);
    }

    private static XPen? PenOf(Pen pen)
    {
        if (pen.WeightMm <= 0) return null;
        var stroke = new XPen(PdfFonts.Colour(Palette.Rgb(pen.Ink)), pen.WeightMm) { LineJoin = XLineJoin.Round };
        // The library counts dashes in line widths.
        if (DashPattern.Millimetres(pen.Dash) is { Count: > 0 } dash) stroke.DashPattern = [.. dash.Select(mm => mm / pen.WeightMm)];
        return stroke;
    }

    private void PaintText(Caption caption)
    {
        if (caption.Text.Length == 0) return;
        var face = fonts.FaceOf(caption);
        var width = face.Width(caption.Text) * caption.SizeMm;
        var x = caption.At.X - caption.Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };
        var state = caption.TurnDeg == 0 ? null : canvas.Graphics.Save();
        if (state is not null) canvas.Graphics.RotateAtTransform(caption.TurnDeg, new XPoint(caption.At.X, caption.At.Y));
        canvas.Graphics.DrawString(
            caption.Text, canvas.Fonts.Font(face, caption.SizeMm), canvas.Fonts.Brush(Palette.Rgb(caption.Ink)), x, caption.At.Y);
        if (state is not null) canvas.Graphics.Restore(state);
    }

    private static XGraphicsPath PathOf(Polyline line)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Winding };
        path.AddLines(Points(line));
        return path;
    }

    private static XPoint[] Points(Polyline line) => [.. line.Points.Select(p => new XPoint(p.X, p.Y))];
}
