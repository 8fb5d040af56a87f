using System.Globalization;
using InstallPacket.Drawings;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Lays out lists: bullets, numbers, and steps with a box to tick with a pen.</summary>
internal sealed class PdfListWriter(Flow flow, PdfContext context, PdfBlockWriter blocks)
{
    private const double BulletIndent = 14;
    private const double TaskIndent = 20;
    private const double NumberGap = 6;
    private const double BoxSide = 10.5;

    public void Write(ListBlock list)
    {
        var items = list.OfType<ListItemBlock>().ToList();
        var indent = IndentOf(list, items);
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.List));
        foreach (var item in items)
        {
            flow.Space(list.IsLoose ? 6 : items.Any(IsTask) ? 4 : 2.4);
            flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.ListItem));
            flow.Mark(MarkOf(list, item, flow.Left, indent));
            flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.ListBody));
            flow.Indented(indent, 0, () => WriteBody(item, list.IsLoose));
            flow.End();
            flow.End();
        }
        flow.End();
    }

    private void WriteBody(ListItemBlock item, bool loose)
    {
        var before = flow.Boxes.Count;
        blocks.Write(item, tight: !loose);
        if (flow.Boxes.Count == before) blocks.WriteLines([TextLine.Empty], context.Types.Body);
    }

    private double IndentOf(ListBlock list, List<ListItemBlock> items)
    {
        if (items.Any(IsTask)) return TaskIndent;
        if (!list.IsOrdered) return BulletIndent;
        var widest = items.Select(i => new TextRun(NumberOf(i), context.Types.Body).Width).DefaultIfEmpty(0).Max();
        return Math.Max(BulletIndent, widest + NumberGap);
    }

    private Action<PageCanvas, double> MarkOf(ListBlock list, ListItemBlock item, double left, double indent)
    {
        var type = context.Types.Body;
        if (item.FirstOrDefault() is ParagraphBlock { Inline.FirstChild: TaskList task }) return (c, top) =>
            DrawBox(c, left, top, task.Checked);
        var mark = new TextRun(list.IsOrdered ? NumberOf(item) : "•", list.IsOrdered ? type with { Face = context.Types.Fonts.Strong }
            : type);
        // Numbers hang from their full stop, so that 9 and 10 line up.
        var x = list.IsOrdered ? left + indent - NumberGap - mark.Width : left + 3;
        return (canvas, top) =>
        {
            canvas.Structure.BeginElement(PdfBlockLevelElementTag.Label);
            canvas.Line(new TextLine([(0, mark)], mark.Width), x, top + type.Baseline);
            canvas.Structure.End();
        };
    }

    private void DrawBox(PageCanvas canvas, double left, double top, bool ticked)
    {
        var y = top + (context.Types.Body.Leading - BoxSide) / 2;
        var pen = new XPen(PdfFonts.Colour(Palette.Rgb(Ink.Line)), 1);
        canvas.Structure.BeginElement(PdfBlockLevelElementTag.Label);
        canvas.Structure.CurrentStructureElement.Elements["/ActualText"] =
            new PdfString(context.Document.Words.Say(ticked ? "running-heads.done" : "running-heads.to-do"), PdfStringEncoding.Unicode);
        canvas.Graphics.DrawRectangle(pen, left + 0.5, y, BoxSide, BoxSide);
        if (ticked)
            canvas.Graphics.DrawLines(new XPen(pen.Color, 1.6),
                [new(left + 2.6, y + 5.6), new(left + 4.8, y + 8), new(left + 9.2, y + 2.6)]);
        canvas.Structure.End();
    }

    private static string NumberOf(ListItemBlock item) => item.Order.ToString(CultureInfo.InvariantCulture) + ".";

    private static bool IsTask(ListItemBlock item) => item.FirstOrDefault() is ParagraphBlock { Inline.FirstChild: TaskList };
}
