using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>Draws the channels, what each step adds or takes, and the limits at the receiver.</summary>
internal sealed class LadderLines(SheetCanvas canvas, LadderScale scale, SheetPlan plan)
{
    // Two values that _print alike within this are written once.
    private const double SameDb = 0.1;
    private const double SizeMm = 3;

    private const double AsideMm = 3.2;
    private const double AsideGapMm = 0.6;

    private readonly UnitPrinter _print = plan.Print;
    private readonly List<PaperBox> _labels = [];
    private readonly List<(double Y, Caption[] Lines)> _asides = [];

    /// <summary>How a channel is drawn: the weakest is what the plan is about.</summary>
    public static Pen Pen(string role) => role == "weakest" ? new(Ink.Accent, 1.1, Dash.Dashed) : new(Ink.Line, 0.6);

    /// <summary>How the noise is drawn.</summary>
    public static Pen NoisePen { get; } = new(Ink.Line, 0.3, Dash.Dotted);

    public void Draw(LadderColumns columns)
    {
        var ladder = columns.Ladder;
        if (ladder.LargestDbm is { } largest) Largest(scale.Y(_print.LevelIn(largest)), _print.Level(largest));
        var ceilings = new LadderCeilings(canvas, scale, plan);
        _labels.AddRange(ceilings.Marks(ladder.Lines[0]));
        for (var i = 1; i < scale.Columns; i++) Gains(i, [.. ladder.Lines.Where((_, line) => columns.Passes(line, i))]);
        if (ladder.Weakest is { } weakest) Noise(weakest);
        var ways = ladder.Lines.Select(Way).ToArray();
        ceilings.Draw(ladder.Lines[0], _labels, ways);
        for (var i = 0; i < ways.Length; i++)
        {
            canvas.Line(Pen(ladder.Lines[i].Role), ways[i]);
            End(ladder.Lines[i]);
        }
        if (ladder.Weakest is { } line) Margin(line);
        Asides();
    }

    private PaperPoint[] Way(LadderLine line) =>
        [.. line.Steps.SelectMany((s, i) => new PaperPoint[] { new(scale.X(i), Y(s)), new(scale.X(i + 1), Y(s)) })];

    // Where the noise lies under the chart its line is left out, so that nothing is drawn at a level that is not its own.
    private void Noise(LadderLine weakest)
    {
        var levels = weakest.Steps.Select(s => scale.Y(_print.LevelIn(s.NoiseDbm))).ToArray();
        for (var from = 0; from < levels.Length; from++)
        {
            if (levels[from] > scale.Field.Bottom) continue;
            var to = from;
            while (to + 1 < levels.Length && levels[to + 1] <= scale.Field.Bottom) to++;
            var way = Enumerable.Range(from, to - from + 1).SelectMany(i =>
                new PaperPoint[] { new(scale.X(i), levels[i]), new(scale.X(i + 1), levels[i]) }).ToList();
            if (from > 0) way.Insert(0, way[0] with { Y = scale.Field.Bottom });
            if (to + 1 < levels.Length) way.Add(way[^1] with { Y = scale.Field.Bottom });
            canvas.Line(NoisePen, [.. way]);
            from = to;
        }
        var level = _print.Level(weakest.Steps[^1].NoiseDbm);
        Aside(Math.Min(levels[^1], scale.Field.Bottom),
            [levels[^1] > scale.Field.Bottom ? plan.Say("ladder.noise-below") : plan.Say("ladder.noise"), level]);
    }

    private double Y(LadderStep step) => scale.Y(_print.LevelIn(step.LevelDbm));

    private void Gains(int i, LadderLine[] lines)
    {
        var same = lines.Length < 2 || Math.Abs(lines[0].Steps[i].GainDb - lines[^1].Steps[i].GainDb) <= SameDb;
        Gain(i, lines[0]);
        if (!same) Gain(i, lines[^1]);
    }

    // Above the step for the upper line, below it for the lower one, so that the lines stay free.
    private void Gain(int i, LadderLine line)
    {
        var upper = line.Role != "weakest";
        var (now, before) = (Y(line.Steps[i]), Y(line.Steps[i - 1]));
        var text = _print.Margin(line.Steps[i].GainDb).Replace("\u00A0" + _print.Words.Unit("dB"), "", StringComparison.Ordinal);
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
        Aside(Y(last), [_print.Level(last.LevelDbm)], strong: line.Role == "weakest");
    }

    // Lines that belong together stay together.
    private void Aside(double y, string[] lines, bool strong = false, Ink ink = Ink.Line) =>
        _asides.Add((y, [.. lines.Select(text => new Caption(new(scale.Field.Right + 9, 0), text, AsideMm, ink, Anchor.Start, strong))]));

    // Words right of the chart, in the order of their heights; those that lie close make room for each other.
    private void Asides()
    {
        var sorted = _asides.OrderBy(a => a.Y).ToArray();
        var tops = ColumnStack.Tops([.. sorted.Select(a => (a.Y, a.Lines.Length * (AsideMm + AsideGapMm) - AsideGapMm))], AsideGapMm,
            scale.Field.Top, scale.Field.Bottom + 1);
        for (var i = 0; i < sorted.Length; i++)
            for (var k = 0; k < sorted[i].Lines.Length; k++)
                canvas.Text(sorted[i].Lines[k] with { At = new(sorted[i].Lines[k].At.X, tops[i] + k * (AsideMm + AsideGapMm)
                    + 0.85 * AsideMm) });
    }

    private void Margin(LadderLine weakest)
    {
        var level = weakest.Steps[^1].LevelDbm;
        var (have, need) = (scale.Y(_print.LevelIn(level)), scale.Y(_print.LevelIn(level - weakest.MarginDb)));
        var x = scale.Field.Right + 4.5;
        canvas.Line(new(Ink.Warning, 0.6, Dash.Dotted), new(scale.X(scale.Columns - 3 > 0 ? scale.Columns - 3 : 0), need),
            new(x + 3, need));
        canvas.Line(new(Ink.Line, 0.2), new(scale.Field.Right, have), new(x + 3, have));
        if (Math.Abs(need - have) > 3.4) canvas.Arrow(new(x, have), new(x, need), 0.35, 1.6, Ink.Line);
        else canvas.Line(new(Ink.Line, 0.35), new(x, have), new(x, need));
        Aside((have + need) / 2, [plan.Say("ladder.margin", ("margin", _print.Margin(weakest.MarginDb)))], strong: true);
        Aside(need, [plan.Say("ladder.needed")], ink: Ink.Warning);
    }

    // Strokes point into what is forbidden; the receiver's limit holds at the last column only.
    private void Largest(double y, string level)
    {
        var (left, right) = (scale.X(scale.Columns - 1), scale.Field.Right);
        canvas.Line(new(Ink.Warning, 0.8), new(left, y), new(right + 7, y));
        LadderCeilings.Strokes(canvas, left, right + 5, y);
        _labels.Add(new(left, y - 2.2, right, y + 0.4));
        Aside(y, [plan.Say("ladder.receiver"), level], ink: Ink.Warning);
    }
}
