using System.Runtime.CompilerServices;
using SkiaSharp;

namespace InstallPacket.Drawings.Canvas;

/// <summary>Paints a figure as a picture on white: to be sent as a message, for thumbnails, and for looking at figures in tests.</summary>
public static class PngPainter
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>A picture this large is a mistake in the sheet size, not a figure.</summary>
    private const int MaximumPixels = 20_000;

    // Typefaces are read once for each theme: they are immutable, and their glyphs stay in the library's cache.
    private static readonly ConditionalWeakTable<FontSet, Faces> Loaded = [];

    /// <summary>A picture of somebody else, painted anew on white: no profile, no interlace, nothing hidden in it.</summary>
    /// <param name="png">A PNG file, its size known to be bounded.</param>
    /// <returns>A PNG file; null when it cannot be unpacked.</returns>
    public static byte[]? Repainted(ReadOnlySpan<byte> png)
    {
        using var picture = SKBitmap.Decode(png);
        if (picture is null) return null;
        var size = new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(size);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.DrawBitmap(picture, 0, 0, SKSamplingOptions.Default);
        using var pixels = surface.PeekPixels();
        return PngFile.Of(pixels.GetPixelSpan<byte>(), size.Width, size.Height, pixels.RowBytes);
    }

    /// <summary>Paints the figure.</summary>
    /// <param name="drawing">The figure.</param>
    /// <param name="fonts">The faces of the theme.</param>
    /// <param name="dpi">Pixels per inch of the sheet.</param>
    /// <returns>A PNG file.</returns>
    /// <exception cref="MissingGlyphException">A label holds a character that the font lacks.</exception>
    public static byte[] Paint(Drawing drawing, FontSet fonts, double dpi)
    {
        fonts.Require(drawing);
        var scale = (float)(dpi / MillimetresPerInch);
        var size = new SKImageInfo(Pixels(drawing.WidthMm, scale), Pixels(drawing.HeightMm, scale), SKColorType.Rgba8888,
            SKAlphaType.Opaque);
        using var surface = SKSurface.Create(size) ?? throw new InvalidOperationException($"figure '{drawing.Id}' is too large to paint");
        var faces = Loaded.GetValue(fonts, f => new Faces(f));
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        canvas.Scale(scale);
        foreach (var shape in drawing.Shapes) PaintShape(canvas, shape, faces);
        using var pixels = surface.PeekPixels();
        return PngFile.Of(pixels.GetPixelSpan<byte>(), size.Width, size.Height, pixels.RowBytes);
    }

    private static int Pixels(double mm, float scale)
    {
        var pixels = Math.Ceiling(mm * scale);
        return pixels is >= 1 and <= MaximumPixels ? (int)pixels
            : throw new ArgumentOutOfRangeException(nameof(mm), mm,
                FormattableString.Invariant($"the sheet must give 1 to {MaximumPixels} pixels"));
    }

    private static void PaintShape(SKCanvas canvas, Shape shape, Faces faces)
    {
        switch (shape)
        {
            case Polyline { Points.Count: > 0 } line:
                using (var path = PathOf(line)) Ink(line.Pen, line.Fill, paint => canvas.DrawPath(path, paint));
                break;
            case Polyline:
                break;
            case Circle c:
                Ink(c.Pen, c.Fill, paint => canvas.DrawCircle((float)c.Centre.X, (float)c.Centre.Y, (float)c.RadiusMm, paint));
                break;
            case Caption caption:
                PaintText(canvas, caption, faces);
                break;
            default:
                throw new NotSupportedException($"the PNG painter does not know the shape {shape.GetType().Name}");
        }
    }

    private static SKPath PathOf(Polyline line)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo((float)line.Points[0].X, (float)line.Points[0].Y);
        foreach (var p in line.Points.Skip(1)) builder.LineTo((float)p.X, (float)p.Y);
        if (line.Closed) builder.Close();
        return builder.Detach();
    }

    private static void Ink(Pen pen, Fill fill, Action<SKPaint> draw)
    {
        using var paint = new SKPaint { IsAntialias = true };
        if (Palette.FillRgb(fill, pen.Ink) is { } rgb)
        {
            paint.Color = Colour(rgb);
            draw(paint);
        }
        if (pen.WeightMm <= 0) return;
        paint.Style = SKPaintStyle.Stroke;
        paint.Color = Colour(Palette.Rgb(pen.Ink));
        paint.StrokeWidth = (float)pen.WeightMm;
        paint.StrokeJoin = SKStrokeJoin.Round;
        var dash = DashPattern.Millimetres(pen.Dash);
        using var effect = dash.Count == 0 ? null : SKPathEffect.CreateDash([.. dash.Select(mm => (float)mm)], 0);
        paint.PathEffect = effect;
        draw(paint);
        paint.PathEffect = null;
    }

    private static void PaintText(SKCanvas canvas, Caption caption, Faces faces)
    {
        // Hinting and subpixel placing off or on must not depend on the machine: both are fixed here.
        using var font = new SKFont(caption.Strong ? faces.Strong : faces.Regular, (float)caption.SizeMm)
        {
            Subpixel = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
            LinearMetrics = true,
        };
        using var paint = new SKPaint { IsAntialias = true, Color = Colour(Palette.Rgb(caption.Ink)) };
        var align = caption.Anchor switch { Anchor.Start => SKTextAlign.Left, Anchor.Middle => SKTextAlign.Center, _ => SKTextAlign.Right };
        canvas.Save();
        canvas.Translate((float)caption.At.X, (float)caption.At.Y);
        if (caption.TurnDeg != 0) canvas.RotateDegrees((float)caption.TurnDeg);
        canvas.DrawText(caption.Text, 0, 0, align, font, paint);
        canvas.Restore();
    }

    private static SKColor Colour(uint rgb) => new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);

    /// <summary>Typefaces of one theme.</summary>
    private sealed class Faces(FontSet fonts)
    {
        public SKTypeface Regular { get; } = Load(fonts.Regular);

        public SKTypeface Strong { get; } = Load(fonts.Strong);

        private static SKTypeface Load(FontFace face)
        {
            using var data = SKData.CreateCopy(face.Bytes);
            return SKTypeface.FromData(data) ?? throw new InvalidDataException($"font '{face.Name}' cannot be loaded");
        }
    }
}
