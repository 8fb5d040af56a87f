using System.Globalization;
using System.Text;
using InstallPacket.Drawings;
using Markdig.Extensions.CustomContainers;
using Markdig.Extensions.Tables;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax;

namespace InstallPacket.Packets.Html;

/// <summary>Writes the blocks of a document as semantic elements.</summary>
internal sealed class HtmlBlockWriter(StringBuilder page, PacketDocument document)
{
    private string _heading = document.Title;
    private int _tables;

    public void Write(ContainerBlock container)
    {
        foreach (var block in container) Write(block);
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case HeadingBlock heading: WriteHeading(heading); break;
            case ParagraphBlock paragraph: WriteParagraph(paragraph); break;
            case ListBlock list: WriteList(list); break;
            case Table table:
                _tables++;
                HtmlTableWriter.Write(page, table, document,
                    document.Words.Say("running-heads.table", ("number", _tables), ("heading", _heading)));
                break;
            case CustomContainer container: WriteNotice(container); break;
            case QuoteBlock quote:
                page.Append("<blockquote>\n");
                Write((ContainerBlock)quote);
                page.Append("</blockquote>\n");
                break;
            case ThematicBreakBlock: page.Append("<hr>\n"); break;
            case CodeBlock code:
                page.Append($"<pre tabindex=\"0\"><code>{HtmlText.Escape(code.Lines.ToString())}</code></pre>\n");
                break;
            case LinkReferenceDefinitionGroup: break;
            default: throw new NotSupportedException($"document '{document.Name}': the page writer does not know {block.GetType().Name}");
        }
    }

    private void WriteHeading(HeadingBlock heading)
    {
        _heading = InlineText.Plain(heading.Inline);
        page.Append(CultureInfo.InvariantCulture, $"<h{heading.Level} id=\"{HtmlText.Escape(HtmlText.IdOf(heading))}\">");
        HtmlInlineWriter.Write(page, heading.Inline, document);
        page.Append(CultureInfo.InvariantCulture, $"</h{heading.Level}>\n");
    }

    private void WriteParagraph(ParagraphBlock paragraph)
    {
        if (FigureReference.Find(paragraph, document) is { } drawing) { WriteFigure(drawing); return; }
        page.Append("<p>");
        HtmlInlineWriter.Write(page, paragraph.Inline, document);
        page.Append("</p>\n");
    }

    private void WriteFigure(Drawing drawing)
    {
        page.Append($"<figure id=\"figure-{HtmlText.Escape(drawing.Id)}\">\n");
        page.Append($"<div class=\"drawing\" role=\"region\" tabindex=\"0\" aria-label=\"{HtmlText.Escape(drawing.Title)}\">\n");
        page.Append(SvgPainter.Paint(drawing));
        page.Append($"</div>\n<figcaption>{HtmlText.Escape(drawing.Title)}</figcaption>\n</figure>\n");
    }

    private void WriteList(ListBlock list)
    {
        var tasks = list.OfType<ListItemBlock>().Any(IsTask);
        var start = list.IsOrdered && list.OrderedStart is { Length: > 0 } first && first != "1" ? $" start=\"{HtmlText.Escape(first)}\""
            : "";
        page.Append($"<{(list.IsOrdered ? "ol" : "ul")}{(tasks ? " class=\"tasks\"" : "")}{start}>\n");
        foreach (var item in list.OfType<ListItemBlock>()) WriteItem(item, list.IsLoose);
        page.Append(list.IsOrdered ? "</ol>\n" : "</ul>\n");
    }

    private void WriteItem(ListItemBlock item, bool loose)
    {
        page.Append("<li>");
        foreach (var block in item)
        {
            if (block is ParagraphBlock { Inline.FirstChild: TaskList task } step) WriteTask(step, task);
            else if (block is ParagraphBlock text && !loose && FigureReference.Find(text, document) is null)
                HtmlInlineWriter.Write(page, text.Inline, document);
            else Write(block);
        }
        page.Append("</li>\n");
    }

    /// <summary>The whole line is the label, so that a gloved finger hits it.</summary>
    private void WriteTask(ParagraphBlock step, TaskList task)
    {
        page.Append($"<label class=\"task\"><input type=\"checkbox\"{(task.Checked ? " checked" : "")}><span>");
        HtmlInlineWriter.Write(page, step.Inline, document);
        page.Append("</span></label>\n");
    }

    private void WriteNotice(CustomContainer container)
    {
        var notice = Notice.Of(container, document);
        var element = notice.Kind == "stop" ? "section" : "aside";
        var label = HtmlText.Escape(notice.Label);
        page.Append($"<{element} class=\"notice {notice.Kind}\" aria-label=\"{label}\">\n<p class=\"notice-label\"><strong>{label}</strong></p>\n");
        Write((ContainerBlock)container);
        page.Append($"</{element}>\n");
    }

    private static bool IsTask(ListItemBlock item) => item.FirstOrDefault() is ParagraphBlock { Inline.FirstChild: TaskList };
}
