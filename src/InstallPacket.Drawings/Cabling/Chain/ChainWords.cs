using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>The chain diagram in words.</summary>
internal static class ChainWords
{
    public static string Heading(SheetPlan plan) => $"From the {(plan.Cabling.Elements.Count(e => e.From.Length == 0) > 1 ? "antennas" : "antenna")} to {UnitText.Number(plan.Cabling.Outlets.Count, 0)} {(plan.Cabling.Outlets.Count == 1 ? "outlet" : "outlets")}";

    public static string Supply(FeedPlan feed) => $"carries the supply of {feed.Amplifier} too, {UnitText.Write(feed.SupplyV, 1, "V")} from {feed.Inserter}";

    public static string Of(SheetPlan plan)
    {
        var print = plan.Print;
        var words = new List<string> { Heading(plan) + ": what feeds what, with the runs of cable between." };
        words.AddRange(plan.Cabling.Elements.Select(e => Part(plan, e, print)));
        words.AddRange(plan.Cabling.Feeds.Select(f => $"The line {string.Join(", ", f.Way)} {Supply(f)}."));
        return string.Join(" ", words);
    }

    private static string Part(SheetPlan plan, ElementPlan e, UnitPrinter print)
    {
        var text = $"{e.Id} {e.Kind.Replace('-', ' ')}";
        if (e.Serves.Length > 0) text += $" ({e.Serves})";
        if (e.From.Length > 0) text += $" fed from {e.From}{(e.FromPort > 0 ? " output " + ChainSize.Port(e.FromPort) : "")}";
        text += plan.Routing.Runs.FirstOrDefault(r => r.Id == e.Run) is { } run ? $" by {run.Id}, {print.Cable(run.LengthM)}" : e.From.Length > 0 ? ", screwed on" : "";
        if (e.Second.Length > 0)
            text += $", second input from {e.Second}" + (plan.Routing.Runs.FirstOrDefault(r => r.Id == e.SecondRun) is { } second ? $" by {second.Id}, {print.Cable(second.LengthM)}" : ", screwed on");
        if (e.SettingDb is { } db) text += $", set {UnitPrinter.Plain.Ratio(db)}";
        if (e.OpenPorts.Count > 0) text += $", terminator on output {string.Join(", ", e.OpenPorts.Select(ChainSize.Port))}";
        return text + ".";
    }
}
