namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>Draws the marks on the ring, their labels and the leaders between them.</summary>
internal sealed class PinPainter(SheetCanvas canvas, RingGeometry ring, double sheetWidth)
{
    private const double MarginMm = 1.5;

    public void Draw(IReadOnlyList<RingPin> pins, double[] spread, IReadOnlyList<RingLabel> labels, IReadOnlyDictionary<int, double> tops)
    {
        foreach (var label in labels) Leader(label, spread[label.Pin], tops[label.Pin]);
        for (var i = 0; i < pins.Count; i++)
        {
            var ink = pins[i].Kind switch { PinKind.Obstruction => Ink.Warning, PinKind.ArcEnd or PinKind.SecondAim => Ink.Accent, _ =>
                Ink.Line };
            canvas.Line(new(ink, 0.35), ring.At(pins[i].BearingDeg, ring.Outer),
                ring.At(pins[i].BearingDeg, ring.Outer + RingGeometry.TickMm), ring.At(spread[i], ring.Pins));
            Mark(canvas, pins[i].Kind, ring.At(spread[i], ring.Pins), pins[i].Sign, spread[i]);
        }
        foreach (var label in labels) Words(label, pins[label.Pin].Kind, tops[label.Pin]);
    }

    /// <summary>One mark, as on the ring so in the legend.</summary>
    public static void Mark(SheetCanvas canvas, PinKind kind, PaperPoint at, string sign, double outwardDeg)
    {
        switch (kind)
        {
            case PinKind.Aim:
                canvas.Head(Polar.From(at, outwardDeg, 2.4), outwardDeg, 4.6, 2.2, Ink.Accent);
                break;
            case PinKind.ArcEnd:
                canvas.Box(PaperBox.Around(at, 2.7, 1.5), new(Ink.Paper, 0), Fill.Paper);
                canvas.Centred(at, sign, 2.9, strong: true, Ink.Accent);
                break;
            case PinKind.SecondAim:
                canvas.Area(new(Ink.Accent, 0.5), Fill.Paper, Polar.From(at, outwardDeg, 2.4), Polar.From(at, outwardDeg + 135, 2.8),
                    Polar.From(at, outwardDeg - 135, 2.8));
                break;
            case PinKind.WantedSite or PinKind.OtherSite:
                var wanted = kind == PinKind.WantedSite;
                canvas.Ring(at, 2.4, wanted ? new(Ink.Line, 0.6) : new(Ink.Faint, 0.35, Dash.Dashed), Fill.Paper);
                if (sign.Length > 0) canvas.Centred(at, sign, sign.Length > 1 ? 2.8 : 3.2, wanted);
                break;
            case PinKind.Landmark:
                canvas.Line(new(Ink.Line, 0.45), new(at.X - 1.2, at.Y + 2.2), new(at.X - 1.2, at.Y - 2.2));
                canvas.Area(new(Ink.Line, 0.3), Fill.Solid, new(at.X - 1.2, at.Y - 2.2), new(at.X + 2, at.Y - 1.1), new(at.X - 1.2, at.Y));
                break;
            default:
                canvas.Box(PaperBox.Around(at, 1.5, 1.5), new(Ink.Warning, 0.4), Fill.Solid);
                break;
        }
    }

    private void Leader(RingLabel label, double deg, double top)
    {
        var end = new PaperPoint(Edge(label.Right), top + RingLabel.LeadMm / 2);
        var points = new List<PaperPoint> { ring.At(deg, ring.Pins) };
        // A straight leader may cut through the ring when its label had to move far: it then first goes round.
        var turn = Math.Sign(Turn(deg, Polar.BearingDeg(ring.Centre, end)));
        for (var at = deg; points.Count < 60; at += 3 * turn)
        {
            var lane = ring.At(at, ring.Lane);
            points.Add(lane);
            if (turn == 0 || Clear(lane, end) || turn * Turn(at, Polar.BearingDeg(ring.Centre, end)) <= 0) break;
        }
        points.Add(end);
        canvas.Line(new(Ink.Faint, 0.2), [.. points]);
    }

    private bool Clear(PaperPoint a, PaperPoint b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var along = Math.Clamp(((ring.Centre.X - a.X) * dx + (ring.Centre.Y - a.Y) * dy) / Math.Max(1e-9, dx * dx + dy * dy), 0, 1);
        return Polar.Distance(ring.Centre, new(a.X + along * dx, a.Y + along * dy)) >= ring.Lane - 0.1;
    }

    private void Words(RingLabel label, PinKind kind, double top)
    {
        var x = Edge(label.Right) + (label.Right ? 0.6 : -0.6);
        for (var i = 0; i < label.Lines.Count; i++)
            canvas.Text(new(new(x, top + i * RingLabel.LeadMm + 3.2), label.Lines[i], RingLabel.SizeMm,
                kind == PinKind.OtherSite ? Ink.Faint : Ink.Line, label.Right ? Anchor.Start : Anchor.End, kind == PinKind.WantedSite
                    && i < label.Names));
    }

    private double Edge(bool right) => right ? sheetWidth - MarginMm - RingLabels.ColumnMm - 0.6 : MarginMm + RingLabels.ColumnMm + 0.6;

    private static double Turn(double from, double to)
    {
        var d = (to - from) % 360;
        return d > 180 ? d - 360 : d < -180 ? d + 360 : d;
    }
}
