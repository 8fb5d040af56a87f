using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>Draws the channels, what each step adds or takes, and the limits at the receiver.</summary>
internal sealed class LadderLines(SheetCanvas canvas, LadderScale scale, UnitPrinter print)
{
    // Two values that print alike within this are written once.
    private const double SameDb = 0.1;
    private const double SizeMm = 3;

    private const double AsideMm = 3.2;

    private readonly List<PaperBox> _labels = [];
    private readonly List<(double Y, Caption Caption)> _asides = [];

    /// <summary>How a channel is drawn: the weakest is what the plan is about.</summary>
    public static Pen Pen(string role) => role == "weakest" ? new(Ink.Accent, 1.1, Dash.Dashed) : new(Ink.Line, 0.6);

    public void Draw(LadderPlan ladder)
    {
        if (ladder.LargestDbm is { } largest) Largest(scale.Y(print.LevelIn(largest)), print.Level(largest));
        var (top, bottom) = (ladder.Lines[0], ladder.Lines[^1]);
        for (var i = 1; i < scale.Columns; i++) Gains(i, top, bottom);
        foreach (var line in ladder.Lines)
        {
            canvas.Line(Pen(line.Role), [.. line.Steps.SelectMany((s, i) => new PaperPoint[] { new(scale.X(i), Y(s)), new(scale.X(i + 1), Y(s)) })]);
            End(line);
        }
        if (ladder.Lines.FirstOrDefault(l => l.Role == "weakest") is { } weakest) Margin(weakest);
        Asides();
    }

    private double Y(LadderStep step) => scale.Y(print.LevelIn(step.LevelDbm));

    private void Gains(int i, LadderLine top, LadderLine bottom)
    {
        var same = ReferenceEquals(top, bottom) || Math.Abs(top.Steps[i].GainDb - bottom.Steps[i].GainDb) <= SameDb;
        Gain(i, top);
        if (!same) Gain(i, bottom);
    }

    // Above the step for the upper line, below it for the lower one, so that the lines stay free.
    private void Gain(int i, LadderLine line)
    {
        var upper = line.Role != "weakest";
        var (now, before) = (Y(line.Steps[i]), Y(line.Steps[i - 1]));
        var text = UnitPrinter.Margin(line.Steps[i].GainDb).Replace("\u00A0dB", "", StringComparison.Ordinal);
        var y = upper ? Math.Min(now, before) - 1.6 : Math.Max(now, before) + 3.6;
        var caption = new Caption(new(scale.X(i) + scale.ColumnMm / 2, y), text, SizeMm, Anchor: Anchor.Middle);
        for (var tries = 0; tries < 12 && _labels.Any(PaperBox.Of(caption, canvas.Measure).Overlaps); tries++)
            caption = caption with { At = caption.At with { Y = caption.At.Y + (upper ? -3 : 3) } };
        var box = PaperBox.Of(caption, canvas.Measure);
        _labels.Add(box);
        // The grid must not run through a figure: it would read as a minus sign.
        canvas.Box(new(box.Left - 0.9, box.Top - 0.1, box.Right + 0.9, box.Bottom + 0.1), new(Ink.Paper, 0), Fill.Paper);
        canvas.Text(caption);
    }

    private void End(LadderLine line)
    {
        var last = line.Steps[^1];
        Aside(Y(last), print.Level(last.LevelDbm), strong: line.Role == "weakest");
    }

    private void Aside(double y, string text, bool strong = false, Ink ink = Ink.Line) =>
        _asides.Add((y, new(new(scale.Field.Right + 9, 0), text, AsideMm, ink, Anchor.Start, strong)));

    // Words right of the chart, in the order of their heights; those that lie close make room for each other.
    private void Asides()
    {
        var sorted = _asides.OrderBy(a => a.Y).ToArray();
        var tops = ColumnStack.Tops([.. sorted.Select(a => (a.Y, AsideMm))], 0.6, scale.Field.Top, scale.Field.Bottom + 1);
        for (var i = 0; i < sorted.Length; i++) canvas.Text(sorted[i].Caption with { At = new(sorted[i].Caption.At.X, tops[i] + 0.85 * AsideMm) });
    }

    private void Margin(LadderLine weakest)
    {
        var level = weakest.Steps[^1].LevelDbm;
        var (have, need) = (scale.Y(print.LevelIn(level)), scale.Y(print.LevelIn(level - weakest.MarginDb)));
        var x = scale.Field.Right + 4.5;
        canvas.Line(new(Ink.Warning, 0.6, Dash.Dotted), new(scale.X(scale.Columns - 3 > 0 ? scale.Columns - 3 : 0), need), new(x + 3, need));
        canvas.Line(new(Ink.Line, 0.2), new(scale.Field.Right, have), new(x + 3, have));
        if (Math.Abs(need - have) > 3.4) canvas.Arrow(new(x, have), new(x, need), 0.35, 1.6, Ink.Line);
        else canvas.Line(new(Ink.Line, 0.35), new(x, have), new(x, need));
        Aside((have + need) / 2, "margin " + UnitPrinter.Margin(weakest.MarginDb), strong: true);
        Aside(need, "needed", ink: Ink.Warning);
    }

    // Strokes point into what is forbidden; the receiver's limit holds at the last column only.
    private void Largest(double y, string level)
    {
        var (left, right) = (scale.X(scale.Columns - 1), scale.Field.Right);
        canvas.Line(new(Ink.Warning, 0.8), new(left, y), new(right + 7, y));
        for (var x = left; x <= right + 5; x += 1.8) canvas.Line(new(Ink.Warning, 0.3), new(x, y), new(x + 1.5, y - 2.2));
        Aside(y - 1, "receiver's largest", ink: Ink.Warning);
        Aside(y + 2, level, ink: Ink.Warning);
    }
}
