using System.Text;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Html;

/// <summary>Writes running text.</summary>
internal static class HtmlInlineWriter
{
    public static void Write(StringBuilder page, Inline? inline, PacketDocument document)
    {
        switch (inline)
        {
            case null or TaskList: break;
            case LiteralInline literal: page.Append(HtmlText.Escape(literal.Content.AsSpan())); break;
            case CodeInline code: page.Append($"<code>{HtmlText.Escape(code.Content)}</code>"); break;
            case HtmlEntityInline entity: page.Append(HtmlText.Escape(entity.Transcoded.AsSpan())); break;
            case LineBreakInline line: page.Append(line.IsHard ? "<br>\n" : "\n"); break;
            case AutolinkInline link:
                page.Append($"<a href=\"{HtmlText.Escape(link.IsEmail ? "mailto:" + link.Url : link.Url)}\">{HtmlText.Escape(link.Url)}</a>");
                break;
            case EmphasisInline emphasis:
                WriteInside(page, emphasis, document, emphasis.DelimiterCount >= 2 ? "strong" : "em");
                break;
            case LinkInline { IsImage: true } image: throw FigureReference.Stray(image.Url, document);
            // A link without words to a place in this page is that place.
            case LinkInline link when PlaceOf(link) is { } place: page.Append($"<span id=\"{HtmlText.Escape(place)}\"></span>"); break;
            case LinkInline link:
                page.Append($"<a href=\"{HtmlText.Escape(link.Url)}\">");
                WriteChildren(page, link, document);
                page.Append("</a>");
                break;
            case ContainerInline container when container.GetType() == typeof(ContainerInline):
                WriteChildren(page, container, document);
                break;
            default: throw new NotSupportedException($"document '{document.Name}': the page writer does not know {inline.GetType().Name}");
        }
    }

    /// <summary>The place that an inline is; null for any other.</summary>
    public static string? PlaceOf(Inline? inline) => inline is LinkInline { IsImage: false, FirstChild: null, Url: ['#', _, ..] url }
        ? url[1..] : null;

    private static void WriteInside(StringBuilder page, ContainerInline inline, PacketDocument document, string element)
    {
        page.Append($"<{element}>");
        WriteChildren(page, inline, document);
        page.Append($"</{element}>");
    }

    private static void WriteChildren(StringBuilder page, ContainerInline container, PacketDocument document)
    {
        foreach (var child in container) Write(page, child, document);
    }
}
