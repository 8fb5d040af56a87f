using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>To be drawn.</summary>
public static class LevelLadderSheet
{
    /// <summary>Draws it.</summary>
    public static Drawing? Draw(Plan plan, ITextMeasure measure) => new("level-ladder", "level-ladder", "level-ladder", 100, 40, [new Caption(new(5, 20), "level-ladder of " + plan.Job.Id, 4)]);
}
