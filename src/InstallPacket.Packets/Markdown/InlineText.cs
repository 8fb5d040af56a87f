using System.Text;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Markdown;

/// <summary>The bare words of a piece of text: for contents lists, bookmarks and labels.</summary>
internal static class InlineText
{
    public static string Plain(Inline? inline)
    {
        var words = new StringBuilder();
        Append(words, inline);
        return words.ToString().Trim();
    }

    private static void Append(StringBuilder words, Inline? inline)
    {
        switch (inline)
        {
            case LiteralInline literal: words.Append(literal.Content.AsSpan()); break;
            case CodeInline code: words.Append(code.Content); break;
            case HtmlEntityInline entity: words.Append(entity.Transcoded.AsSpan()); break;
            case AutolinkInline link: words.Append(link.Url); break;
            case LineBreakInline: words.Append(' '); break;
            case ContainerInline container:
                foreach (var child in container) Append(words, child);
                break;
        }
    }
}
