using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>The other sides of the house on which cable runs outdoors, each with the runs that pass there.</summary>
public static class RouteElevationSheet
{
    private const double WidthMm = 170;
    private const double TitleMm = 8;
    private const double RoomMm = 9;

    /// <summary>Draws it; null when no cable runs outdoors but on the side of the plan's lower edge.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (plan.Routing.Sides.Count == 0 || plan.Routing.Outline.Count == 0) return null;
        var canvas = new SheetCanvas(measure);
        double y = 0;
        var words = new List<string>();
        foreach (var side in plan.Routing.Sides)
        {
            var seen = SeenFrom.Side(plan, side);
            if (seen.Routing.Runs.Count == 0) continue;
            var scale = RouteScale.Of(seen.Routing, planToo: false);
            var frame = new PaperBox(1, y + TitleMm, WidthMm - 1, y + TitleMm + scale.ElevationHeight + 2 * RoomMm);
            var from = plan.Say("route.side", ("side", plan.Say("route.sides." + side)),
                ("bearing", plan.True(PlanSide.BearingDeg(side, plan.Routing.PlanUpDeg))));
            RouteSketchSheet.ElevationView(canvas, seen, scale, frame, from);
            words.Add(plan.Say("route.side-runs", ("side", from), ("runs", plan.List(seen.Routing.Runs.Select(r => r.Id)))));
            y = frame.Bottom;
        }
        if (words.Count == 0) return null;
        return new Drawing("route-elevations", plan.Say("route.sides-title"), string.Join(" ", words), WidthMm, y + 1, canvas.Shapes);
    }
}
