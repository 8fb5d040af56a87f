using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Materials;

/// <summary>Turns the checked group <c>materials</c> into its record.</summary>
internal sealed class MaterialsBinder(PartLibrary parts)
{
    public MaterialsSection Section(CheckedGroup g) => new(g.At)
    {
        Stock = [.. g.Entries(MaterialsKeys.Stock).Select(Stock)],
        Aim = g.Get(MaterialsKeys.Aim),
        AimAt = g.Place(MaterialsKeys.Aim),
        KeepAbove = g.Metres(MaterialsKeys.KeepAbove),
        Currency = g.Maybe(MaterialsKeys.Currency)?.Value,
        Prices = [.. g.Entries(MaterialsKeys.Prices).Select(Named)],
        Spares = [.. g.Entries(MaterialsKeys.Spares).Select(Named)],
        TaxPct = g.Maybe(MaterialsKeys.Tax)?.Value,
        CustomerSupplies = [.. g.Items(MaterialsKeys.CustomerSupplies).Select(i => i.Value)],
        Crew = g.Get(MaterialsKeys.Crew),
        Hours = [.. g.Entries(MaterialsKeys.Hours).Select(Named)],
        Tools = g.Items(MaterialsKeys.Tools),
    };

    public IReadOnlyList<ExtraPart> Extras(CheckedGroup g) => [.. g.Items(MaterialsKeys.Extra).Select(e => Extra(e.Value))];

    private ExtraPart Extra(CheckedGroup g) => new(parts.Get<Part>(g.Get(ExtraKeys.Part)), g.Get(ExtraKeys.Count), g.Get(ExtraKeys.For));

    private StockLength Stock(Entry<CheckedGroup> e)
    {
        var g = e.Value;
        return new(
            e.Name, parts.Get<Part>(g.Get(StockKeys.Cable)), g.Get(StockKeys.Kind), g.Metres(StockKeys.Length),
                g.Maybe(StockKeys.Count)?.Value,
            g.Get(StockKeys.PartUsed), g.Maybe(StockKeys.Price)?.Value, e.At);
    }

    private static NamedNumber Named(Entry<double> e) => new(e.Name, e.Value, e.At);
}
