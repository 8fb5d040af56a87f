using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>Draws how high the strongest channel may stand behind each amplifier.</summary>
internal sealed class LadderCeilings(SheetCanvas canvas, LadderScale scale, SheetPlan plan)
{
    private const double SizeMm = 3;
    private const double StrokeMm = 2.2;
    private const double ArrowMm = 4.5;

    /// <summary>Strokes that point up into what is forbidden.</summary>
    public static void Strokes(SheetCanvas canvas, double left, double right, double y)
    {
        for (var x = left; x <= right; x += 1.8) canvas.Line(new(Ink.Warning, 0.3), new(x, y), new(x + 1.5, y - StrokeMm));
    }

    /// <summary>The ground of the marks, which the figures of the steps leave free.</summary>
    public IEnumerable<PaperBox> Marks(LadderLine line) => Steps(line).Select(s => Mark(s.Column, s.CeilingDbm));

    /// <summary>Draws marks and words.</summary>
    /// <param name="line">The strongest channel.</param>
    /// <param name="labels">Ground that is taken; the words are added.</param>
    /// <param name="ways">Lines that the words keep off.</param>
    public void Draw(LadderLine line, List<PaperBox> labels, IReadOnlyList<PaperPoint[]> ways)
    {
        foreach (var (column, ceiling) in Steps(line))
        {
            var mark = Mark(column, ceiling);
            if (Above(ceiling)) canvas.Arrow(new(mark.Left + 1, mark.Bottom), new(mark.Left + 1, mark.Top), 0.6, 2.4, Ink.Warning);
            else
            {
                canvas.Line(new(Ink.Warning, 0.8), new(mark.Left, mark.Bottom), new(mark.Right, mark.Bottom));
                Strokes(canvas, mark.Left, mark.Right - 1.5, mark.Bottom);
            }
            Words(mark, ceiling, labels, ways);
        }
    }

    private static IEnumerable<(int Column, double CeilingDbm)> Steps(LadderLine line) =>
        line.Steps.Select((s, i) => (i, s.CeilingDbm)).Where(s => s.CeilingDbm is not null).Select(s => (s.i, s.CeilingDbm!.Value));

    private bool Above(double ceilingDbm) => plan.Print.LevelIn(ceilingDbm) > scale.High;

    // At least as long as three strokes; an arrow stands at the upper edge instead when the level lies above it.
    private PaperBox Mark(int column, double ceilingDbm)
    {
        var middle = scale.X(column) + scale.ColumnMm / 2;
        if (Above(ceilingDbm)) return new(middle - 1, scale.Field.Top, middle + 1, scale.Field.Top + ArrowMm);
        var (half, y) = (Math.Max(2.7, scale.ColumnMm / 2), scale.Y(plan.Print.LevelIn(ceilingDbm)));
        return new(middle - half, y - StrokeMm, middle + half, y);
    }

    // The nearest place above the mark, else below it, where the words cover nothing.
    private void Words(PaperBox mark, double ceilingDbm, List<PaperBox> labels, IReadOnlyList<PaperPoint[]> ways)
    {
        var text = plan.Say("ladder.amplifier", ("level", plan.Print.Level(ceilingDbm)));
        var half = canvas.Measure.WidthMm(text, SizeMm) / 2;
        var x = Math.Clamp((mark.Left + mark.Right) / 2, scale.Field.Left + half + 1, scale.Field.Right - half - 1);
        var above = Enumerable.Range(0, 40).Select(i => mark.Top - 1.2 - i).Where(y => y - 0.8 * SizeMm > scale.Field.Top);
        var below = Enumerable.Range(0, 90).Select(i => mark.Bottom + 3.2 + i).Where(y => y < scale.Field.Bottom - 1);
        Caption At(double y) => new(new(x, y), text, SizeMm, Ink.Warning, Anchor.Middle);
        var free = above.Concat(below).Select(At).FirstOrDefault(c => Free(PaperBox.Of(c, canvas.Measure).Grow(0.3), labels, ways))
            ?? At(mark.Bottom + 3.2);
        var box = PaperBox.Of(free, canvas.Measure);
        labels.Add(box);
        canvas.Box(box.Grow(0.2), new(Ink.Paper, 0), Fill.Paper);
        canvas.Text(free);
    }

    private static bool Free(PaperBox box, List<PaperBox> labels, IReadOnlyList<PaperPoint[]> ways) =>
        !labels.Any(box.Overlaps) && !ways.Any(w => w.Zip(w.Skip(1)).Any(leg => box.CutBy(leg.First, leg.Second)));
}
