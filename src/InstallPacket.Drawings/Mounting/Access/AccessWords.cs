using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Access;

/// <summary>The access sketch in words.</summary>
internal static class AccessWords
{
    /// <summary>Lines below the sketch.</summary>
    public static IEnumerable<string> Notes(SheetPlan plan)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        if (m.Ladder is { } l)
            yield return plan.Say("access.ladder", ("height", print.Length(m.WorkHeightM)), ("working", print.Length(l.WorkingM)),
                ("rail", print.AtLeast(l.RailM)));
        foreach (var (line, i) in m.PowerLines.Select((p, i) => (p, i)))
            yield return plan.Say("access.wire", ("wire", i + 1), ("what", line.What), ("height", print.Length(line.HeightM)),
                ("clear", line.Clear), ("keep", print.AtLeast(line.KeepClearM)));
        yield return plan.Say("access.house");
    }

    public static string Of(SheetPlan plan)
    {
        var print = plan.Print;
        return plan.Say("access.what", ("height", print.Length(plan.Siting.AntennaHeightM)),
            ("notes", string.Join(" ", Notes(plan).SkipLast(1))),
            ("wires",
                plan.Mounting.PowerLines.Select((l, i) =>
                plan.Say("access.wire-what", ("wire", i + 1), ("distance", print.Length(l.DistanceM)),
                ("required", print.AtLeast(l.RequiredM))))));
    }
}
