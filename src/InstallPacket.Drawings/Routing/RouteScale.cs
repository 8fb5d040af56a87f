using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>
/// One scale for both views, and one place for their common axis: a point of the elevation stands straight below itself in plan.
/// </summary>
/// <param name="MmPerMetre">The scale.</param>
/// <param name="LeftM">Leftmost metre of the job.</param>
/// <param name="BottomM">Lowest metre up the plan.</param>
/// <param name="RightM">Rightmost metre.</param>
/// <param name="TopM">Highest metre up the plan.</param>
/// <param name="LowestM">Lowest height; the ground at most.</param>
/// <param name="HighestM">Greatest height.</param>
internal sealed record RouteScale(double MmPerMetre, double LeftM, double BottomM, double RightM, double TopM, double LowestM,
    double HighestM)
{
    // Leaves room beside the house for the heights of eaves and ridge.
    private const double WidthMm = 122;
    private const double PlanMm = 70;
    private const double ElevationMm = 64;

    /// <summary>The scale that fits the sheet.</summary>
    /// <param name="r">The route.</param>
    /// <param name="planToo">Whether the view from above stands on the sheet too; otherwise its depth does not matter.</param>
    public static RouteScale Of(RoutingPlan r, bool planToo = true)
    {
        double[] rights = [.. r.Points.Select(p => p.RightM), .. r.Outline.Select(c => c.RightM)];
        double[] ups = [.. r.Points.Select(p => p.UpM), .. r.Outline.Select(c => c.UpM)];
        double[] heights = [0, .. r.Points.Select(p => p.HeightM), r.EavesM ?? 0, r.RidgeM ?? 0];
        var (width, depth, height) = (rights.Max() - rights.Min(), ups.Max() - ups.Min(), heights.Max() - heights.Min());
        // A job of no extent still gets a sheet: a metre stands in.
        var scale = new[] { WidthMm / Math.Max(1, width), planToo ? PlanMm / Math.Max(1, depth) : double.PositiveInfinity,
            ElevationMm / Math.Max(1, height) }.Min();
        return new(scale, rights.Min(), ups.Min(), rights.Max(), ups.Max(), heights.Min(), heights.Max());
    }

    public double Width => (RightM - LeftM) * MmPerMetre;

    public double PlanHeight => (TopM - BottomM) * MmPerMetre;

    public double ElevationHeight => (HighestM - LowestM) * MmPerMetre;
}
