using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>Where the cables run: the house from above and from one side, at one scale, with every run and every part in its
/// place.</summary>
public static class RouteSketchSheet
{
    private const double WidthMm = 170;
    private const double TitleMm = 8;
    private const double RoomMm = 9;
    private const double HeadingMm = 3.8;

    /// <summary>Draws it; null when the plan has no runs.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (plan.Routing.Runs.Count == 0 || plan.Routing.Points.Count == 0) return null;
        var canvas = new SheetCanvas(measure);
        var scale = RouteScale.Of(plan.Routing);
        var above = new PaperBox(1, TitleMm, WidthMm - 1, TitleMm + scale.PlanHeight + 2 * RoomMm);
        var side = new PaperBox(1, above.Bottom + TitleMm, WidthMm - 1, above.Bottom + TitleMm + scale.ElevationHeight + 2 * RoomMm);
        PlanView(canvas, plan, scale, above);
        ElevationView(canvas, plan, scale, side);
        var legend = FlowLegend.Draw(canvas, new RouteLegend(canvas, plan).Entries(), new(2, side.Bottom + 4), WidthMm - 2);
        return new Drawing("route-sketch", plan.Say("route.title"), RouteWords.Of(plan), WidthMm, legend + 1, canvas.Shapes);
    }

    private static void PlanView(SheetCanvas canvas, SheetPlan plan, RouteScale scale, PaperBox frame)
    {
        Heading(canvas, plan, scale, frame, plan.Say("route.above"));
        var view = RouteView.Plan(scale, frame);
        var painter = new ViewPainter(canvas, plan, view);
        // North stands in the corner of the heading, where no run can reach it.
        var north = North(canvas, plan, new(frame.Right - 9, frame.Top + 5), -plan.Routing.PlanUpDeg);
        painter.Reserve(north);
        var house = new HousePainter(canvas, plan);
        house.Plan(view, painter);
        painter.Draw(dripLoops: false);
        house.Rooms(view, painter);
        house.Aim(view);
    }

    /// <summary>The house from the side of the plan's lower edge.</summary>
    internal static void ElevationView(SheetCanvas canvas, SheetPlan plan, RouteScale scale, PaperBox frame, string? words = null)
    {
        Heading(canvas, plan, scale, frame, words ?? plan.Say("route.edge"));
        var view = RouteView.Elevation(scale, frame);
        var painter = new ViewPainter(canvas, plan, view);
        new HousePainter(canvas, plan).Elevation(view, painter);
        painter.Draw(dripLoops: true);
    }

    private static void Heading(SheetCanvas canvas, SheetPlan plan, RouteScale scale, PaperBox frame, string words)
    {
        canvas.Text(new(new(2, frame.Top - 2), words, HeadingMm, Strong: true));
        ScaleBar.Draw(canvas, new(96, frame.Top - 3.3), scale.MmPerMetre, 30, plan);
    }

    /// <summary>The arrow to true north; its turn is the plan's own bearing, backwards.</summary>
    private static PaperBox North(SheetCanvas canvas, SheetPlan plan, PaperPoint middle, double turnDeg)
    {
        var tip = Polar.From(middle, turnDeg, 6);
        canvas.Arrow(Polar.From(middle, turnDeg + 180, 6), tip, 0.7, 4, Ink.Line);
        canvas.Text(new(new(middle.X + 7.5, middle.Y + 11), plan.Say("true-north"), 3.2, Ink.Line, Anchor.End, Strong: true));
        return PaperBox.Around(middle with { Y = middle.Y + 2.5 }, 8, 9.5);
    }
}
