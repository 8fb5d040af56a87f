using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>To be drawn.</summary>
public static class RouteSketchSheet
{
    /// <summary>Draws it.</summary>
    public static Drawing? Draw(Plan plan, ITextMeasure measure) => new("route-sketch", "route-sketch", "route-sketch", 100, 40, [new Caption(new(5, 20), "route-sketch of " + plan.Job.Id, 4)]);
}
