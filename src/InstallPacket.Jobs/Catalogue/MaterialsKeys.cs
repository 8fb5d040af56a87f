namespace InstallPacket.Jobs.Catalogue;

/// <summary>The keys of <c>materials</c>.</summary>
internal static class MaterialsKeys
{
    private static readonly GroupKind Extra = new(
        new("part", new ReferenceKind(ReferenceTarget.Part), "The part.", Required: true),
        new("count", new IntegerKind(1, 1000), "How many.", Required: true),
        new("for", new TextKind(120), "What it is for.", Required: true));

    public static readonly GroupKind Section = new(
        new Key("extra", new ListKind(Extra, 0, 100), "Parts that no other section asks for."),
        new Key("parts", new MapKind(PartCatalogue.Part, "part", 0, 100), "Parts of this job alone, with the figures of the maker's sheet; one with the name of a library part takes its place."));
}
