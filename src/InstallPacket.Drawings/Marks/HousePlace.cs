using InstallPacket.Plans;

namespace InstallPacket.Drawings.Marks;

/// <summary>Where things of the plan stand in the house.</summary>
internal static class HousePlace
{
    /// <summary>The point at which the antenna sits, or null when the plan does not say.</summary>
    public static PointPlan? Antenna(SheetPlan plan)
    {
        var element = plan.Cabling.Elements.FirstOrDefault(e => e.Id == plan.Reception.AntennaId);
        return plan.Routing.Points.FirstOrDefault(p => p.Name == element?.Point)
            ?? plan.Routing.Points.FirstOrDefault(p => p.Elements.Contains(plan.Reception.AntennaId));
    }
}
