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
            plan.Say("entry.drill", ("hole", print.Drill(e.HoleM!.Value)), ("slope", print.Angle(e.SlopeDeg)),
                ("length", print.Small(e.HoleLengthM!.Value)), ("fall", print.Small(e.FallM!.Value))),
            plan.Say("entry.seal"),
            plan.Say("entry.weep"),
        };
        if (e.DripDepthM is { } depth) words.Add(plan.Say("entry.loop", ("depth", print.Small(depth)),
            ("radius", print.Small(e.BendRadiusM!.Value))));
        return words;
    }
}
