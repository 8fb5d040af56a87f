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
            var from = $"Seen from the {side} side of the plan, {UnitPrinter.Plain.Bearing(PlanSide.BearingDeg(side, plan.Routing.PlanUpDeg))} true";
            RouteSketchSheet.ElevationView(canvas, seen, scale, frame, from);
            words.Add($"{from}: runs {string.Join(", ", seen.Routing.Runs.Select(r => r.Id))}.");
            y = frame.Bottom;
        }
        if (words.Count == 0) return null;
        return new Drawing("route-elevations", "Other sides of the house", string.Join(" ", words), WidthMm, y + 1, canvas.Shapes);
    }
}
