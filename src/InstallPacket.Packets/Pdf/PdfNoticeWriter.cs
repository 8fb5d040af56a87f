using Markdig.Extensions.CustomContainers;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Lays out the boxes of stops, cautions and notes; they may run over a page.</summary>
internal sealed class PdfNoticeWriter(Flow flow, PdfContext context, PdfBlockWriter blocks)
{
    private const double Inside = 14;
    private const double Above = 6;
    private const double Below = 8;

    public void Write(CustomContainer container)
    {
        var notice = Notice.Of(container, context.Document);
        flow.Space(10);
        flow.Begin(s => s.BeginElement(PdfGroupingElementTag.Section));
        flow.Framed(notice.Kind, () =>
        {
            flow.Add(new FlowBox(Above, null) { KeepWithNext = true });
            flow.Indented(Inside, Inside, () => WriteInside(notice, container));
            flow.Last.KeepWithNext = true;
            flow.NoSpace();
            flow.Add(new FlowBox(Below, null));
        });
        flow.End();
        flow.Space(12);
    }

    private void WriteInside(Notice notice, CustomContainer container)
    {
        var type = context.Types.NoticeLabel;
        var first = flow.Boxes.Count;
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.Paragraph));
        blocks.WriteLines(LineBreaker.Break(context.Runs.Read(notice.Label, type), flow.Width), type);
        flow.End();
        for (var i = first; i < flow.Boxes.Count; i++) flow.Boxes[i].KeepWithNext = true;
        flow.Space(2);
        blocks.Write(container, tight: true);
    }
}
