namespace InstallPacket.Drawings.Marks;

/// <summary>A note beside a view, tied to a height of it.</summary>
/// <param name="At">The point that it speaks of.</param>
/// <param name="Lines">Its words.</param>
/// <param name="Strong">Whether its first line stands out.</param>
/// <param name="Ink">What it means.</param>
internal sealed record SideNote(PaperPoint At, IReadOnlyList<string> Lines, bool Strong = false, Ink Ink = Ink.Line);

/// <summary>A column of notes beside a view: each as near to its point as its neighbours let it, none over another.</summary>
internal static class SideNotes
{
    private const double SizeMm = 3.2;
    private const double LeadMm = 4;
    private const double GapMm = 1.6;

    /// <summary>Draws them.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="notes">The notes.</param>
    /// <param name="column">Ground of the column.</param>
    /// <param name="rightOfView">Whether the column stands right of the view, so that leaders come from the left.</param>
    public static void Draw(SheetCanvas canvas, IReadOnlyList<SideNote> notes, PaperBox column, bool rightOfView)
    {
        var order = notes.Select((n, i) => (Note: n, i)).OrderBy(n => n.Note.At.Y).ThenBy(n => n.i)
            .Select(n =>
                n.Note with { Lines = [.. n.Note.Lines.SelectMany(l =>
                TextWrap.Lines(l, SizeMm, n.Note.Strong, column.Width, 3, canvas.Measure))] }).ToArray();
        var tops = ColumnStack.Tops([.. order.Select(n => (n.At.Y, n.Lines.Count * LeadMm))], GapMm, column.Top, column.Bottom);
        for (var i = 0; i < order.Length; i++) Note(canvas, order[i], tops[i], column, rightOfView);
    }

    private static void Note(SheetCanvas canvas, SideNote note, double top, PaperBox column, bool rightOfView)
    {
        var edge = rightOfView ? column.Left - 1 : column.Right + 1;
        var bend = rightOfView ? column.Left - 4 : column.Right + 4;
        var middle = top + LeadMm * 0.5;
        canvas.Line(new(Ink.Faint, 0.25), note.At, new(bend, middle), new(edge, middle));
        for (var k = 0; k < note.Lines.Count; k++)
        {
            var strong = note.Strong && k == 0;
            canvas.Text(new(new(rightOfView ? column.Left : column.Right, top + k * LeadMm + 3.1), note.Lines[k], SizeMm, note.Ink,
                rightOfView ? Anchor.Start : Anchor.End, strong));
        }
    }
}
