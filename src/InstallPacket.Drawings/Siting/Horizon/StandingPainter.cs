using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>Draws what stands before and on the skyline: obstructions of the survey, transmitter sites, the landmark, the ends of the
/// arc.</summary>
internal sealed class StandingPainter(SheetCanvas canvas, SheetPlan plan, StripScale scale)
{
    /// <summary>Height of a tower; the strip reaches so far below the lowest of them.</summary>
    public const double TowerMm = 5;

    private const double LeastMm = 0.8;

    /// <summary>The aim of a further antenna.</summary>
    public static Pen MoreAim { get; } = new(Ink.Accent, FieldPainter.MoreMm);

    public void Draw()
    {
        // Near ones hide what stands farther away.
        foreach (var o in plan.Siting.Obstructions.OrderByDescending(o => o.DistanceM)) Obstruction(o);
        Headings();
        foreach (var site in plan.Siting.Sites.Reverse())
            Tower(canvas, new(scale.X(site.BearingTrueDeg), scale.Y(site.ElevationDeg ?? 0)), TowerMm, InSight(plan, site), site.AnyWanted);
        if (plan.Siting.Landmark is { } mark) PinPainter.Mark(canvas, PinKind.Landmark,
            new(scale.X(mark.BearingTrueDeg) + 1.2, scale.Y(0) - 2.2), "", 0);
    }

    /// <summary>Whether the ground leaves the site in sight; null when the path is not known.</summary>
    public static bool? InSight(SheetPlan plan, SitePlan site) => plan.Siting.Paths.FirstOrDefault(p => p.Number == site.Number)?.InSight;

    /// <summary>A tower by its top: solid in sight, open behind ground, dotted when that is not known.</summary>
    public static void Tower(SheetCanvas canvas, PaperPoint top, double height, bool? inSight, bool wanted) => canvas.Area(
        new(wanted ? Ink.Line : Ink.Faint, wanted ? 0.5 : 0.35, inSight is null ? Dash.Dotted : Dash.Solid), inSight == true ? Fill.Solid
            : Fill.Paper,
        top, new(top.X + 1.1, top.Y + height), new(top.X - 1.1, top.Y + height));

    /// <summary>An obstruction: trees hatched, a building plain, a hill dashed, all else dotted.</summary>
    public static void Box(SheetCanvas canvas, ObstructionKind kind, PaperBox box, bool cut)
    {
        var pen = new Pen(Ink.Warning, 0.6, Outline(kind));
        canvas.Box(box, pen with { WeightMm = 0 }, Fill.Paper);
        if (kind == ObstructionKind.Trees) Hatch.Draw(canvas, box, new(Ink.Warning, 0.25), 2);
        canvas.Line(pen, new(box.Left, box.Bottom), new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom));
        if (cut) Teeth(canvas, box);
    }

    private void Obstruction(ObstructionPlan o)
    {
        var cut = o.AngleDeg > scale.CutDeg;
        var top = Math.Min(scale.Y(Math.Min(o.AngleDeg, scale.CutDeg)), scale.Field.Bottom - LeastMm);
        foreach (var (left, right) in scale.Spans(o.BearingTrueDeg - o.WidthDeg / 2, o.WidthDeg)) Box(canvas, o.Kind,
            new(left, top, right, scale.Field.Bottom), cut);
    }

    private static Dash Outline(ObstructionKind kind) => kind switch
    {
        ObstructionKind.Hill => Dash.Dashed,
        ObstructionKind.Other => Dash.Dotted,
        ObstructionKind.Trees or ObstructionKind.Building => Dash.Solid,
    };

    // A torn upper edge: the thing goes on above the strip.
    private static void Teeth(SheetCanvas canvas, PaperBox box)
    {
        var count = Math.Max(1, (int)(box.Width / 2));
        var step = box.Width / count;
        canvas.Area(new(Ink.Paper, 0.8), Fill.Paper, [new(box.Left, box.Top - 0.2), .. Enumerable.Range(0, 2 * count + 1).Select(i =>
            new PaperPoint(box.Left + i * step / 2, box.Top + (i % 2 == 0 ? 0 : 1.4))), new(box.Right, box.Top - 0.2)]);
        canvas.Line(new(Ink.Warning, 0.6),
            [.. Enumerable.Range(0, 2 * count + 1).Select(i => new PaperPoint(box.Left + i * step / 2, box.Top + (i % 2 == 0 ? 0 : 1.4)))]);
    }

    private void Headings()
    {
        foreach (var more in plan.Reception.MoreAntennas)
            canvas.Line(MoreAim, new(scale.X(more.Aim.TrueDeg), scale.Field.Top), new(scale.X(more.Aim.TrueDeg), scale.Field.Bottom));
        if (plan.Reception.Aim.Arc is not { AllRound: false } arc) return;
        foreach (var end in new[] { arc.FromDeg, arc.ToDeg })
            canvas.Line(new(Ink.Accent, 0.35, Dash.Dashed), new(scale.X(end), scale.Field.Top), new(scale.X(end), scale.Field.Bottom));
    }
}
