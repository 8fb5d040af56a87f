using InstallPacket.Drawings;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Pdf;

/// <summary>Turns running text of the tree into runs, and refuses characters that the fonts cannot draw.</summary>
/// <param name="document">The document, for messages.</param>
/// <param name="fonts">The faces.</param>
internal sealed class RunReader(PacketDocument document, FontSet fonts)
{
    private const double CodeShare = 0.92;

    /// <summary>The runs of a paragraph, heading or cell.</summary>
    public IReadOnlyList<TextRun> Read(Inline? inline, PdfType type)
    {
        var runs = new List<TextRun>();
        Append(runs, inline, type, null);
        return runs;
    }

    /// <summary>The runs of a text that is no Markdown.</summary>
    public IReadOnlyList<TextRun> Read(string text, PdfType type)
    {
        var runs = new List<TextRun>();
        Add(runs, text, type, null);
        return runs;
    }

    private void Append(List<TextRun> runs, Inline? inline, PdfType type, string? target)
    {
        switch (inline)
        {
            case null or TaskList: break;
            case LiteralInline literal: Add(runs, literal.Content.ToString(), type, target); break;
            case HtmlEntityInline entity: Add(runs, entity.Transcoded.ToString(), type, target); break;
            case CodeInline code: Add(runs, code.Content, type with { Face = fonts.Mono, Size = type.Size * CodeShare }, target); break;
            case LineBreakInline line: Add(runs, line.IsHard ? TextRun.LineEnd : " ", type, target); break;
            case AutolinkInline link: Add(runs, link.Url, type, link.IsEmail ? "mailto:" + link.Url : link.Url); break;
            case EmphasisInline emphasis: AppendChildren(runs, emphasis, Emphasised(type, emphasis), target); break;
            case LinkInline { IsImage: true } image: throw FigureReference.Stray(image.Url, document);
            case LinkInline link: AppendChildren(runs, link, type, Target(link.Url)); break;
            case ContainerInline container when container.GetType() == typeof(ContainerInline): AppendChildren(runs, container, type,
                target); break;
            default: throw new NotSupportedException($"document '{document.Name}': the PDF writer does not know {inline.GetType().Name}");
        }
    }

    // A PDF travels alone and has places for its headings: a link to a file beside it or to a row of a table (its place holds a full stop)
    // would lead
    // nowhere. Its words stay, the link does not.
    private static string? Target(string? url) =>
        url is { Length: > 0 } && (url[0] == '#' ? !url.Contains('.', StringComparison.Ordinal) : LinkTarget.IsWeb(url)) ? url : null;

    private void AppendChildren(List<TextRun> runs, ContainerInline container, PdfType type, string? target)
    {
        foreach (var child in container) Append(runs, child, type, target);
    }

    // Bold wins over italic where both are asked for: the theme has no bold italic, and weight reads better at arm's length.
    private PdfType Emphasised(PdfType type, EmphasisInline emphasis) =>
        emphasis.DelimiterCount >= 2 ? type with { Face = fonts.Strong }
        : type.Face == fonts.Strong ? type : type with { Face = fonts.Italic };

    private void Add(List<TextRun> runs, string text, PdfType type, string? target)
    {
        if (text.Length == 0) return;
        if (text != TextRun.LineEnd)
        {
            text = text.Replace('\n', ' ').Replace('\t', ' ');
            FontSet.Require(type.Face, text, $"document '{document.Name}'");
        }
        runs.Add(target is null ? new TextRun(text, type) : new TextRun(text, type with { Rgb = Palette.Rgb(Ink.Accent) }, target));
    }
}
