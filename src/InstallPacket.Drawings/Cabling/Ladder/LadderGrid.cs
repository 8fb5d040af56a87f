using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>Draws the level axis, the columns and their names.</summary>
internal sealed class LadderGrid(SheetCanvas canvas, LadderScale scale, UnitPrinter print)
{
    public const double NamesMm = 32;
    private const double SizeMm = 3.2;

    public void Draw(IReadOnlyList<string> names)
    {
        for (var level = scale.Low; level <= scale.High; level += LadderScale.GridDb)
        {
            canvas.Line(new(Ink.Faint, 0.15), new(scale.Field.Left, scale.Y(level)), new(scale.Field.Right, scale.Y(level)));
            canvas.Text(new(new(scale.Field.Left - 1.5, scale.Y(level) + 1.1), print.Number(level, 0), SizeMm, Anchor: Anchor.End));
        }
        canvas.Text(new(new(scale.Field.Left - 1.5, scale.Field.Top - 4.5), print.LevelUnit, SizeMm, Anchor: Anchor.End, Strong: true));
        for (var i = 0; i < names.Count; i++) Name(i, names[i]);
    }

    // Turned names keep the columns narrow enough for a chain of a dozen parts.
    private void Name(int column, string name)
    {
        var x = scale.X(column);
        if (column > 0) canvas.Line(new(Ink.Faint, 0.15), new(x, scale.Field.Top), new(x, scale.Field.Bottom));
        var text = TextWrap.Lines(name, SizeMm, false, NamesMm - 3, 1, canvas.Measure)[0];
        canvas.Text(new(new(x + scale.ColumnMm / 2 + 1.1, scale.Field.Bottom + 2), text, SizeMm, Anchor: Anchor.End, TurnDeg: -90));
    }
}
