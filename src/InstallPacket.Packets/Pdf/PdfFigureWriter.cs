using InstallPacket.Drawings;
using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Lays out a figure over its caption; both stay on one page.</summary>
internal sealed class PdfFigureWriter(Flow flow, PdfContext context, PdfBlockWriter blocks)
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>A small sheet is not blown up to the width of the text beyond this.</summary>
    private const double LargestGrowth = 1.4;

    private const double CaptionGap = 3;

    public void Write(Drawing drawing)
    {
        context.Types.Fonts.Require(drawing);
        var caption = LineBreaker.Break(context.Runs.Read(drawing.Title, context.Types.Caption), flow.Width);
        var room = context.LargestFigure - caption.Count * context.Types.Caption.Leading - CaptionGap;
        var scale = new[] { flow.Width / drawing.WidthMm, room / drawing.HeightMm, LargestGrowth * PointsPerMillimetre }.Min();
        var (left, fonts) = (flow.Left, context.Types.Fonts);
        flow.Space(8);
        flow.Add(new FlowBox(drawing.HeightMm * scale, (canvas, top) =>
        {
            var area = new XRect(left, top, drawing.WidthMm * scale, drawing.HeightMm * scale);
            canvas.Structure.BeginElement(PdfIllustrationElementTag.Figure, drawing.Description,
                canvas.Graphics.Transformer.WorldToDefaultPage(area));
            new PdfPainter(canvas, fonts).Paint(drawing, area.TopLeft, scale);
            canvas.Structure.End();
        })
        { KeepWithNext = true });
        flow.Space(CaptionGap);
        var first = flow.Boxes.Count;
        flow.Begin(s => s.BeginElement(PdfGroupingElementTag.Caption));
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.Paragraph));
        blocks.WriteLines(caption, context.Types.Caption);
        flow.End();
        flow.End();
        for (var i = first; i < flow.Boxes.Count - 1; i++) flow.Boxes[i].KeepWithNext = true;
        flow.Space(12);
    }
}
