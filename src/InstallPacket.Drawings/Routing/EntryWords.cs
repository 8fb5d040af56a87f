using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>What to do at an entry, in the order of the marks of its figure.</summary>
internal static class EntryWords
{
    public static IReadOnlyList<string> Of(SheetPlan plan, EntryPlan e)
    {
        var print = plan.Print;
        var words = new List<string>
        {
            $"Drill {print.Drill(e.HoleM!.Value)} from outside, {UnitPrinter.Plain.Angle(e.SlopeDeg)} upward: {print.Small(e.HoleLengthM!.Value)} long, {print.Small(e.FallM!.Value)} lower outside than inside.",
            "Seal top and sides.",
            "Leave the lowest point open to weep.",
        };
        if (e.DripDepthM is { } depth) words.Add($"Lowest point {print.Small(depth)} below the hole, no bend tighter than {print.Small(e.BendRadiusM!.Value)}.");
        return words;
    }
}
