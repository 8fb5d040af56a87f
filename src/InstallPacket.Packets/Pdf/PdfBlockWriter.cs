using Markdig.Extensions.CustomContainers;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Lays the blocks of a document out as boxes; the pages come later.</summary>
/// <param name="flow">Where the boxes go.</param>
/// <param name="context">The document and its type.</param>
internal sealed class PdfBlockWriter(Flow flow, PdfContext context)
{
    private const double ParagraphSpace = 6;
    private const double LineSpace = 2.4;

    public void Write(ContainerBlock container, bool tight = false)
    {
        foreach (var block in container) Write(block, tight ? LineSpace : ParagraphSpace);
    }

    private void Write(Block block, double space)
    {
        flow.Space(space);
        switch (block)
        {
            case HeadingBlock heading: WriteHeading(heading); break;
            case ParagraphBlock paragraph: WriteParagraph(paragraph); break;
            case ListBlock list: new PdfListWriter(flow, context, this).Write(list); break;
            case Table table: new PdfTableWriter(flow, context).Write(table); break;
            case CustomContainer container: new PdfNoticeWriter(flow, context, this).Write(container); break;
            case QuoteBlock quote:
                flow.Begin(s => s.BeginElement(PdfGroupingElementTag.BlockQuotation));
                flow.Indented(18, 18, () => Write((ContainerBlock)quote));
                flow.End();
                break;
            case ThematicBreakBlock: WriteRule(); break;
            case CodeBlock code: WriteCode(code); break;
            case LinkReferenceDefinitionGroup: break;
            default: throw new NotSupportedException($"document '{context.Document.Name}': the PDF writer does not know {block.GetType().Name}");
        }
    }

    /// <summary>Lines of text under one structure element; a page never takes or leaves a single line.</summary>
    public void WriteLines(IReadOnlyList<TextLine> lines, PdfType type)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, left) = (lines[i], flow.Left);
            flow.Add(new FlowBox(type.Leading, (canvas, top) => canvas.Line(line, left, top + type.Baseline))
            {
                KeepWithNext = i < lines.Count - 1 && (i == 0 || i == lines.Count - 2),
            });
        }
    }

    private void WriteHeading(HeadingBlock heading)
    {
        var type = context.Types.Heading(heading.Level);
        flow.Space(heading.Level switch { 1 => 20, 2 => 18, _ => 12 });
        WriteHeading(LineBreaker.Break(context.Runs.Read(heading.Inline, type), flow.Width), type,
            new HeadingMark(heading.Level, InlineText.Plain(heading.Inline), HtmlText.IdOf(heading)));
    }

    /// <summary>A heading stays with what follows it.</summary>
    public void WriteHeading(IReadOnlyList<TextLine> lines, PdfType type, HeadingMark mark)
    {
        flow.Begin(s =>
            s.BeginBlockLevelElement("H" + Math.Clamp(mark.Level, 1, 6).ToString(System.Globalization.CultureInfo.InvariantCulture)));
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, left) = (lines[i], flow.Left);
            flow.Add(new FlowBox(type.Leading, (canvas, top) => canvas.Line(line, left, top + type.Baseline))
            {
                KeepWithNext = true,
                Heading = i == 0 ? mark : null,
            });
        }
        flow.End();
        flow.Space(mark.Level == 3 ? 2 : 4);
    }

    private void WriteParagraph(ParagraphBlock paragraph)
    {
        if (FigureReference.Find(paragraph, context.Document) is { } drawing)
        {
            new PdfFigureWriter(flow, context, this).Write(drawing);
            return;
        }
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.Paragraph));
        WriteLines(LineBreaker.Break(context.Runs.Read(paragraph.Inline, context.Types.Body), flow.Width), context.Types.Body);
        // Words that announce a table or a list must not stand last on a page.
        if (InlineText.Plain(paragraph.Inline).EndsWith(':')) flow.Last.KeepWithNext = true;
        flow.End();
    }

    private void WriteRule()
    {
        var (left, right) = (flow.Left, flow.Left + flow.Width);
        flow.Add(new FlowBox(8, (canvas, top) => canvas.Rule(left, right, top + 4, PdfLook.Hair)));
    }

    private void WriteCode(CodeBlock code)
    {
        var type = context.Types.Code;
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.Paragraph));
        flow.Begin(s => s.BeginElement(PdfInlineLevelElementTag.Code));
        flow.Indented(10, 0, () =>
        {
            foreach (var line in code.Lines.ToString().Split('\n'))
                WriteLines(LineBreaker.Break(context.Runs.Read(line.TrimEnd(), type), flow.Width), type);
        });
        flow.End();
        flow.End();
    }
}
