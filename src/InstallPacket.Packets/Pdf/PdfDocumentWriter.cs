using InstallPacket.Drawings;
using Markdig.Syntax;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Writes a document as a tagged PDF: structure, language, bookmarks, links, figures with alternative text.</summary>
public static class PdfDocumentWriter
{
    /// <summary>Writes the document.</summary>
    /// <param name="document">What it says.</param>
    /// <param name="theme">Its faces.</param>
    /// <param name="format">Size and margins of its pages.</param>
    /// <returns>A PDF file; the same input gives the same bytes.</returns>
    /// <exception cref="DocumentException">The text names an unknown figure or box.</exception>
    /// <exception cref="MissingGlyphException">The text holds a character that the theme's fonts lack.</exception>
    public static byte[] Write(PacketDocument document, Theme theme, PageFormat format)
    {
        var types = new PdfTypes(theme.Fonts);
        var runs = new RunReader(document, theme.Fonts);
        var running = new PdfRunningParts(document, types, runs, format);
        var context = new PdfContext(document, types, runs, running.TextBottom - running.TextTop);
        var flow = new Flow(format.Side, format.TextWidth);
        LayOut(document, context, flow);
        var pages = Paginator.Share(flow.Boxes, running.TextTop, running.TextBottom);
        return PdfNormalizer.Normalize(Paint(document, pages, running, format));
    }

    private static void LayOut(PacketDocument document, PdfContext context, Flow flow)
    {
        var tree = MarkdownReader.Read(document.Markdown);
        var blocks = new PdfBlockWriter(flow, context);
        if (document.Logo is { } logo) WriteLogo(flow, logo);
        if (!tree.OfType<HeadingBlock>().Any(h => h.Level == 1))
        {
            var type = context.Types.Heading(1);
            blocks.WriteHeading(
                LineBreaker.Break(context.Runs.Read(document.Title, type), flow.Width), type, new HeadingMark(1, document.Title, ""));
        }
        blocks.Write(tree);
    }

    private static void WriteLogo(Flow flow, LogoImage logo)
    {
        const double pointsPerMillimetre = 72 / 25.4;
        var (left, width, height) = (flow.Left, logo.WidthMm * pointsPerMillimetre, logo.HeightMm * pointsPerMillimetre);
        flow.Add(new FlowBox(height, (canvas, top) =>
        {
            var area = new XRect(left, top, width, height);
            canvas.Structure.BeginElement(PdfIllustrationElementTag.Figure, logo.Words, canvas.Graphics.Transformer.WorldToDefaultPage(area));
            using var stream = new MemoryStream(logo.Png);
            using var image = XImage.FromStream(stream);
            canvas.Graphics.DrawImage(image, area);
            canvas.Structure.End();
        })
        { KeepWithNext = true });
        flow.Space(8);
    }

    private static byte[] Paint(
        PacketDocument document, IReadOnlyList<IReadOnlyList<PlacedBox>> pages, PdfRunningParts running, PageFormat format)
    {
        using var pdf = new PdfDocument();
        pdf.Info.Title = document.Title;
        pdf.ViewerPreferences.DisplayDocTitle = true;
        var tagging = UAManager.ForDocument(pdf);
        tagging.SetDocumentLanguage(document.Language);
        using (var painter = new PdfPagePainter(pdf, tagging.StructureBuilder, running, Destinations(pages)))
            for (var i = 0; i < pages.Count; i++) painter.Paint(pages[i], i + 1, pages.Count, format);
        using var stream = new MemoryStream();
        pdf.Save(stream);
        return stream.ToArray();
    }

    private static Dictionary<string, (int Page, double Top)> Destinations(IReadOnlyList<IReadOnlyList<PlacedBox>> pages)
    {
        var places = new Dictionary<string, (int, double)>(StringComparer.Ordinal);
        for (var i = 0; i < pages.Count; i++)
            foreach (var placed in pages[i])
                if (placed.Box.Heading is { Id.Length: > 0 } heading) places.TryAdd(heading.Id, (i + 1, placed.Top));
        return places;
    }
}
