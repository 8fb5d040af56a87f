using System.Text;
using Markdig.Extensions.Tables;
using Markdig.Syntax;

namespace InstallPacket.Packets.Html;

/// <summary>Writes a table with column heads, inside a container that scrolls on a narrow screen and can take the focus.</summary>
internal static class HtmlTableWriter
{
    public static void Write(StringBuilder page, Table table, PacketDocument document, string label)
    {
        page.Append($"<div class=\"table\" role=\"region\" tabindex=\"0\" aria-label=\"{HtmlText.Escape(label)}\">\n<table>\n");
        var rows = table.OfType<TableRow>().ToList();
        var heads = rows.TakeWhile(r => r.IsHeader).ToList();
        WriteRows(page, table, heads, document, "thead");
        WriteRows(page, table, rows.Skip(heads.Count), document, "tbody");
        page.Append("</table>\n</div>\n");
    }

    private static void WriteRows(StringBuilder page, Table table, IEnumerable<TableRow> rows, PacketDocument document, string group)
    {
        var list = rows.ToList();
        if (list.Count == 0) return;
        page.Append($"<{group}>\n");
        foreach (var row in list)
        {
            page.Append("<tr>");
            var links = LinksOf(row, document);
            for (var i = 0; i < row.Count; i++)
                WriteCell(page, (TableCell)row[i], ClassOf(table, i), row.IsHeader, document, i > 0 && i <= links.Count ? links[i - 1]
                    : null);
            page.Append("</tr>\n");
        }
        page.Append($"</{group}>\n");
    }

    // A row that has a place of its own may come from other rows.
    private static IReadOnlyList<string?> LinksOf(TableRow row, PacketDocument document) =>
        row is [TableCell and [ParagraphBlock text, ..], ..] && HtmlInlineWriter.PlaceOf(text.Inline?.FirstChild) is { } place
        && document.RowLinks.TryGetValue(place, out var links) ? links : [];

    private static void WriteCell(StringBuilder page, TableCell cell, string look, bool head, PacketDocument document, string? link)
    {
        page.Append(head ? $"<th scope=\"col\"{look}>" : $"<td{look}>");
        if (link is not null) page.Append($"<a href=\"#{HtmlText.Escape(link)}\">");
        foreach (var block in cell)
        {
            if (block is not ParagraphBlock text)
                throw new NotSupportedException($"document '{document.Name}': the page writer does not know {block.GetType().Name} in a table cell");
            HtmlInlineWriter.Write(page, text.Inline, document);
        }
        if (link is not null) page.Append("</a>");
        page.Append(head ? "</th>" : "</td>");
    }

    private static string ClassOf(Table table, int column)
    {
        var align = column < table.ColumnDefinitions.Count ? table.ColumnDefinitions[column].Alignment : null;
        return align switch { TableColumnAlign.Right => " class=\"num\"", TableColumnAlign.Center => " class=\"mid\"", _ => "" };
    }
}
