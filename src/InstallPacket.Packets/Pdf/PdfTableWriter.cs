using Markdig.Extensions.Tables;
using Markdig.Syntax;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Lays out tables: columns fitted to their content, one box per row, the head repeated on each page.</summary>
internal sealed class PdfTableWriter(Flow flow, PdfContext context)
{
    private const double CellSide = 5;
    private const double CellAbove = 3;

    /// <summary>A cell in its column before and after breaking.</summary>
    private sealed record Cell(IReadOnlyList<TextRun> Runs, TableColumnAlign Align, bool IsHead);

    private sealed record Column(double Left, double Width);

    public void Write(Table table)
    {
        var rows = table.OfType<TableRow>().ToList();
        var cells = rows.Select(r => r.Cast<TableCell>().Select((c, i) => CellOf(c, AlignOf(table, i), r.IsHeader)).ToList()).ToList();
        var columns = Columns(cells);
        flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.Table));
        FlowBox? head = null;
        for (var r = 0; r < rows.Count; r++)
        {
            foreach (var part in RowBoxes(cells[r], columns, rows[r].IsHeader, head))
            {
                if (r > 0) flow.NoSpace();
                flow.Begin(s => s.BeginElement(PdfBlockLevelElementTag.TableRow));
                flow.Add(part);
                flow.End();
                if (rows[r].IsHeader && head is null && r == 0) head = part;
            }
        }
        flow.End();
        flow.Space(10);
    }

    private Cell CellOf(TableCell cell, TableColumnAlign align, bool head)
    {
        var type = head ? context.Types.TableHead : context.Types.Table;
        var runs = new List<TextRun>();
        foreach (var block in cell)
        {
            if (block is not ParagraphBlock text)
                throw new NotSupportedException($"document '{context.Document.Name}': the PDF writer does not know {block.GetType().Name} in a table cell");
            runs.AddRange(context.Runs.Read(text.Inline, type));
        }
        return new Cell(runs, align, head);
    }

    private List<Column> Columns(List<List<Cell>> rows)
    {
        var wishes = new ColumnWish[rows.Max(r => r.Count)];
        foreach (var row in rows)
            for (var i = 0; i < row.Count; i++) wishes[i] = Add(wishes[i], row[i]);
        var columns = new List<Column>();
        var left = flow.Left;
        foreach (var width in ColumnFit.Widths(wishes, flow.Width))
        {
            columns.Add(new Column(left, width));
            left += width;
        }
        return columns;
    }

    private static ColumnWish Add(ColumnWish wish, Cell cell)
    {
        var narrowest = LineBreaker.NarrowestWidth(cell.Runs) + 2 * CellSide;
        var natural = LineBreaker.NaturalWidth(cell.Runs) + 2 * CellSide;
        return new ColumnWish(
            Math.Max(wish.Narrowest, narrowest), cell.IsHead ? wish.Body : Math.Max(wish.Body, natural), Math.Max(wish.Natural, natural));
    }

    /// <summary>One box for the row; a row taller than a page goes on as further rows.</summary>
    private IEnumerable<FlowBox> RowBoxes(List<Cell> cells, List<Column> columns, bool isHead, FlowBox? head)
    {
        var type = isHead ? context.Types.TableHead : context.Types.Table;
        // Rounding in the sums of widths must not break a line that fits exactly.
        var lines = cells.Select((c, i) => LineBreaker.Break(c.Runs, columns[i].Width - 2 * CellSide + 0.05)).ToList();
        var mostLines = (int)((context.LargestFigure - (head?.Height ?? 0) - 2 * CellAbove) / type.Leading);
        var tallest = lines.Select(l => l.Count).DefaultIfEmpty(1).Max();
        for (var from = 0; from < tallest; from += mostLines)
        {
            var start = from;
            var part = lines.Select(l => (IReadOnlyList<TextLine>)[.. l.Skip(start).Take(mostLines)]).ToList();
            var height = Math.Min(mostLines, tallest - from) * type.Leading + 2 * CellAbove;
            yield return new FlowBox(height, (canvas, top) => DrawRow(canvas, top, height, new Row(cells, part, columns, type, isHead)))
            {
                KeepWithNext = isHead,
                RepeatedHead = head,
            };
        }
    }

    private sealed record Row(List<Cell> Cells, List<IReadOnlyList<TextLine>> Lines, List<Column> Columns, PdfType Type, bool IsHead);

    private static void DrawRow(PageCanvas canvas, double top, double height, Row row)
    {
        var right = row.Columns[^1].Left + row.Columns[^1].Width;
        canvas.Rule(row.Columns[0].Left, right, top + height, row.IsHead ? PdfLook.Firm : PdfLook.Hair);
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var column = i;
            canvas.Element(s => BeginCell(s, row.IsHead), () => DrawCell(canvas, top, height, (row, column)));
        }
    }

    private static void DrawCell(PageCanvas canvas, double top, double height, (Row Row, int Column) place)
    {
        var (row, i) = place;
        // Heads stand on the rule below them.
        var y = row.IsHead ? top + height - CellAbove - row.Lines[i].Count * row.Type.Leading : top + CellAbove;
        foreach (var line in row.Lines[i])
        {
            var spare = row.Columns[i].Width - 2 * CellSide - line.Width;
            var shift = row.Cells[i].Align switch { TableColumnAlign.Right => spare, TableColumnAlign.Center => spare / 2, _ => 0 };
            canvas.Line(line, row.Columns[i].Left + CellSide + shift, y + row.Type.Baseline);
            y += row.Type.Leading;
        }
    }

    private static void BeginCell(StructureBuilder structure, bool head)
    {
        structure.BeginElement(head ? PdfBlockLevelElementTag.TableHeaderCell : PdfBlockLevelElementTag.TableDataCell);
        if (head) MarkAsColumnHead(structure.CurrentStructureElement);
    }

    // The library has no call for the scope of a table head, but its dictionary is open.
    private static void MarkAsColumnHead(PdfDictionary element)
    {
        var attributes = new PdfDictionary(element.Owner);
        attributes.Elements.SetName("/O", "/Table");
        attributes.Elements.SetName("/Scope", "/Column");
        element.Elements["/A"] = attributes;
    }

    private static TableColumnAlign AlignOf(Table table, int column) =>
        column < table.ColumnDefinitions.Count ? table.ColumnDefinitions[column].Alignment ?? TableColumnAlign.Left : TableColumnAlign.Left;
}
