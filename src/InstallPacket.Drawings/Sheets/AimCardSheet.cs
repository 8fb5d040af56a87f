using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>To be drawn.</summary>
public static class AimCardSheet
{
    /// <summary>Draws it.</summary>
    public static Drawing? Draw(Plan plan, ITextMeasure measure) => new("aim-card", "aim-card", "aim-card", 100, 40, [new Caption(new(5, 20), "aim-card of " + plan.Job.Id, 4)]);
}
