using InstallPacket.Drawings;
using PdfSharp.Drawing;

namespace InstallPacket.Packets.Pdf;

/// <summary>Head and foot of every page: title, stamp, footer text, page number. All are artifacts outside the reading order.</summary>
internal sealed class PdfRunningParts
{
    private const double Gap = 8;
    private const double StampInside = 6;

    private readonly IWords _words;
    private readonly PageFormat _format;
    private readonly PdfTypes _types;
    private readonly RunReader _runs;
    private readonly TextLine _title;
    private readonly IReadOnlyList<TextLine> _stamp;
    private readonly TextLine _footer;
    private readonly double _headBottom;

    public PdfRunningParts(PacketDocument document, PdfTypes types, RunReader runs, PageFormat format)
    {
        (_words, _format, _types, _runs) = (document.Words, format, types, runs);
        _title = LineBreaker.Break(runs.Read(document.Title, types.Running), format.TextWidth)[0];
        _footer = LineBreaker.Break(runs.Read(document.Footer, types.Running), format.TextWidth * 0.8)[0];
        _stamp = document.Stamp is { } stamp ? LineBreaker.Break(runs.Read(stamp, types.Stamp), format.TextWidth - 2 * StampInside - 8)
            : [];
        _headBottom = format.Top + types.Running.Leading + 2;
        TextTop = _headBottom + (_stamp.Count == 0 ? 12 : Gap + StampHeight + 12);
        TextBottom = format.Height - format.Bottom - types.Running.Leading - 14;
    }

    /// <summary>Top of the text area, below head and stamp.</summary>
    public double TextTop { get; }

    /// <summary>Bottom of the text area, above the foot.</summary>
    public double TextBottom { get; }

    private double StampHeight => _stamp.Count * _types.Stamp.Leading + 2 * StampInside;

    public void Draw(PageCanvas canvas, int page, int pages)
    {
        var right = _format.Width - _format.Side;
        // The first page shows the title itself.
        if (page > 1) canvas.Artifact(() => canvas.Line(_title, _format.Side, _format.Top + _types.Running.Baseline));
        canvas.Rule(_format.Side, right, _headBottom, PdfLook.Hair);
        if (_stamp.Count > 0) canvas.Artifact(() => DrawStamp(canvas));
        var foot = _format.Height - _format.Bottom - _types.Running.Leading;
        canvas.Rule(_format.Side, right, foot - 3, PdfLook.Hair);
        var number = LineBreaker.Break(
            _runs.Read(_words.Say("running-heads.page", ("page", page), ("pages", pages)), _types.Running), _format.TextWidth)[0];
        canvas.Artifact(() =>
        {
            canvas.Line(_footer, _format.Side, foot + _types.Running.Baseline);
            canvas.Line(number, right - number.Width, foot + _types.Running.Baseline);
        });
    }

    // A double frame: it must be seen on a poor copy, and no other part of the page has one.
    private void DrawStamp(PageCanvas canvas)
    {
        var box = new XRect(_format.Side, _headBottom + Gap, _format.TextWidth, StampHeight);
        canvas.Graphics.DrawRectangle(new XPen(PdfFonts.Colour(PdfLook.Firm.Rgb), 2.2), box);
        box.Inflate(-3, -3);
        canvas.Graphics.DrawRectangle(new XPen(PdfFonts.Colour(PdfLook.Firm.Rgb), 0.6), box);
        var y = _headBottom + Gap + StampInside;
        foreach (var line in _stamp)
        {
            canvas.Line(line, _format.Side + (_format.TextWidth - line.Width) / 2, y + _types.Stamp.Baseline);
            y += _types.Stamp.Leading;
        }
    }
}
