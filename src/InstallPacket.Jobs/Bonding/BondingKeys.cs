using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Bonding;

/// <summary>The keys of <c>bonding</c>.</summary>
internal static class BondingKeys
{
    private static readonly GroupKind Power = new(
        new("distance", new QuantityKind(Dimension.Length, 0, 200, "m"), "Smallest distance between the bonding conductor and a power conductor, by the survey.", Required: true),
        new("circuit", new WordKind("up-to-250-v", "above-250-v"), "What the power conductor carries.", Required: true));

    private static readonly GroupKind Route = new(
        new("bends", new IntegerKind(0, 60), "How many times the conductor changes its direction."),
        new("bend-radius", new QuantityKind(Dimension.Length, 0, 5, "m"), "Radius of its tightest bend."),
        new("coils", new IntegerKind(0, 100), "Turns of slack that lie coiled; there should be none."),
        new("power", Power, "The power conductor that comes nearest."));

    private static readonly GroupKind Jumper = new(
        new("part", new ReferenceKind(ReferenceTarget.Part, "bonding"), "The conductor.", Required: true),
        new("length", new QuantityKind(Dimension.Length, 0, 300, "m"), "Length from the rod to the electrode system of the building.", Required: true));

    private static readonly GroupKind Rod = new(
        new("part", new ReferenceKind(ReferenceTarget.Part, "bonding"), "The rod; its part states `length` and `diameter`.", Required: true),
        new("count", new IntegerKind(1, 2), "How many rods.", Default: "1"),
        new("spacing", new QuantityKind(Dimension.Length, 0.1, 100, "m"), "Distance between two rods."),
        new("soil", new WordKind([.. Soil.All.Select(s => s.Word)]), "What the ground is, when nobody measured; its resistivity is then a wide range."),
        new("resistivity", new QuantityKind(Dimension.Resistivity, 1, 100000, "ohm m"), "Measured resistivity of the ground; it goes before `soil`."),
        new("jumper", Jumper, "The conductor that joins the rod to the electrode system of the building."),
        new("clamp", new ReferenceKind(ReferenceTarget.Part, "bonding", "sundry"), "Clamp for the rod; one for each conductor on it is counted."));

    private static readonly GroupKind Zone = new(
        new("below-edge", new QuantityKind(Dimension.Length, -50, 100, "m"), "How far the top of antenna and mast lies below the roof edge; negative above it.", Required: true),
        new("out", new QuantityKind(Dimension.Length, 0, 50, "m"), "How far their farthest point stands out from the wall.", Required: true));

    private static readonly GroupKind Lightning = new(
        new("flash-density", new QuantityKind(Dimension.FlashDensity, 0, 100, "/km2/year"), "Flashes to ground for an area and a year, from a lightning location service."),
        new("thunder-days", new IntegerKind(0, 366), "Days with thunder in a year, when no flash density is known."),
        new("place", new WordKind([.. StrikeExposure.Places.Keys]), "What stands around: higher things, similar ones, nothing within three heights, or nothing and on a hilltop.", Required: true));

    public static readonly GroupKind Section = new(
        new("connection", new TextKind(160), "Where the bonding conductor joins the earth of the building, as found by the survey.", Required: true),
        new("conductor", new ReferenceKind(ReferenceTarget.Part, "bonding"), "The conductor from the mast; it serves the shield too unless `shield-conductor` names another.", Required: true),
        new("mast-length", new QuantityKind(Dimension.Length, 0, 200, "m"), "Length of conductor from the mast to the connection; with a `rod` of its own, from the mast to the rod.", Required: true),
        new("mast-route", Route, "How the conductor from the mast runs."),
        new("shield-conductor", new ReferenceKind(ReferenceTarget.Part, "bonding"), "The conductor from the grounding block, when it is another one."),
        new("shield-length", new QuantityKind(Dimension.Length, 0, 200, "m"), "Length of conductor from the grounding block to the connection.", Required: true),
        new("shield-route", Route, "How the conductor from the grounding block runs."),
        new("rod", Rod, "A rod for the mast of its own."),
        new("zone", Zone, "Where antenna and mast stand at the wall: European practice exempts a zone from the earthing conductor."),
        new("lightning", Lightning, "What is known of lightning here; without it nothing is said about flashes in a year."),
        new("by", new TextKind(120), "Who may do this work here.", Required: true),
        new("note", new TextKind(300), "A word to the crew."));
}
