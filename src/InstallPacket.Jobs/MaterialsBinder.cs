using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs;

/// <summary>Binds what <c>materials</c> says of stock, prices and work.</summary>
internal sealed partial class SectionBinder
{
    public MaterialsSection Materials(CheckedGroup g) => new(g.At)
    {
        Stock = [.. g.Entries("stock").Select(Stock)],
        LeastCost = g.Get<string>("aim").Value == "least-cost",
        AimAt = g.Place("aim"),
        KeepAbove = Metres(g, "keep-above").Value,
        Currency = g.Maybe<string>("currency")?.Value,
        Prices = [.. g.Entries("prices").Select(Named)],
        TaxPct = g.Maybe<double>("tax")?.Value,
        CustomerSupplies = [.. g.Items<string>("customer-supplies").Select(i => i.Value)],
        Crew = g.Get<int>("crew").Value,
        Hours = [.. g.Entries("hours").Select(Named)],
        Tools = g.Items<string>("tools"),
    };

    private StockLength Stock(CheckedEntry e) => new(
        e.Name, Part(e.Group, "cable"), Text(e.Group, "kind"), Length.FromMetres(e.Group.Get<double>("length").Value), e.Group.Maybe<int>("count")?.Value,
        e.Group.Get<string>("part-used").Value == "yes", e.Group.Maybe<double>("price")?.Value, e.At);

    private static NamedNumber Named(CheckedEntry e) => new(e.Name, (double)e.Value, e.At);
}
