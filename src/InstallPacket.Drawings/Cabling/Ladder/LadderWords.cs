using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>The level ladder in words.</summary>
internal static class LadderWords
{
    /// <summary>The outlet by its name and what it serves.</summary>
    public static string Outlet(SheetPlan plan, LadderPlan ladder)
    {
        var serves = plan.Cabling.Outlets.FirstOrDefault(o => o.Id == ladder.Outlet)?.Serves ?? "";
        return serves.Length == 0 || serves == ladder.Outlet ? $"Outlet {ladder.Outlet}" : $"Outlet {ladder.Outlet}, {serves}";
    }

    /// <summary>The channel by role, name and number.</summary>
    public static string Station(SheetPlan plan, LadderLine line) => plan.Reception.Stations.FirstOrDefault(s => s.Id == line.Station) is { } s
        ? $"{line.Role}: {s.Name}, RF {Calc.Quantities.UnitText.Number(s.RfChannel, 0)}" : $"{line.Role}: {line.Station}";

    public static string Of(SheetPlan plan, LadderPlan ladder)
    {
        var print = plan.Print;
        var words = new List<string> { $"Levels from the antenna to the receiver{(ladder.Outlet == plan.Cabling.Ladder?.Outlet ? " at the outlet with the smallest margin" : "")}, cable at 20 °C; margins are for hot cable. {Outlet(plan, ladder)}." };
        words.AddRange(ladder.Lines.Select(l =>
            $"{Capital(Station(plan, l))}, margin {UnitPrinter.Plain.Margin(l.MarginDb)}: "
            + string.Join("; ", l.Steps.Select((s, i) => s.Label + (i > 0 ? " " + UnitPrinter.Plain.Margin(s.GainDb) : "") + ", " + print.Level(s.LevelDbm))) + "."));
        if (ladder.Weakest is { Steps.Count: > 0 } weakest)
            words.Add($"Noise in the channel of the weakest: {string.Join("; ", weakest.Steps.Select(s => s.Label + ", " + print.Level(s.NoiseDbm)))}.");
        words.AddRange(ladder.Lines[0].Steps.Where(s => s.CeilingDbm is not null).Select(s =>
            $"With the {ladder.Lines[0].Role} at {print.Level(s.CeilingDbm!.Value)} behind {s.Label}, all stations together would reach the amplifier's largest output."));
        words.Add(ladder.LargestDbm is { } largest ? $"The receiver takes {print.Level(largest)} at most." : "The largest level of the receiver is unknown.");
        return string.Join(" ", words);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
