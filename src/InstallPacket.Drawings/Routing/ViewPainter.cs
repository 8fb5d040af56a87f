using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>Draws runs, dots and labels of one view.</summary>
internal sealed class ViewPainter(SheetCanvas canvas, SheetPlan plan, RouteView view)
{
    private const double DripMm = 1.7;
    private const double SizeMm = 3.2;
    private static readonly double[] Shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

    private readonly LabelPlacer _placer = new(view.Frame);

    /// <summary>Ground that labels must leave free.</summary>
    public void Reserve(PaperBox box) => _placer.Reserve(box);

    /// <summary>A line that labels should leave free.</summary>
    public void Avoid(params PaperPoint[] points) => _placer.Avoid(points);

    public void Draw(bool dripLoops)
    {
        var lines = RunLanes.Of(plan.Routing, view);
        foreach (var line in lines)
        {
            foreach (var (way, points) in line.Pieces)
            {
                if (line.Run.GivenM is null) RouteWay.Draw(canvas, way, points);
                else RouteWay.DrawByLength(canvas, points);
            }
            _placer.Avoid(line.Points);
        }
        if (dripLoops) DripLoops();
        var marked = plan.Routing.Points.Where(p => p.Elements.Count > 0 || plan.Routing.Entries.Any(e => e.Point == p.Name)).ToArray();
        foreach (var p in marked)
        {
            _placer.Reserve(PaperBox.Around(view.Place(p), 1.1, 1.1));
            _placer.Mark(view.Place(p));
        }
        Badges(lines);
        Labels(marked);
        foreach (var p in marked)
        {
            if (plan.Routing.Entries.Any(e => e.Point == p.Name)) Entry(canvas, view.Place(p));
            else canvas.Ring(view.Place(p), 1, new(Ink.Line, 0.3), Fill.Solid);
        }
    }

    // The loop hangs in front of the point, so that water drops off before the cable goes in.
    private void DripLoops()
    {
        foreach (var name in plan.Routing.Runs.SelectMany(r => r.DripLoops).Distinct())
        {
            if (plan.Routing.Points.FirstOrDefault(p => p.Name == name) is not { } point) continue;
            Drip(canvas, view.Place(point));
            _placer.Reserve(PaperBox.Around(view.Place(point) with { Y = view.Place(point).Y + 1.7 }, DripMm + 0.6, 2.4));
        }
    }

    /// <summary>A drip loop: a U that hangs below its point.</summary>
    public static void Drip(SheetCanvas canvas, PaperPoint at) =>
        canvas.Line(new(Ink.Accent, 0.9),
            [at with { X = at.X - DripMm }, .. Polar.Arc(at with { Y = at.Y + 1.6 }, DripMm, 270, -180), at with { X = at.X + DripMm }]);

    /// <summary>An entry: an open square around the dot.</summary>
    public static void Entry(SheetCanvas canvas, PaperPoint at)
    {
        canvas.Box(PaperBox.Around(at, 1.5, 1.5), new(Ink.Line, 0.5), Fill.Paper);
        canvas.Ring(at, 0.6, new(Ink.Line, 0.3), Fill.Solid);
    }

    /// <summary>A word that may be left out where there is no room.</summary>
    public void Word(PaperPoint at, string words)
    {
        var width = canvas.Measure.WidthMm(words, SizeMm);
        var box = PaperBox.Around(at, width / 2 + 0.4, 2);
        if (!_placer.Clear(box)) return;
        _placer.Reserve(box);
        canvas.Centred(at, words, SizeMm, ink: Ink.Faint);
    }

    private void Badges(IReadOnlyList<RunLine> lines)
    {
        foreach (var line in lines)
        {
            var half = canvas.Measure.WidthMm(line.Run.Id, SizeMm, true) / 2 + 0.9;
            var spot = Spots(line).Select(s => (PaperPoint?)s).FirstOrDefault(s =>
                _placer.Free(PaperBox.Around(s!.Value, half, 2.1).Grow(0.3)));
            if (spot is { } free) _placer.Reserve(PaperBox.Around(free, half, 2.1).Grow(0.3));
            else
            {
                var aim = Spots(line).First();
                if (_placer.Place(aim, 2 * half, 4.2, 3) is not { } away) continue;
                canvas.Line(new(Ink.Faint, 0.2), aim, away);
                _placer.Avoid([aim, away]);
                spot = away;
            }
            canvas.Box(PaperBox.Around(spot.Value, half, 2.1), new(Ink.Accent, 0.35), Fill.Paper);
            canvas.Centred(spot.Value, line.Run.Id, SizeMm, strong: true);
        }
    }

    // The middle of the longest leg first, then places beside it, then the other legs.
    private static IEnumerable<PaperPoint> Spots(RunLine line) =>
        from leg in Enumerable.Range(1, line.Points.Count - 1).OrderByDescending(i =>
            Polar.Distance(line.Points[i - 1], line.Points[i])).ThenBy(i => i)
        from share in Shares
        let a = line.Points[leg - 1]
        let b = line.Points[leg]
        where Polar.Distance(a, b) >= 6 || leg == 1
        select new PaperPoint(a.X + (b.X - a.X) * share, a.Y + (b.Y - a.Y) * share);

    private void Labels(PointPlan[] marked)
    {
        // Points that fall together in a view share a label.
        foreach (var place in marked.GroupBy(p => (Math.Round(view.Place(p).X), Math.Round(view.Place(p).Y))))
        {
            var at = view.Place(place.First());
            var text = string.Join(", ",
                place.SelectMany(p =>
                p.Elements).Concat(plan.Routing.Entries.Where(e => place.Any(p => p.Name == e.Point)).Select(e =>
                plan.Say("route.entry-number", ("number", e.Number)))));
            var width = canvas.Measure.WidthMm(text, SizeMm, true);
            if (_placer.Place(at, width, SizeMm, 1.8) is not { } middle) continue;
            if (Polar.Distance(at, middle) > width / 2 + 5) canvas.Line(new(Ink.Faint, 0.2), at,
                middle with { X = middle.X - Math.Clamp(middle.X - at.X, -width / 2 - 0.3, width / 2 + 0.3) });
            canvas.Centred(middle, text, SizeMm, strong: true);
        }
    }
}
