using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Annotations;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>One page while it is drawn.</summary>
/// <param name="Graphics">The drawing surface, in points from the upper left corner.</param>
/// <param name="Structure">The structure tree of the document.</param>
/// <param name="Fonts">Fonts and brushes of the document.</param>
/// <param name="Destinations">Page number (from 1) and height of each heading by identifier.</param>
internal sealed record PageCanvas(
    XGraphics Graphics, StructureBuilder Structure, PdfFonts Fonts, IReadOnlyDictionary<string, (int Page, double Top)> Destinations)
{
    private const double UnderlineDepth = 0.14;
    private const double UnderlineWeight = 0.05;

    /// <summary>Whether all that is drawn is outside the structure: a table head repeated on a further page.</summary>
    public bool IsOutside { get; init; }

    /// <summary>Draws a line of text with its links.</summary>
    public void Line(TextLine line, double left, double baseline)
    {
        foreach (var (x, run) in line.Runs)
        {
            if (run.Target is not null && !IsOutside && LinkTo(run, left + x, baseline) is { } link)
            {
                var at = left + x;
                Element(s => s.BeginElement(link, run.Text.Trim()), () => Run(run, at, baseline));
            }
            else Run(run, left + x, baseline);
        }
    }

    /// <summary>Draws the content of a structure element.</summary>
    public void Element(Action<StructureBuilder> begin, Action draw)
    {
        if (IsOutside) { draw(); return; }
        begin(Structure);
        draw();
        Structure.End();
    }

    /// <summary>Draws what is decoration or repeated, outside the structure.</summary>
    public void Artifact(Action draw)
    {
        if (IsOutside) { draw(); return; }
        Structure.BeginArtifact();
        draw();
        Structure.End();
    }

    /// <summary>A rule.</summary>
    public void Rule(double left, double right, double y, (uint Rgb, double Weight) look) =>
        Artifact(() => Graphics.DrawLine(new XPen(PdfFonts.Colour(look.Rgb), look.Weight), left, y, right, y));

    private void Run(TextRun run, double x, double baseline)
    {
        Graphics.DrawString(run.Text, Fonts.Font(run.Type.Face, run.Type.Size), Fonts.Brush(run.Type.Rgb), x, baseline);
        if (run.Target is null) return;
        // Underlined, so that a link shows without colour.
        var y = baseline + run.Type.Size * UnderlineDepth;
        var words = run with { Text = run.Text.TrimEnd() };
        Graphics.DrawLine(new XPen(PdfFonts.Colour(run.Type.Rgb), run.Type.Size * UnderlineWeight), x, y, x + words.Width, y);
    }

    private PdfLinkAnnotation? LinkTo(TextRun run, double x, double baseline)
    {
        var box = new XRect(x, baseline - run.Type.Size, run.Width, run.Type.Size * 1.3);
        var area = new PdfRectangle(Graphics.Transformer.WorldToDefaultPage(box));
        if (run.Target![0] != '#') return PdfLinkAnnotation.CreateWebLink(area, run.Target);
        return Destinations.TryGetValue(run.Target[1..], out var place)
            ? PdfLinkAnnotation.CreateDocumentLink(area, place.Page, new XPoint(0, Graphics.PageSize.Height - place.Top)) : null;
    }
}
