using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>Each entry as a section through the wall: the hole that falls outward, the drip loop before it, where to seal.</summary>
public static class EntryDetailSheet
{
    private const double WidthMm = 170;
    private const double SectionMm = 92;
    private const double TopMm = 8;
    private const double WordsMm = 100;
    private const double SizeMm = 3.4;

    // Room around the loop and the hole, in metres of the house.
    private const double AboveM = 0.10;
    private const double BelowM = 0.05;
    private const double InsideM = 0.10;

    /// <summary>Draws all; an entry whose measures are unknown has no figure.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static IEnumerable<Drawing?> DrawAll(SheetPlan plan, ITextMeasure measure) =>
        plan.Routing.Entries.Where(e => e.Figure.Length > 0).Select(e => Draw(plan, e, measure));

    private static Drawing? Draw(SheetPlan plan, EntryPlan e, ITextMeasure measure)
    {
        if (e.ThicknessM is not { } thickness || e.FallM is not { } fall || e.HoleM is not { } drill
            || e.BendRadiusM is not { } radius) return null;
        var canvas = new SheetCanvas(measure);
        var deep = e.DripDepthM ?? radius;
        var (width, height) = (3 * radius + 0.04 + thickness + InsideM, AboveM + fall + deep + BelowM);
        var scale = Math.Min(SectionMm / width, 64 / height);
        var hole = new PaperPoint(2 + (3 * radius + 0.04) * scale, TopMm + (AboveM + fall) * scale);
        var bottom = TopMm + height * scale;
        var inner = new PaperPoint(hole.X + thickness * scale, hole.Y - fall * scale);
        var wall = new PaperBox(hole.X, TopMm, inner.X, bottom);
        Hatch.Draw(canvas, wall, new(Ink.Faint, 0.2), 3);
        canvas.Line(new(Ink.Line, 0.6), new(wall.Left, wall.Top), new(wall.Left, wall.Bottom));
        canvas.Line(new(Ink.Line, 0.6), new(wall.Right, wall.Top), new(wall.Right, wall.Bottom));
        var half = drill * scale / 2;
        canvas.Area(new(Ink.Line, 0.3), Fill.Paper, new(hole.X, hole.Y - half), new(inner.X, inner.Y - half), new(inner.X, inner.Y + half),
            new(hole.X, hole.Y + half));
        IReadOnlyList<PaperPoint> outside = e.DripDepthM is { } drip ? EntryCable.Loop(hole, drip * scale, radius * scale, TopMm)
            : EntryCable.Rising(hole, radius * scale, bottom);
        canvas.Line(new(Ink.Accent, Math.Max(1, (e.CableM ?? 0.007) * scale)),
            [.. outside, inner, inner with { X = inner.X + (InsideM - 0.02) * scale }]);
        canvas.Text(new(new(2, TopMm - 2.5), plan.Say("entry.outside"), SizeMm, Strong: true));
        canvas.Text(new(new(inner.X + 1.5, TopMm - 2.5), plan.Say("entry.inside"), SizeMm, Strong: true));
        Depth(canvas, e, hole, deep * scale);
        Mark(canvas, new((hole.X + inner.X) / 2, (hole.Y + inner.Y) / 2 - half - 4), "1");
        Mark(canvas, new(hole.X - 4, hole.Y - half - 5), "2");
        Mark(canvas, new(hole.X - 3.2, hole.Y + Math.Min(radius * scale, 9)), "3");
        if (e.DripDepthM is not null) Mark(canvas, new(outside.MaxBy(p => p.Y).X, hole.Y + deep * scale - Math.Min(radius * scale, 6)),
            "4");
        var words = EntryWords.Of(plan, e);
        var y = TopMm + 2;
        for (var i = 0; i < words.Count; i++)
        {
            Mark(canvas, new(WordsMm, y - 1.2), UnitText(i + 1));
            foreach (var line in TextWrap.Lines(words[i], SizeMm, false, WidthMm - WordsMm - 6, 4, measure))
            {
                canvas.Text(new(new(WordsMm + 4, y), line, SizeMm));
                y += 5;
            }
            y += 2;
        }
        ScaleBar.Draw(canvas, new(WordsMm, Math.Max(y + 1, bottom - 2)), scale, 26, plan);
        return new(e.Figure, plan.Say("entry.title", ("number", e.Number), ("point", e.Point)),
            plan.Say("entry.what", ("through", plan.Word("through", e.Through)), ("number", e.Number), ("point", e.Point),
                ("steps", string.Join(" ", words))),
            WidthMm, Math.Max(y + 4, bottom) + 2, canvas.Shapes);
    }

    // How far the loop hangs below the hole, measured beside it.
    private static void Depth(SheetCanvas canvas, EntryPlan e, PaperPoint hole, double deep)
    {
        if (e.DripDepthM is null) return;
        var pen = new Pen(Ink.Faint, 0.25);
        canvas.Line(pen with { Dash = Dash.Dashed }, new(2, hole.Y), new(hole.X, hole.Y));
        canvas.Line(pen with { Dash = Dash.Dashed }, new(2, hole.Y + deep), new(hole.X, hole.Y + deep));
    }

    private static void Mark(SheetCanvas canvas, PaperPoint at, string number)
    {
        canvas.Ring(at, 2.1, new(Ink.Line, 0.35), Fill.Paper);
        canvas.Centred(at, number, 3.2, strong: true);
    }

    private static string UnitText(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
