using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>The figures of a packet.</summary>
public static class FigureSet
{
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
        return drawings.OfType<Drawing>().ToDictionary(d => d.Id, StringComparer.Ordinal);
    }
}
