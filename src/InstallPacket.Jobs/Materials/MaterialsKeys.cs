using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Materials;

/// <summary>The keys of <c>materials</c>.</summary>
internal static class MaterialsKeys
{
    private static readonly GroupKind Extra = new(
        new("part", new ReferenceKind(ReferenceTarget.Part), "The part.", Required: true),
        new("count", new IntegerKind(1, 1000), "How many.", Required: true),
        new("for", new TextKind(120), "What it is for.", Required: true));

    private static readonly GroupKind Stock = new(
        new("cable", new ReferenceKind(ReferenceTarget.Part, "cable", "bonding"), "The cable or conductor that it is.", Required: true),
        new("kind", new WordKind("reel", "box", "pre-cut"), "What it lies on: a reel, a pull box, or a length cut before.", Required: true),
        new("length", new QuantityKind(Dimension.Length, 0.1, 2000, "m"), "How much is on it now.", Required: true),
        new("count", new IntegerKind(1, 1000), "How many there are; as many as needed when absent."),
        new("part-used", new WordKind("yes", "no"), "Whether some of it was used before.", Default: "no"),
        new("price", new NumberKind(0, 100000), "What one costs, in the currency of the firm; `least-cost` needs it."));

    public static readonly GroupKind Section = new(
        new Key("extra", new ListKind(Extra, 0, 100), "Parts that no other section asks for."),
        new Key("parts", new MapKind(PartCatalogue.Part, "part", 0, 100), "Parts of this job alone, with the figures of the maker's sheet; one with the name of a library part takes its place."),
        new Key("stock", new MapKind(Stock, "stock", 0, 60), "What the van and the shop have to cut from. Without it there is no cutting plan."),
        new Key("aim", new WordKind("least-waste", "least-cost"), "What the cutting plan seeks: the least length opened, or the least price of what is opened.", Default: "least-waste"),
        new Key("keep-above", new QuantityKind(Dimension.Length, 0, 100, "m"), "A leftover of this length and more goes back to the van.", Default: "3 m"),
        new Key("currency", new TextKind(20), "The currency of all prices, as printed."),
        new Key("prices", new MapKind(new NumberKind(0, 100000), "part", 0, 300), "Prices of parts in this job: for a piece, or a metre of what is bought by length. They go before those of the library."),
        new Key("tax", new QuantityKind(Dimension.Share, 0, 60, "%"), "Tax on top of the prices."),
        new Key("customer-supplies", new ListKind(new TextKind(120), 0, 30), "What the customer has to provide."),
        new Key("crew", new IntegerKind(1, 20), "How many people work.", Default: "2"),
        new Key("hours", new MapKind(new NumberKind(0, 1000), "task", 0, 60), "Person-hours of a task, in place of those of the table; for each piece, metre or outlet where the table counts them."),
        new Key("tools", new ListKind(new TextKind(40), 0, 60), "Tools to bring besides those that the plan calls for, by their names in the table of tools."));
}
