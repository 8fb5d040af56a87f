using System.Globalization;
using System.Text;

namespace InstallPacket.Drawings.Canvas;

/// <summary>
/// Writes a figure as SVG with real text, so that words can be found, selected and read aloud. Colours are classes: in a page
/// they follow the page's variables (and its dark mode); a file of its own carries the same rules with the paper colours.
/// </summary>
public static class SvgPainter
{
    /// <summary>The figure for a page that brings the rules of <see cref="StyleRules"/> itself.</summary>
    /// <param name="drawing">The figure.</param>
    /// <returns>One <c>svg</c> element, lines ended by LF.</returns>
    public static string Paint(Drawing drawing) => Write(drawing, style: null);

    /// <summary>The figure as a file that looks right alone.</summary>
    /// <param name="drawing">The figure.</param>
    /// <param name="fontFolder">Where the theme's web fonts lie, seen from the file.</param>
    /// <returns>An SVG document, lines ended by LF.</returns>
    public static string PaintFile(Drawing drawing, string fontFolder = "../fonts/") =>
        Write(drawing, FontRule(fontFolder, "Regular", 400) + FontRule(fontFolder, "Semibold", 600) + StyleRules());

    /// <summary>The rules for the classes used here: page variables first, paper colours where the page sets none.</summary>
    public static string StyleRules()
    {
        var css = new StringBuilder();
        css.Append("svg.figure{font-family:\"Source Sans 3\",sans-serif}.figure text{stroke:none}.figure .strong{font-weight:600}\n");
        css.Append(".figure .pen{fill:none;stroke-linejoin:round}\n");
        foreach (var ink in Enum.GetValues<Ink>())
        {
            var name = Name(ink);
            css.Append(Invariant($".figure .pen-{name}{{stroke:{Variable(name, Palette.Rgb(ink))}}}"));
            css.Append(Invariant($".figure .solid-{name}{{fill:{Variable(name, Palette.Rgb(ink))}}}"));
            css.Append(Invariant($".figure .tint-{name}{{fill:{Variable(name + "-tint", Palette.Tint(ink))}}}\n"));
        }
        foreach (var dash in Enum.GetValues<Dash>().Where(d => d != Dash.Solid))
            css.Append(Invariant($".figure .{Name(dash)}{{stroke-dasharray:{string.Join(' ', DashPattern.Millimetres(dash).Select(Number))}}}"));
        return css.Append('\n').ToString();
    }

    private static string FontRule(string folder, string face, int weight) => Invariant(
        $"@font-face{{font-family:\"Source Sans 3\";font-weight:{weight};src:url(\"{folder}SourceSans3-{face}.ttf.woff2\") format(\"woff2\")}}\n");

    private static string Write(Drawing drawing, string? style)
    {
        var id = Escape(drawing.Id);
        var svg = new StringBuilder();
        svg.Append(Invariant($"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"figure\" role=\"img\" aria-labelledby=\"{id}-title {id}-desc\""));
        svg.Append(Invariant($" viewBox=\"0 0 {Number(drawing.WidthMm)} {Number(drawing.HeightMm)}\""));
        if (style is not null) svg.Append(Invariant($" width=\"{Number(drawing.WidthMm)}mm\" height=\"{Number(drawing.HeightMm)}mm\""));
        svg.Append(Invariant($">\n<title id=\"{id}-title\">{Escape(drawing.Title)}</title>\n<desc id=\"{id}-desc\">{Escape(drawing.Description)}</desc>\n"));
        if (style is not null)
        {
            svg.Append("<style>\n").Append(style).Append("</style>\n");
            svg.Append("<rect class=\"solid-paper\" width=\"100%\" height=\"100%\"/>\n");
        }
        foreach (var shape in drawing.Shapes) Append(svg, shape);
        return svg.Append("</svg>\n").ToString();
    }

    private static void Append(StringBuilder svg, Shape shape)
    {
        switch (shape)
        {
            case Polyline line:
                var points = string.Join(' ', line.Points.Select(p => Number(p.X) + "," + Number(p.Y)));
                svg.Append(Invariant($"<{(line.Closed ? "polygon" : "polyline")} {Look(line.Pen, line.Fill)} points=\"{points}\"/>\n"));
                break;
            case Circle c:
                svg.Append(Invariant($"<circle {Look(c.Pen, c.Fill)} cx=\"{Number(c.Centre.X)}\" cy=\"{Number(c.Centre.Y)}\" r=\"{Number(c.RadiusMm)}\"/>\n"));
                break;
            case Caption caption:
                AppendText(svg, caption);
                break;
            default:
                throw new NotSupportedException($"the SVG painter does not know the shape {shape.GetType().Name}");
        }
    }

    private static string Look(Pen pen, Fill fill)
    {
        var classes = "pen";
        if (pen.WeightMm > 0) classes += " pen-" + Name(pen.Ink);
        if (pen.Dash != Dash.Solid) classes += " " + Name(pen.Dash);
        if (fill == Fill.Solid) classes += " solid-" + Name(pen.Ink);
        if (fill == Fill.Tint) classes += " tint-" + Name(pen.Ink);
        if (fill == Fill.Paper) classes += " solid-paper";
        return pen.WeightMm > 0 ? Invariant($"class=\"{classes}\" stroke-width=\"{Number(pen.WeightMm)}\"")
            : Invariant($"class=\"{classes}\"");
    }

    private static void AppendText(StringBuilder svg, Caption caption)
    {
        svg.Append(Invariant($"<text class=\"solid-{Name(caption.Ink)}{(caption.Strong ? " strong" : "")}\""));
        svg.Append(Invariant($" x=\"{Number(caption.At.X)}\" y=\"{Number(caption.At.Y)}\" font-size=\"{Number(caption.SizeMm)}\""));
        if (caption.Anchor != Anchor.Start) svg.Append(Invariant($" text-anchor=\"{(caption.Anchor == Anchor.Middle ? "middle" : "end")}\""));
        if (caption.TurnDeg != 0)
            svg.Append(Invariant($" transform=\"rotate({Number(caption.TurnDeg)} {Number(caption.At.X)} {Number(caption.At.Y)})\""));
        svg.Append('>').Append(Escape(caption.Text)).Append("</text>\n");
    }

    private static string Variable(string name, uint rgb) => Invariant($"var(--ink-{name},#{rgb:x6})");

    private static string Name(Enum word) => word.ToString().ToLowerInvariant();

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    /// <summary>Two decimals are a hundredth of a millimetre; minus zero is folded so that equal drawings give equal text.</summary>
    private static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture) is var s
        && s == "-0" ? "0" : s;

    private static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            // XML allows no control characters at all, not even escaped.
            safe.Append(c switch { '&' => "&amp;", '<' => "&lt;", '>' => "&gt;", '"' => "&quot;", _ => null });
            if (c is not ('&' or '<' or '>' or '"')) safe.Append(char.IsControl(c) ? ' ' : c);
        }
        return safe.ToString();
    }
}
