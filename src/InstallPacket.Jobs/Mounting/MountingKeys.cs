using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Mounting;

/// <summary>The keys of <c>mounting</c>.</summary>
internal static class MountingKeys
{
    private static readonly GroupKind Fixing = new(
        new("part", new ReferenceKind(ReferenceTarget.Part, "fixing"), "The fixing.", Required: true),
        new("count", new IntegerKind(1, 200), "How many.", Required: true),
        new("pilot", new QuantityKind(Dimension.Length, 0, 0.03, "m"), "Diameter of the pilot hole."),
        new("into", new TextKind(80), "What it bites into.", Required: true),
        new("timber", new WordKind([.. SpecificGravity.All.Select(g => g.Word), .. TimberClass.All.Select(c => c.Word)]),
            "Screw: the group of timber that it bites into, for `us`, or its strength class, for `eu`; the lightest when absent."),
        new("wet", new WordKind("yes", "no"), "Screw: whether the timber gets wet in service, as all timber outdoors does.", Default: "yes"),
        new("gap", new QuantityKind(Dimension.Length, 0, 0.3, "m"), "Screw: cladding, board or sheathing between plate and timber; it carries nothing.", Default: "0 mm"),
        new("end-distance", new QuantityKind(Dimension.Length, 0, 10, "m"), "Screw: from the end of the timber to the nearest screw."),
        new("edge-distance", new QuantityKind(Dimension.Length, 0, 1, "m"), "Screw: from the edge of the timber to the nearest screw."),
        new("pull", new QuantityKind(Dimension.Force, 1, 200000, "N"), "Anchor or bolt: what its maker states for pull in this masonry, at this edge distance and depth."),
        new("shear", new QuantityKind(Dimension.Force, 1, 200000, "N"), "Anchor or bolt: what its maker states for shear there."),
        new("stated", new TextKind(160), "The sheet or the test that the stated figures come from."));

    private static readonly GroupKind Wind = new(
        new("speed", new QuantityKind(Dimension.Speed, 5, 120, "m/s"), "Basic wind speed of the place from the official map: the 3-second gust of ASCE 7 for `us`, the 10-minute mean of EN 1991-1-4 for `eu`. Nothing is guessed.", Required: true),
        new("exposure", new WordKind("B", "C", "D", "0", "I", "II", "III", "IV"), "What the wind blows over: B town or woodland, C open, D water front for `us`; 0 sea, I lake, II farmland, III village, IV city for `eu`.", Required: true),
        new("crest", new WordKind("no", "yes"), "Whether the house stands on a crest, a ridge or a cliff, where the wind is stronger than on flat ground.", Default: "no"));

    private static readonly GroupKind GuySet = new(
        new("ring", new QuantityKind(Dimension.Length, 0.3, 60, "m"), "Height of the ring above the foot of the mast.", Required: true),
        new("count", new IntegerKind(3, 4), "Guys of the set, evenly around.", Required: true),
        new("anchor-radius", new QuantityKind(Dimension.Length, 0.1, 60, "m"), "Distance of the anchors from the mast, level with its foot.", Required: true));

    private static readonly GroupKind Guys = new(
        new("part", new ReferenceKind(ReferenceTarget.Part, "guy"), "The guy wire.", Required: true),
        new("pretension", new QuantityKind(Dimension.Force, 0, 20000, "N"), "Pull of a guy in still air.", Required: true),
        new("sets", new ListKind(GuySet, 1, 6), "The rings, from below.", Required: true),
        new("anchor", new TextKind(120), "What holds the lower ends.", Required: true),
        new("anchor-pull", new QuantityKind(Dimension.Force, 1, 200000, "N"), "What an anchor bears along the guy, by its maker or by a test on site."),
        new("stated", new TextKind(160), "The sheet or the test that this figure comes from."));

    private static readonly GroupKind Ballast = new(
        new("side", new QuantityKind(Dimension.Length, 0.2, 5, "m"), "Side of the square base.", Required: true),
        new("block", new QuantityKind(Dimension.Mass, 1, 200, "kg"), "Mass of one ballast block.", Required: true),
        new("blocks", new IntegerKind(0, 500), "How many blocks lie on it; as many as are needed when absent."),
        new("friction", new NumberKind(0.1, 0.8), "Friction between base and roof, if it was measured; 0.4 when absent."),
        new("roof-bears", new QuantityKind(Dimension.Pressure, 100, 50000, "Pa"), "What the roof bears besides snow, as its owner's papers say."),
        new("stated", new TextKind(160), "The paper that this figure comes from."));

    private static readonly GroupKind Chimney = new(
        new("side", new QuantityKind(Dimension.Length, 0.2, 3, "m"), "Side of the stack, the smaller one.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 0.1, 6, "m"), "Height of the stack above the roof.", Required: true),
        new("strap-spacing", new QuantityKind(Dimension.Length, 0.1, 5, "m"), "Distance between the two straps.", Required: true),
        new("state", new WordKind("sound", "cracked", "leaning", "unknown"), "What the survey found.", Required: true),
        new("allowed", new WordKind("yes", "no", "unknown"), "Whether the local code allows an antenna on a chimney.", Required: true));

    private static readonly GroupKind Survey = new(
        new("roof", new WordKind("sound", "fragile", "mossy", "unknown"), "The surface that somebody may step on.", Default: "unknown"),
        new("asbestos", new WordKind("none", "suspected", "unknown"), "Old boards, coatings, roof sheets or flues that may hold asbestos or lead.", Default: "unknown"),
        new("behind", new WordKind("nothing", "known", "unknown"), "Cables, pipes and flues behind the places that are drilled.", Default: "unknown"),
        new("buried", new WordKind("none", "marked", "unmarked", "unknown"), "Buried services where a rod is driven or a trench is dug.", Default: "unknown"),
        new("old-mast", new WordKind("no", "yes"), "Whether an old mast stands there.", Default: "no"));

    public static readonly GroupKind Section = new(
        new("kind", new WordKind("gable-bracket", "wall-bracket", "eave-bracket", "ground-mast", "chimney-lashing", "tripod", "ballast", "attic"),
            "How the antenna is held.", Required: true),
        new("part", new ReferenceKind(ReferenceTarget.Part, "mount"), "The bracket or base.", Required: true),
        new("mast", new ReferenceKind(ReferenceTarget.Part, "mast"), "The mast tube.", Required: true),
        new("mast-length", new QuantityKind(Dimension.Length, 0.2, 30, "m"), "Length of the mast tube.", Required: true),
        new("free-length", new QuantityKind(Dimension.Length, 0.1, 20, "m"), "Length of mast above its upper support; guys do not count.", Required: true),
        new("on", new TextKind(120), "What it is fixed to.", Required: true),
        new("fixings", new ListKind(Fixing, 1, 20), "The fixings.", Required: true),
        new("spacing", new QuantityKind(Dimension.Length, 0.05, 10, "m"), "Distance between the two supports of the mast; the held length when absent."),
        new("wind", Wind, "The wind that the mast must stand; without it nothing is said about its strength."),
        new("guys", Guys, "Guys of the mast."),
        new("ballast", Ballast, "Base and blocks of a mount that stands by its weight."),
        new("chimney", Chimney, "The stack that a mast is strapped to."),
        new("survey", Survey, "What the survey found that can hurt somebody."),
        new("roof-pitch", new QuantityKind(Dimension.Angle, 0, 80, "deg"), "Pitch of the roof, when somebody walks on it."),
        new("work-height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height at which the ladder leans or the person stands.", Required: true),
        new("ladder-load", new QuantityKind(Dimension.Mass, 30, 300, "kg"), "The heaviest person with clothes and tools and what is carried, for the rating of the ladder."),
        new("fall-protection", new WordKind("none", "edge", "harness", "platform"), "What keeps a person from falling off the edge."),
        new("access", new WordKind("ladder", "ladder-and-roof", "tower", "platform", "inside"), "How the place is reached.", Required: true));
}
