using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>The figures of a packet.</summary>
public static class FigureSet
{
    // Of a house where nobody was there is no sketch.
    private static readonly string[] OfStudies = ["aim-card", "horizon-strip", "chain-diagram", "level-ladder"];

    /// <summary>All figures of a plan by identifier; a figure that a plan gives no ground for is absent.</summary>
    /// <param name="planned">The plan.</param>
    /// <param name="words">What speaks for the figures.</param>
    /// <param name="measure">Widths of words.</param>
    public static IReadOnlyDictionary<string, Drawing> Of(Plan planned, IWords words, ITextMeasure measure)
    {
        var plan = new SheetPlan(planned, words);
        Drawing?[] drawings =
        [
            AimCardSheet.Draw(plan, measure), HorizonStripSheet.Draw(plan, measure), .. PathProfileSheet.DrawAll(plan, measure),
            MountSketchSheet.Draw(plan, measure), AccessSketchSheet.Draw(plan, measure), BondingSketchSheet.Draw(plan, measure),
            RouteSketchSheet.Draw(plan, measure), RouteElevationSheet.Draw(plan, measure), .. EntryDetailSheet.DrawAll(plan, measure),
                ChainDiagramSheet.Draw(plan, measure), LevelLadderSheet.Draw(plan, measure), .. LevelLadderSheet.DrawOthers(plan, measure),
            .. CuttingPlanSheet.DrawAll(plan, measure), .. CableLabelSheet.DrawAll(plan, measure),
        ];
        if (planned.Job.Study) drawings = [.. drawings.Where(d => d is not null && (OfStudies.Contains(d.Id)
            || d.Id.StartsWith("path-profile-", StringComparison.Ordinal)))];
        return drawings.OfType<Drawing>().ToDictionary(d => d.Id, StringComparer.Ordinal);
    }
}
