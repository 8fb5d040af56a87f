using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Materials;

/// <summary>The keys of an entry of <c>extra</c>.</summary>
internal static class ExtraKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required("part", new ReferenceKind(ReferenceTarget.Part), "The part.");

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(1, 1000), "How many.");

    public static readonly Key<string> For = Keys.Required("for", new TextKind(120), "What it is for.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of an entry of <c>stock</c>.</summary>
internal static class StockKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Cable = Keys.Required(
        "cable", new ReferenceKind(ReferenceTarget.Part, PartKind.Cable, PartKind.Bonding), "The cable or conductor that it is.");

    public static readonly Key<StockKind> Kind = Keys.Required(
        "kind", new WordKind<StockKind>(), "What it lies on: a reel, a pull box, or a length cut before.");

    public static readonly Key<double> Length = Keys.Required(
        "length", new QuantityKind(Dimension.Length, 0.1, 2000, "m"), "How much is on it now.");

    public static readonly Key<int> Count = Keys.Optional(
        "count", new IntegerKind(1, 1000), "How many there are; as many as needed when absent.");

    public static readonly Key<bool> PartUsed = Keys.Default("part-used", new YesNoKind(), "Whether some of it was used before.", "no");

    public static readonly Key<double> Price = Keys.Optional(
        "price", new NumberKind(0, 100000), "What one costs, in the currency of the firm; `least-cost` needs it.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>materials</c>.</summary>
internal static class MaterialsKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Extra = Keys.Optional(
        "extra", new ListKind<CheckedGroup>(ExtraKeys.Group, 0, 100), "Parts that no other section asks for.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Parts = Keys.Optional(
        "parts", new MapKind<CheckedGroup>(PartCatalogue.Part, "part", 0, 100),
        "Parts of this job alone, with the figures of the maker's sheet; one with the name of a library part takes its place.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Stock = Keys.Optional(
        "stock", new MapKind<CheckedGroup>(StockKeys.Group, "stock", 0, 60),
        "What the van and the shop have to cut from. Without it there is no cutting plan.");

    public static readonly Key<CuttingAim> Aim = Keys.Default(
        "aim", new WordKind<CuttingAim>(),
        "What the cutting plan seeks: the least length opened, or the least price of what is opened.", "least-waste");

    public static readonly Key<double> KeepAbove = Keys.Default(
        "keep-above", new QuantityKind(Dimension.Length, 0, 100, "m"), "A leftover of this length and more goes back to the van.", "3 m");

    public static readonly Key<string> Currency = Keys.Optional("currency", new TextKind(20), "The currency of all prices, as printed.");

    public static readonly Key<IReadOnlyList<Entry<double>>> Prices = Keys.Optional(
        "prices", new MapKind<double>(new NumberKind(0, 100000), "part", 0, 300),
        "Prices of parts in this job: for a piece, or a metre of what is bought by length. They go before those of the library.");

    public static readonly Key<IReadOnlyList<Entry<double>>> Spares = Keys.Optional(
        "spares", new MapKind<double>(new QuantityKind(Dimension.Share, 0, 100, "%"), "part", 0, 300),
        "How many more of a part to bring than the plan wants, rounded up. They go before those of the library.");

    public static readonly Key<double> Tax = Keys.Optional(
        "tax", new QuantityKind(Dimension.Share, 0, 60, "%"), "Tax on top of the prices.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> CustomerSupplies = Keys.Optional(
        "customer-supplies", new ListKind<string>(new TextKind(120), 0, 30), "What the customer has to provide.");

    public static readonly Key<int> Crew = Keys.Default("crew", new IntegerKind(1, 20), "How many people work.", "2");

    public static readonly Key<IReadOnlyList<Entry<double>>> Hours = Keys.Optional(
        "hours", new MapKind<double>(new NumberKind(0, 1000), "task", 0, 60),
        "Person-hours of a task, in place of those of the table; for each piece, metre or outlet where the table counts them.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> Tools = Keys.Optional(
        "tools", new ListKind<string>(new TextKind(40), 0, 60),
        "Tools to bring besides those that the plan calls for, by their names in the table of tools.");

    public static GroupKind Group => Keys.Group;
}
