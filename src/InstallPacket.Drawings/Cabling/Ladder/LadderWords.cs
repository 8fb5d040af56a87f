using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>The level ladder in words.</summary>
internal static class LadderWords
{
    /// <summary>The outlet by its name and what it serves.</summary>
    public static string Outlet(SheetPlan plan, LadderPlan ladder)
    {
        var serves = plan.Cabling.Outlets.FirstOrDefault(o => o.Id == ladder.Outlet)?.Serves ?? "";
        return serves.Length == 0 || serves == ladder.Outlet
            ? plan.Say("ladder.outlet", ("outlet", ladder.Outlet))
                : plan.Say("ladder.outlet-serves", ("outlet", ladder.Outlet), ("serves", serves));
    }

    /// <summary>The channel by role, name and number.</summary>
    public static string Station(SheetPlan plan, LadderLine line)
    {
        var station = plan.Reception.Stations.FirstOrDefault(s => s.Id == line.Station);
        return plan.Say("ladder.station", ("role", Role(plan, line)), ("station", station?.Name ?? line.Station),
            ("channel", station?.RfChannel));
    }

    /// <summary>A step by its part or run.</summary>
    public static string Step(SheetPlan plan, string label)
    {
        var blank = label.IndexOf(' ', StringComparison.Ordinal);
        var kind = blank < 0 ? "" : label[(blank + 1)..];
        return plan.Cabling.Elements.Any(e => Word.Of(e.Kind) == kind && label.StartsWith(e.Id + " ", StringComparison.Ordinal))
            ? $"{label[..blank]} {plan.Word("part", kind)}" : plan.Name(label);
    }

    public static string Of(SheetPlan plan, LadderPlan ladder)
    {
        var print = plan.Print;
        var words = new List<string>
        {
            plan.Say("ladder.what", ("worst", ladder.Outlet == plan.Cabling.Ladder?.Outlet),
                ("reference", print.Temperature(plan.Cabling.ReferenceC)), ("outlet", Outlet(plan, ladder))),
        };
        words.AddRange(ladder.Lines.Select(l =>
            plan.Say("ladder.line", ("station", Capital(Station(plan, l))), ("margin", print.Margin(l.MarginDb)),
            ("steps", Steps(plan, l)))));
        if (ladder.Weakest is { Steps.Count: > 0 } weakest)
            words.Add(plan.Say("ladder.noise-line",
                ("steps", Joined(weakest.Steps.Select(s => Step(plan, s, "", print.Level(s.NoiseDbm)))))));
        words.AddRange(ladder.Lines[0].Steps.Where(s => s.CeilingDbm is not null).Select(s => plan.Say(
            "ladder.ceiling", ("role", Role(plan, ladder.Lines[0])), ("level", print.Level(s.CeilingDbm!.Value)),
                ("step", Step(plan, s.Label)))));
        words.Add(ladder.LargestDbm is { } largest ? plan.Say("ladder.largest", ("level", print.Level(largest)))
            : plan.Say("ladder.largest-unknown"));
        return string.Join(" ", words);
    }

    private static string Steps(SheetPlan plan, LadderLine line) => Joined(line.Steps.Select((s, i) =>
        Step(plan, s, i > 0 ? plan.Print.Margin(s.GainDb) : "", plan.Print.Level(s.LevelDbm))));

    private static string Step(SheetPlan plan, LadderStep step, string gain, string level) =>
        plan.Say("ladder.step", ("step", Step(plan, step.Label)), ("gain", gain), ("level", level));

    private static string Joined(IEnumerable<string> steps) => string.Join("; ", steps);

    private static string Role(SheetPlan plan, LadderLine line) => plan.Say("ladder.role." + line.Role);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
