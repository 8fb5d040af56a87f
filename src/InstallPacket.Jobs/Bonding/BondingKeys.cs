using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Bonding;

/// <summary>The keys of <c>power</c>.</summary>
internal static class PowerKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Distance = Keys.Required(
        "distance", new QuantityKind(Dimension.Length, 0, 200, "m"),
        "Smallest distance between the bonding conductor and a power conductor, by the survey.");

    public static readonly Key<PowerCircuit> Circuit = Keys.Required(
        "circuit", new WordKind<PowerCircuit>(), "What the power conductor carries.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>mast-route</c> and <c>shield-route</c>.</summary>
internal static class RouteKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<int> Bends = Keys.Optional(
        "bends", new IntegerKind(0, 60), "How many times the conductor changes its direction.");

    public static readonly Key<double> BendRadius = Keys.Optional(
        "bend-radius", new QuantityKind(Dimension.Length, 0, 5, "m"), "Radius of its tightest bend.");

    public static readonly Key<int> Coils = Keys.Optional(
        "coils", new IntegerKind(0, 100), "Turns of slack that lie coiled; there should be none.");

    public static readonly Key<CheckedGroup> Power = Keys.Optional("power", PowerKeys.Group, "The power conductor that comes nearest.");

    public static readonly Key<bool> Existing = Keys.Optional(
        "existing", new YesNoKind(), "Whether this conductor is there already; as `bonding.existing` says when absent.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>jumper</c>.</summary>
internal static class JumperKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required(
        "part", new ReferenceKind(ReferenceTarget.Part, PartKind.Bonding), "The conductor.");

    public static readonly Key<double> Length = Keys.Required(
        "length", new QuantityKind(Dimension.Length, 0, 300, "m"), "Length from the rod to the electrode system of the building.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>rod</c>.</summary>
internal static class RodKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required(
        "part", new ReferenceKind(ReferenceTarget.Part, PartKind.Bonding), "The rod; its part states `length` and `diameter`.");

    public static readonly Key<int> Count = Keys.Default("count", new IntegerKind(1, 2), "How many rods.", "1");

    public static readonly Key<double> Spacing = Keys.Optional(
        "spacing", new QuantityKind(Dimension.Length, 0.1, 100, "m"), "Distance between two rods.");

    // A row of the table of soils and no closed word: a soil is added there, and no code asks which one it is.
    public static readonly Key<string> Soil = Keys.Optional(
        "soil", new TableWordKind([.. Calc.Bonding.Soil.All.Select(s => s.Word)]),
        "What the ground is, when nobody measured; its resistivity is then a wide range.");

    public static readonly Key<double> Resistivity = Keys.Optional(
        "resistivity", new QuantityKind(Dimension.Resistivity, 1, 100000, "ohm m"),
        "Measured resistivity of the ground; it goes before `soil`.");

    public static readonly Key<CheckedGroup> Jumper = Keys.Optional(
        "jumper", JumperKeys.Group, "The conductor that joins the rod to the electrode system of the building.");

    public static readonly Key<string> Clamp = Keys.Optional(
        "clamp", new ReferenceKind(ReferenceTarget.Part, PartKind.Bonding, PartKind.Sundry),
        "Clamp for the rod; one for each conductor on it is counted.");

    public static readonly Key<bool> Existing = Keys.Optional(
        "existing", new YesNoKind(), "Whether rod, jumper and clamps are there already; as `bonding.existing` says when absent.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>zone</c>.</summary>
internal static class ZoneKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> BelowEdge = Keys.Required(
        "below-edge", new QuantityKind(Dimension.Length, -50, 100, "m"),
        "How far the top of antenna and mast lies below the roof edge; negative above it.");

    public static readonly Key<double> Out = Keys.Required(
        "out", new QuantityKind(Dimension.Length, 0, 50, "m"), "How far their farthest point stands out from the wall.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>lightning</c>.</summary>
internal static class LightningKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> FlashDensity = Keys.Optional(
        "flash-density", new QuantityKind(Dimension.FlashDensity, 0, 100, "/km2/year"),
        "Flashes to ground for an area and a year, from a lightning location service.");

    public static readonly Key<int> ThunderDays = Keys.Optional(
        "thunder-days", new IntegerKind(0, 366), "Days with thunder in a year, when no flash density is known.");

    // A row of the table of places, which gives the factor.
    public static readonly Key<string> Place = Keys.Required(
        "place", new TableWordKind([.. StrikeExposure.Places.Keys]),
        "What stands around: higher things, similar ones, nothing within three heights, or nothing and on a hilltop.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>bonding</c>.</summary>
internal static class BondingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Connection = Keys.Required(
        "connection", new TextKind(160), "Where the bonding conductor joins the earth of the building, as found by the survey.");

    public static readonly Key<string> Conductor = Keys.Required(
        "conductor", new ReferenceKind(ReferenceTarget.Part, PartKind.Bonding),
        "The conductor from the mast; it serves the shield too unless `shield-conductor` names another.");

    public static readonly Key<double> MastLength = Keys.Required(
        "mast-length", new QuantityKind(Dimension.Length, 0, 200, "m"),
        "Length of conductor from the mast to the connection; with a `rod` of its own, from the mast to the rod.");

    public static readonly Key<CheckedGroup> MastRoute = Keys.Optional(
        "mast-route", RouteKeys.Group, "How the conductor from the mast runs.");

    public static readonly Key<string> ShieldConductor = Keys.Optional(
        "shield-conductor", new ReferenceKind(ReferenceTarget.Part, PartKind.Bonding),
        "The conductor from the grounding block, when it is another one.");

    public static readonly Key<double> ShieldLength = Keys.Required(
        "shield-length", new QuantityKind(Dimension.Length, 0, 200, "m"),
        "Length of conductor from the grounding block to the connection.");

    public static readonly Key<CheckedGroup> ShieldRoute = Keys.Optional(
        "shield-route", RouteKeys.Group, "How the conductor from the grounding block runs.");

    public static readonly Key<CheckedGroup> Rod = Keys.Optional("rod", RodKeys.Group, "A rod for the mast of its own.");

    public static readonly Key<CheckedGroup> Zone = Keys.Optional(
        "zone", ZoneKeys.Group, "Where antenna and mast stand at the wall: European practice exempts a zone from the earthing conductor.");

    public static readonly Key<CheckedGroup> Lightning = Keys.Optional(
        "lightning", LightningKeys.Group, "What is known of lightning here; without it nothing is said about flashes in a year.");

    public static readonly Key<bool> Existing = Keys.Default(
        "existing", new YesNoKind(),
        "Whether the bond is there already; then it is not laid, but inspected, tested and checked as a new one. `mast-route`, `shield-route` "
        + "and `rod` may say otherwise for their piece.", "no");

    public static readonly Key<string> By = Keys.Required("by", new TextKind(120), "Who may do this work here.");

    public static readonly Key<string> Note = Keys.Optional("note", new TextKind(300), "A word to the crew.");

    public static GroupKind Group => Keys.Group;
}
