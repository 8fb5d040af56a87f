using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Draws pages in order, with frames and bookmarks.</summary>
internal sealed class PdfPagePainter(
    PdfDocument pdf, StructureBuilder structure, PdfRunningParts running, IReadOnlyDictionary<string, (int Page, double Top)> destinations)
    : IDisposable
{
    private const double EdgeSpace = 3.5;

    private readonly PdfFonts _fonts = new();
    private readonly Stack<(int Level, PdfOutline Outline)> _outlines = new();
    private XGraphics? _graphics;

    public void Dispose() => _graphics?.Dispose();

    public void Paint(IReadOnlyList<PlacedBox> boxes, int number, int count, PageFormat format)
    {
        // Adding a page ends what a paragraph began on the page before, so that page's graphics must still be open here.
        var page = pdf.AddPage();
        _graphics?.Dispose();
        (page.Width, page.Height) = (XUnit.FromPoint(format.Width), XUnit.FromPoint(format.Height));
        _graphics = XGraphics.FromPdfPage(page);
        var canvas = new PageCanvas(_graphics, structure, _fonts, destinations);
        running.Draw(canvas, number, count);
        PaintFrames(canvas, boxes);
        foreach (var placed in boxes) Paint(canvas, placed, page);
    }

    private void Paint(PageCanvas canvas, PlacedBox placed, PdfPage page)
    {
        if (placed.IsRepeat)
        {
            canvas.Artifact(() => placed.Box.Draw!(canvas with { IsOutside = true }, placed.Top));
            return;
        }
        if (placed.Box.Heading is { } heading) AddOutline(heading, page, placed.Top);
        foreach (var begin in placed.Box.Begins) begin(canvas, placed.Top);
        placed.Box.Draw?.Invoke(canvas, placed.Top);
        for (var i = 0; i < placed.Box.Ends; i++) structure.End();
    }

    private static void PaintFrames(PageCanvas canvas, IReadOnlyList<PlacedBox> boxes)
    {
        foreach (var frame in boxes.SelectMany(b => b.Box.Frames).Distinct(ReferenceEqualityComparer.Instance).Cast<FlowFrame>())
        {
            var inside = boxes.Where(b => b.Box.Frames.Contains(frame)).ToList();
            // Where the page turns inside a frame there is no space box at its edge, so the edge itself keeps off the text.
            var top = inside[0].Top - (inside[0].Box.Draw is null ? 0 : EdgeSpace);
            var bottom = inside[^1].Top + inside[^1].Box.Height + (inside[^1].Box.Draw is null ? 0 : EdgeSpace);
            canvas.Artifact(() => PdfFrame.Draw(canvas.Graphics, frame, top, bottom - top));
        }
    }

    private void AddOutline(HeadingMark heading, PdfPage page, double top)
    {
        while (_outlines.Count > 0 && _outlines.Peek().Level >= heading.Level) _outlines.Pop();
        var siblings = _outlines.Count == 0 ? pdf.Outlines : _outlines.Peek().Outline.Outlines;
        var outline = siblings.Add(heading.Words, page, heading.Level < 2);
        outline.PageDestinationType = PdfPageDestinationType.Xyz;
        (outline.Left, outline.Top, outline.Zoom) = (0, page.Height.Point - top, null);
        _outlines.Push((heading.Level, outline));
    }
}
