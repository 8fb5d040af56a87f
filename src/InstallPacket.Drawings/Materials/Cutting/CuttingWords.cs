using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials.Cutting;

/// <summary>The words of the cutting plan.</summary>
internal static class CuttingWords
{
    public static string Heading(StripPlan strip, UnitPrinter print) =>
        FormattableString.Invariant($"Strip {strip.Number}: {strip.Stock} ({strip.Kind}{(strip.PartUsed ? ", part-used" : "")}), {print.Cable(strip.LengthM)}");

    public static string Pieces(StripPlan strip, UnitPrinter print) =>
        string.Join("; ", strip.Pieces.Select(p => FormattableString.Invariant($"{p.Number}: {print.Cable(p.LengthM)}"))) + "; " + Rest(strip, print);

    /// <summary>What a person who cannot see the figure needs to know.</summary>
    public static string Of(SheetPlan plan, IEnumerable<StripPlan> strips)
    {
        var print = plan.Print;
        return "The cutting plan to scale. " + string.Join(" ", strips.Select(s => $"{Heading(s, print)}: {Pieces(s, print)}."));
    }

    private static string Rest(StripPlan strip, UnitPrinter print) =>
        strip.LeftM <= 0 ? "nothing left over" : $"left over {print.Cable(strip.LeftM)}, {(strip.Keep ? "back to the van" : "scrap")}";
}
