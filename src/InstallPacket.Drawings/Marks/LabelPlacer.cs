namespace InstallPacket.Drawings.Marks;

/// <summary>Finds room for labels: each takes the nearest free place around its point and keeps it.</summary>
internal sealed class LabelPlacer(PaperBox frame)
{
    // Room for half the weight of the heaviest line that a label may stand beside.
    private const double LineMm = 0.8;

    private readonly List<PaperBox> _taken = [];
    private readonly List<PaperPoint> _marks = [];
    private readonly List<(PaperPoint A, PaperPoint B)> _lines = [];

    /// <summary>Ground that no label may cover.</summary>
    public void Reserve(PaperBox box) => _taken.Add(box);

    /// <summary>A line that labels should not lie on.</summary>
    public void Avoid(IReadOnlyList<PaperPoint> points)
    {
        for (var i = 1; i < points.Count; i++) _lines.Add((points[i - 1], points[i]));
    }

    /// <summary>A dot that has a label of its own: other labels keep nearer to their own dots than to it.</summary>
    public void Mark(PaperPoint dot) => _marks.Add(dot);

    /// <summary>Whether a box would be free.</summary>
    public bool Free(PaperBox box) => frame.Holds(box) && !_taken.Any(box.Overlaps);

    /// <summary>Whether a box would be free and no line passes through it.</summary>
    public bool Clear(PaperBox box) => Free(box) && !_lines.Exists(l => box.Grow(LineMm).CutBy(l.A, l.B));

    /// <summary>
    /// The middle of the free place for a label of this size, or null when the frame is full. Labels never cover each other; of
    /// two free places the one that crosses fewer lines wins, then the nearer one.
    /// </summary>
    public PaperPoint? Place(PaperPoint point, double width, double height, double nearest)
    {
        var best = (Cost: double.PositiveInfinity, At: (PaperPoint?)null);
        for (var away = nearest; away <= 60; away += 2)
        {
            if (away > best.Cost) break;
            for (var turn = 0; turn < 16; turn++)
            {
                // East first, then the other sides in turn: a label right of its dot reads best.
                var deg = 90 + 22.5 * (turn % 2 == 0 ? turn / 2 : -(turn + 1) / 2);
                var at = Centre(point, deg, away, width, height);
                var box = PaperBox.Around(at, width / 2, height / 2);
                if (!Free(box.Grow(0.4))) continue;
                var cost = away + 12 * _lines.Count(l => box.Grow(LineMm).CutBy(l.A, l.B)) + 6 * CrossedLabels(point, at)
                    + 9 * Strangers(point, box);
                if (cost < best.Cost) best = (cost, at);
            }
        }
        if (best.At is { } found) Reserve(PaperBox.Around(found, width / 2, height / 2).Grow(0.4));
        return best.At;
    }

    // A leader may start within reserved ground (its own dot), but should not pass over other labels.
    private int CrossedLabels(PaperPoint start, PaperPoint end) =>
        _taken.Count(t => !t.CutBy(start, start with { X = start.X + 0.01 }) && t.CutBy(start, end));

    // Dots that a reader would take for the label's own, because they lie nearer to it.
    private int Strangers(PaperPoint own, PaperBox box) =>
        _marks.Count(m => Polar.Distance(m, own) > 0.5 && Reach(box, m) < Reach(box, own));

    private static double Reach(PaperBox box, PaperPoint p) =>
        Polar.Distance(p, new(Math.Clamp(p.X, box.Left, box.Right), Math.Clamp(p.Y, box.Top, box.Bottom)));

    // The label's nearest edge, not its middle, keeps the distance.
    private static PaperPoint Centre(PaperPoint p, double deg, double away, double width, double height)
    {
        var d = Polar.From(new(0, 0), deg, 1);
        return new(p.X + d.X * away + Math.Clamp(d.X * 2, -1, 1) * width / 2, p.Y + d.Y * away + Math.Clamp(d.Y * 2, -1, 1) * height / 2);
    }
}
