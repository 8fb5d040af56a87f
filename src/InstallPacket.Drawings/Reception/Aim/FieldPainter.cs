using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>Draws what lies within the ring: lobe, house, sight lines, obstructions, aim.</summary>
internal sealed class FieldPainter(SheetCanvas canvas, RingGeometry ring, SheetPlan plan)
{
    /// <summary>Weight of the arrow of a further antenna.</summary>
    public const double MoreMm = 0.7;

    // A hut of a hand's breadth is a slip of the author; it must not blow up the scale bar.
    private const double LargestScale = 20;

    /// <summary>Millimetres on the card for a metre of the house; null when there is no house.</summary>
    public static double? Scale(SheetPlan plan, RingGeometry ring)
    {
        if (plan.Routing.Outline.Count == 0 || HousePlace.Antenna(plan) is not { } antenna) return null;
        var farthest = plan.Routing.Outline.Max(c => Math.Sqrt(Square(c.RightM - antenna.RightM) + Square(c.UpM - antenna.UpM)));
        return farthest > 0 ? Math.Min(LargestScale, ring.House / farthest) : null;
    }

    /// <summary>Whether the antenna has a lobe to draw; one that hears all round has none.</summary>
    public static bool HasLobe(SheetPlan plan) => plan.Reception.Aim.BeamwidthDeg is > 0 and < 360;

    public void Draw()
    {
        Lobe();
        House();
        foreach (var site in plan.Siting.Sites)
            canvas.Line(site.AnyWanted ? new(Ink.Line, 0.6) : new(Ink.Faint, 0.35, Dash.Dashed), ring.Centre,
                ring.At(site.BearingTrueDeg, ring.Field));
        foreach (var o in plan.Siting.Obstructions)
            canvas.Line(new(Ink.Warning, 2.4), Polar.Arc(ring.Centre, ring.Obstruction, o.BearingTrueDeg - o.WidthDeg / 2, o.WidthDeg));
        if (plan.Reception.Aim.Second is { } second) canvas.Line(new(Ink.Accent, 0.7, Dash.Dashed), ring.Centre,
            ring.At(second.TrueDeg, 0.72 * ring.Field));
        foreach (var more in plan.Reception.MoreAntennas) canvas.Arrow(ring.Centre, ring.At(more.Aim.TrueDeg, 0.72 * ring.Field), MoreMm,
            4.5, Ink.Accent);
        canvas.Arrow(ring.Centre, ring.At(plan.Reception.Aim.TrueDeg, 0.72 * ring.Field), 1.3, 5.5, Ink.Accent);
        canvas.Ring(ring.Centre, 1.6, new(Ink.Line, 0.5), Fill.Paper);
        canvas.Ring(ring.Centre, 0.6, new(Ink.Line, 0.2), Fill.Solid);
    }

    private void Lobe()
    {
        if (!HasLobe(plan)) return;
        var (aim, width) = (plan.Reception.Aim.TrueDeg, plan.Reception.Aim.BeamwidthDeg);
        canvas.Area(new(Ink.Accent, 0.3, Dash.Dashed), Fill.Tint,
            [ring.Centre, .. Polar.Arc(ring.Centre, ring.Field, aim - width / 2, width)]);
    }

    // True north is up on the card, so the house turns by the true bearing of its own upward axis.
    private void House()
    {
        if (Scale(plan, ring) is not { } scale || HousePlace.Antenna(plan) is not { } antenna) return;
        canvas.Area(new(Ink.Line, 0.9), Fill.None, [.. plan.Routing.Outline.Select(c =>
        {
            var offset = new PaperPoint(c.RightM - antenna.RightM, -(c.UpM - antenna.UpM));
            return ring.At(plan.Routing.PlanUpDeg + Polar.BearingDeg(new(0, 0), offset), scale * Polar.Distance(new(0, 0), offset));
        })]);
    }

    private static double Square(double x) => x * x;
}
