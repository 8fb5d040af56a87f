using System.Globalization;
using System.Text;
using InstallPacket.Drawings;
using Markdig.Syntax;

namespace InstallPacket.Packets.Html;

/// <summary>Writes a document as one page that needs no script and, beside the fonts of the theme, no other file.</summary>
public static class HtmlDocumentWriter
{
    /// <summary>Writes the page.</summary>
    /// <param name="document">What it says.</param>
    /// <param name="theme">How it looks.</param>
    /// <returns>The page, lines ended by LF.</returns>
    /// <exception cref="DocumentException">The text names an unknown figure or box.</exception>
    /// <exception cref="MissingGlyphException">A figure holds a character that the theme's font lacks.</exception>
    public static string Write(PacketDocument document, Theme theme)
    {
        var tree = MarkdownReader.Read(document.Markdown);
        foreach (var drawing in document.Figures.Values) theme.Fonts.Require(drawing);
        var page = new StringBuilder();
        AppendHead(page, document, theme);
        AppendTop(page, document, tree);
        page.Append("<main id=\"content\" tabindex=\"-1\">\n");
        if (!tree.OfType<HeadingBlock>().Any(h => h.Level == 1)) page.Append($"<h1>{HtmlText.Escape(document.Title)}</h1>\n");
        new HtmlBlockWriter(page, document).Write(tree);
        page.Append("</main>\n");
        page.Append($"<footer class=\"page-foot\"><p>{HtmlText.Escape(document.Footer)}</p></footer>\n</body>\n</html>\n");
        return page.ToString();
    }

    private static void AppendHead(StringBuilder page, PacketDocument document, Theme theme)
    {
        page.Append($"<!doctype html>\n<html lang=\"{HtmlText.Escape(document.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n");
        // A page runs nothing and fetches nothing but its own pictures and fonts, whatever a job or a theme says.
        page.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src 'self' data:; style-src 'unsafe-inline'; font-src 'self'; base-uri 'none'; form-action 'none'\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"color-scheme\" content=\"light dark\">\n");
        page.Append($"<title>{HtmlText.Escape(document.Title)}</title>\n<style>\n");
        // A style sheet cannot be escaped; the only way out of the element is its end tag, which no sheet needs.
        page.Append(theme.Style.Replace("</", "<\\/", StringComparison.Ordinal));
        page.Append(SvgPainter.StyleRules()).Append("</style>\n</head>\n");
    }

    private static void AppendTop(StringBuilder page, PacketDocument document, MarkdownDocument tree)
    {
        page.Append(document.Stamp is null ? "<body>\n" : "<body class=\"stamped\">\n");
        page.Append($"<a class=\"skip\" href=\"#content\">{HtmlText.Escape(document.Words.Say("running-heads.skip"))}</a>\n<header class=\"page-head\">\n");
        if (document.Stamp is { } stamp) page.Append($"<p class=\"stamp\"><strong>{HtmlText.Escape(stamp)}</strong></p>\n");
        if (document.Logo is { } logo)
            page.Append(CultureInfo.InvariantCulture, $"<img class=\"logo\" alt=\"{HtmlText.Escape(logo.Words)}\" style=\"width: {logo.WidthMm:0.#}mm\" src=\"data:image/png;base64,{Convert.ToBase64String(logo.Png)}\">\n");
        page.Append($"<p class=\"page-name\">{HtmlText.Escape(document.Title)}</p>\n");
        AppendContents(page, tree, HtmlText.Escape(document.Words.Say("running-heads.contents")));
        page.Append("</header>\n");
    }

    private static void AppendContents(StringBuilder page, MarkdownDocument tree, string contents)
    {
        var headings = tree.OfType<HeadingBlock>().Where(h => h.Level == 2).ToList();
        if (headings.Count < 2) return;
        page.Append($"<nav aria-label=\"{contents}\"><details><summary>{contents}</summary>\n<ol>\n");
        foreach (var heading in headings)
            page.Append($"<li><a href=\"#{HtmlText.Escape(HtmlText.IdOf(heading))}\">{HtmlText.Escape(InlineText.Plain(heading.Inline))}</a></li>\n");
        page.Append("</ol>\n</details></nav>\n");
    }
}
