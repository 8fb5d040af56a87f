using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>The chain diagram in words.</summary>
internal static class ChainWords
{
    public static string Heading(SheetPlan plan) => plan.Say("chain.heading",
        ("antennas", plan.Cabling.Elements.Count(e => e.From.Length == 0)), ("outlets", plan.Cabling.Outlets.Count));

    public static string Supply(SheetPlan plan, FeedPlan feed) => plan.Say("chain.supply",
        ("amplifier", feed.Amplifier), ("volts", plan.Print.Write(feed.SupplyV, 1, "V")), ("inserter", feed.Inserter));

    public static string Of(SheetPlan plan)
    {
        var words = new List<string> { plan.Say("chain.what", ("heading", Heading(plan))) };
        words.AddRange(plan.Cabling.Elements.Select(e => Part(plan, e)));
        words.AddRange(plan.Cabling.Feeds.Select(f => plan.Say("chain.line", ("way", plan.List(f.Way)), ("supply", Supply(plan, f)))));
        return string.Join(" ", words);
    }

    private static string Part(SheetPlan plan, ElementPlan e)
    {
        RunPlan? Run(string id) => plan.Routing.Runs.FirstOrDefault(r => r.Id == id);
        string Length(RunPlan? run) => run is null ? "" : ChainSize.Length(run, plan);
        var (run, second) = (Run(e.Run), Run(e.SecondRun));
        return plan.Say("chain.part", ("id", e.Id), ("kind", plan.Word("part", e.Kind)), ("serves", e.Serves), ("there", e.Existing), ("from", e.From),
            ("port", e.FromPort),
            ("run", run?.Id ?? ""), ("length", Length(run)), ("second", e.Second), ("second_run", second?.Id ?? ""),
                ("second_length", Length(second)),
            ("setting", e.SettingDb is { } db ? plan.Print.Ratio(db) : ""), ("open", plan.List(e.OpenPorts.Select(ChainSize.Port))));
    }
}
