using InstallPacket.Drawings;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Markdown;

/// <summary>Finds the drawing that a paragraph stands for.</summary>
internal static class FigureReference
{
    private const string Folder = "figures/";
    private const string Ending = ".svg";

    /// <summary>The drawing when the paragraph is one image and nothing else; null for ordinary text.</summary>
    /// <exception cref="DocumentException">The image names no drawing of the document.</exception>
    public static Drawing? Find(ParagraphBlock paragraph, PacketDocument document)
    {
        if (paragraph.Inline?.FirstChild is not LinkInline { IsImage: true, NextSibling: null } image) return null;
        var url = image.Url ?? "";
        if (!url.StartsWith(Folder, StringComparison.Ordinal) || !url.EndsWith(Ending, StringComparison.Ordinal)) throw Stray(url,
            document);
        var id = url[Folder.Length..^Ending.Length];
        return document.Figures.TryGetValue(id, out var drawing) ? drawing
            : throw new DocumentException($"document '{document.Name}' has no figure '{id}'");
    }

    /// <summary>The refusal of an image that is no figure.</summary>
    public static DocumentException Stray(string? url, PacketDocument document) => new(
        $"document '{document.Name}': an image must stand alone in its paragraph and name figures/ID.svg, not '{url}'");
}
