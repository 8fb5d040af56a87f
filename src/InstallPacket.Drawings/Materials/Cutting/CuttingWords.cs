using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials.Cutting;

/// <summary>The words of the cutting plan.</summary>
internal static class CuttingWords
{
    public static string Heading(StripPlan strip, SheetPlan plan) =>
        plan.Say("cutting.strip", ("number", strip.Number), ("stock", strip.Stock),
        ("kind", plan.Word("stock", strip.Kind)), ("part_used", strip.PartUsed), ("length", plan.Print.Cable(strip.LengthM)));

    public static string Pieces(StripPlan strip, SheetPlan plan) => string.Join("; ",
        strip.Pieces.Select(p =>
            plan.Say("cutting.piece", ("number", p.Number), ("length", plan.Print.Cable(p.LengthM)))).Append(Rest(strip, plan)));

    /// <summary>What a person who cannot see the figure needs to know.</summary>
    public static string Of(SheetPlan plan, IEnumerable<StripPlan> strips) => plan.Say("cutting.what", ("strips", string.Join(" ",
        strips.Select(s => plan.Say("cutting.strip-pieces", ("strip", Heading(s, plan)), ("pieces", Pieces(s, plan)))))));

    private static string Rest(StripPlan strip, SheetPlan plan) => strip.LeftM <= 0 ? plan.Say("cutting.nothing")
        : plan.Say(strip.Keep ? "cutting.keep" : "cutting.scrap", ("length", plan.Print.Cable(strip.LeftM)));
}
