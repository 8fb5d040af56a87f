using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Mounting;

/// <summary>The keys of a fixing.</summary>
internal static class FixingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required(
        "part", new ReferenceKind(ReferenceTarget.Part, PartKind.Fixing), "The fixing.");

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(1, 200), "How many.");

    public static readonly Key<double> Pilot = Keys.Optional(
        "pilot", new QuantityKind(Dimension.Length, 0, 0.03, "m"), "Diameter of the pilot hole.");

    public static readonly Key<string> Into = Keys.Required("into", new TextKind(80), "What it bites into.");

    // A row of the timber tables of the code families, which give its figures.
    public static readonly Key<string> Timber = Keys.Optional(
        "timber", new TableWordKind([.. SpecificGravity.All.Select(g => g.Word), .. TimberClass.All.Select(c => c.Word)]),
        "Screw: the group of timber that it bites into, for `us`, or its strength class, for `eu`; the lightest when absent.");

    public static readonly Key<bool> Wet = Keys.Default(
        "wet", new YesNoKind(), "Screw: whether the timber gets wet in service, as all timber outdoors does.", "yes");

    public static readonly Key<double> Gap = Keys.Default(
        "gap", new QuantityKind(Dimension.Length, 0, 0.3, "m"),
        "Screw: cladding, board or sheathing between plate and timber; it carries nothing.", "0 mm");

    public static readonly Key<double> EndDistance = Keys.Optional(
        "end-distance", new QuantityKind(Dimension.Length, 0, 10, "m"), "Screw: from the end of the timber to the nearest screw.");

    public static readonly Key<double> EdgeDistance = Keys.Optional(
        "edge-distance", new QuantityKind(Dimension.Length, 0, 1, "m"), "Screw: from the edge of the timber to the nearest screw.");

    public static readonly Key<double> Pull = Keys.Optional(
        "pull", new QuantityKind(Dimension.Force, 1, 200000, "N"),
        "Anchor or bolt: what its maker states for pull in this masonry, at this edge distance and depth.");

    public static readonly Key<double> Shear = Keys.Optional(
        "shear", new QuantityKind(Dimension.Force, 1, 200000, "N"), "Anchor or bolt: what its maker states for shear there.");

    public static readonly Key<string> Stated = Keys.Optional(
        "stated", new TextKind(160), "The sheet or the test that the stated figures come from.");

    public static readonly Key<bool> Existing = Keys.Optional(
        "existing", new YesNoKind(),
        "Whether the fixing is there already; as `mounting.existing` says when absent, but for clamps of the antenna, which come with it.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>plate</c>.</summary>
internal static class PlateKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Width = Keys.Optional(
        "width", new QuantityKind(Dimension.Length, 0.01, 1, "m"),
        "Level distance between its outer holes; absent when they stand in one upright line.");

    public static readonly Key<double> Height = Keys.Required(
        "height", new QuantityKind(Dimension.Length, 0.01, 1, "m"), "Upright distance between its outer holes.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>wind</c>.</summary>
internal static class WindKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Speed = Keys.Required(
        "speed", new QuantityKind(Dimension.Speed, 5, 120, "m/s"),
        "Basic wind speed of the place from the official map: the 3-second gust of ASCE 7 for `us`, the 10-minute mean of EN 1991-1-4 "
        + "for `eu`. Nothing is guessed.");

    // A row of the exposure or terrain table of the code family: each family has words of its own.
    public static readonly Key<string> Exposure = Keys.Required(
        "exposure", new TableWordKind("B", "C", "D", "0", "I", "II", "III", "IV"),
        "What the wind blows over: B town or woodland, C open, D water front for `us`; 0 sea, I lake, II farmland, III village, IV city "
        + "for `eu`.");

    public static readonly Key<bool> Crest = Keys.Default(
        "crest", new YesNoKind(),
        "Whether the house stands on a crest, a ridge or a cliff, where the wind is stronger than on flat ground.", "no");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a ring of guys.</summary>
internal static class GuySetKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Ring = Keys.Required(
        "ring", new QuantityKind(Dimension.Length, 0.3, 60, "m"), "Height of the ring above the foot of the mast.");

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(3, 4), "Guys of the set, evenly around.");

    public static readonly Key<double> AnchorRadius = Keys.Required(
        "anchor-radius", new QuantityKind(Dimension.Length, 0.1, 60, "m"), "Distance of the anchors from the mast, level with its foot.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>guys</c>.</summary>
internal static class GuysKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required("part", new ReferenceKind(ReferenceTarget.Part, PartKind.Guy), "The guy wire.");

    public static readonly Key<double> Pretension = Keys.Required(
        "pretension", new QuantityKind(Dimension.Force, 0, 20000, "N"), "Pull of a guy in still air.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Sets = Keys.Required(
        "sets", new ListKind<CheckedGroup>(GuySetKeys.Group, 1, 6), "The rings, from below.");

    public static readonly Key<string> Anchor = Keys.Required("anchor", new TextKind(120), "What holds the lower ends.");

    public static readonly Key<double> AnchorPull = Keys.Optional(
        "anchor-pull", new QuantityKind(Dimension.Force, 1, 200000, "N"),
        "What an anchor bears along the guy, by its maker or by a test on site.");

    public static readonly Key<string> Stated = Keys.Optional(
        "stated", new TextKind(160), "The sheet or the test that this figure comes from.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>ballast</c>.</summary>
internal static class BallastKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Side = Keys.Required(
        "side", new QuantityKind(Dimension.Length, 0.2, 5, "m"), "Side of the square base.");

    public static readonly Key<double> Block = Keys.Required(
        "block", new QuantityKind(Dimension.Mass, 1, 200, "kg"), "Mass of one ballast block.");

    public static readonly Key<int> Blocks = Keys.Optional(
        "blocks", new IntegerKind(0, 500), "How many blocks lie on it; as many as are needed when absent.");

    public static readonly Key<double> Friction = Keys.Optional(
        "friction", new NumberKind(0.1, 0.8), "Friction between base and roof, if it was measured; 0.4 when absent.");

    public static readonly Key<double> RoofBears = Keys.Optional(
        "roof-bears", new QuantityKind(Dimension.Pressure, 100, 50000, "Pa"),
        "What the roof bears besides snow, as its owner's papers say.");

    public static readonly Key<string> Stated = Keys.Optional("stated", new TextKind(160), "The paper that this figure comes from.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>chimney</c>.</summary>
internal static class ChimneyKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Side = Keys.Required(
        "side", new QuantityKind(Dimension.Length, 0.2, 3, "m"), "Side of the stack, the smaller one.");

    public static readonly Key<double> Height = Keys.Required(
        "height", new QuantityKind(Dimension.Length, 0.1, 6, "m"), "Height of the stack above the roof.");

    public static readonly Key<double> StrapSpacing = Keys.Required(
        "strap-spacing", new QuantityKind(Dimension.Length, 0.1, 5, "m"), "Distance between the two straps.");

    public static readonly Key<ChimneyState> State = Keys.Required("state", new WordKind<ChimneyState>(), "What the survey found.");

    public static readonly Key<Permission> Allowed = Keys.Required(
        "allowed", new WordKind<Permission>(), "Whether the local code allows an antenna on a chimney.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>survey</c>.</summary>
internal static class SurveyKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<SurfaceState> Roof = Keys.Default(
        "roof", new WordKind<SurfaceState>(), "The surface that somebody may step on.", "unknown");

    public static readonly Key<AsbestosState> Asbestos = Keys.Default(
        "asbestos", new WordKind<AsbestosState>(), "Old boards, coatings, roof sheets or flues that may hold asbestos or lead.", "unknown");

    public static readonly Key<BehindState> Behind = Keys.Default(
        "behind", new WordKind<BehindState>(), "Cables, pipes and flues behind the places that are drilled.", "unknown");

    public static readonly Key<BuriedState> Buried = Keys.Default(
        "buried", new WordKind<BuriedState>(), "Buried services where a rod is driven or a trench is dug.", "unknown");

    public static readonly Key<bool> OldMast = Keys.Default("old-mast", new YesNoKind(), "Whether an old mast stands there.", "no");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>mounting</c>.</summary>
internal static class MountingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<MountKind> Kind = Keys.Required("kind", new WordKind<MountKind>(), "How the antenna is held.");

    public static readonly Key<string> Part = Keys.Required(
        "part", new ReferenceKind(ReferenceTarget.Part, PartKind.Mount), "The bracket or base.");

    public static readonly Key<string> Mast = Keys.Optional(
        "mast", new ReferenceKind(ReferenceTarget.Part, PartKind.Mast), "The mast tube; absent only where the mount brings its own.");

    public static readonly Key<string> At = Keys.Optional(
        "at", new ReferenceKind(ReferenceTarget.Point),
        "The point of the house where the upper fixing is; height of work, height of the antenna and free length follow from one another by it.");

    public static readonly Key<double> MastLength = Keys.Optional(
        "mast-length", new QuantityKind(Dimension.Length, 0.2, 30, "m"),
        "Length of the mast tube; absent only where the mount brings its own and states its length.");

    public static readonly Key<double> FreeLength = Keys.Required(
        "free-length", new QuantityKind(Dimension.Length, 0.1, 20, "m"), "Length of mast above its upper support; guys do not count.");

    public static readonly Key<string> On = Keys.Required("on", new TextKind(120), "What it is fixed to.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Fixings = Keys.Required(
        "fixings", new ListKind<CheckedGroup>(FixingKeys.Group, 1, 20), "The fixings.");

    public static readonly Key<double> Spacing = Keys.Optional(
        "spacing", new QuantityKind(Dimension.Length, 0.05, 10, "m"),
        "Distance between the two supports of the mast; the held length when absent. A mount of one plate has none.");

    public static readonly Key<CheckedGroup> Plate = Keys.Optional(
        "plate", PlateKeys.Group, "Mount of one plate: how its holes lie, measured; the part's `holes` when absent.");

    public static readonly Key<CheckedGroup> Wind = Keys.Optional(
        "wind", WindKeys.Group, "The wind that the mast must stand; without it nothing is said about its strength.");

    public static readonly Key<CheckedGroup> Guys = Keys.Optional("guys", GuysKeys.Group, "Guys of the mast.");

    public static readonly Key<CheckedGroup> Ballast = Keys.Optional(
        "ballast", BallastKeys.Group, "Base and blocks of a mount that stands by its weight.");

    public static readonly Key<CheckedGroup> Chimney = Keys.Optional("chimney", ChimneyKeys.Group, "The stack that a mast is strapped to.");

    public static readonly Key<CheckedGroup> Survey = Keys.Optional(
        "survey", SurveyKeys.Group, "What the survey found that can hurt somebody.");

    public static readonly Key<double> RoofPitch = Keys.Optional(
        "roof-pitch", new QuantityKind(Dimension.Angle, 0, 80, "deg"), "Pitch of the roof, when somebody walks on it.");

    public static readonly Key<double> WorkHeight = Keys.Required(
        "work-height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height at which the ladder leans or the person stands.");

    public static readonly Key<double> LadderLoad = Keys.Optional(
        "ladder-load", new QuantityKind(Dimension.Mass, 30, 300, "kg"),
        "The heaviest person with clothes and tools and what is carried, for the rating of the ladder.");

    public static readonly Key<FallProtection> FallProtection = Keys.Optional(
        "fall-protection", new WordKind<FallProtection>(), "What keeps a person from falling off the edge.");

    public static readonly Key<bool> Existing = Keys.Default(
        "existing", new YesNoKind(),
        "Whether mount and mast stand there already; then they are not bought, fixed or raised, but inspected, and calculated as new ones.", "no");

    public static readonly Key<Access> Access = Keys.Required("access", new WordKind<Access>(), "How the place is reached.");

    public static GroupKind Group => Keys.Group;
}
