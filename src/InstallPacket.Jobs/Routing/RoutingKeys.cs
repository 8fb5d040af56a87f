using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Routing;

/// <summary>The keys of a storey.</summary>
internal static class StoreyKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Floor = Keys.Required(
        "floor", new QuantityKind(Dimension.Length, -10, 60, "m"), "Height of its floor above the ground.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a room.</summary>
internal static class RoomKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Storey = Keys.Required("storey", new TextKind(40), "The storey that it is on.");

    public static readonly Key<IReadOnlyList<Sourced<double[]>>> Corners = Keys.Required(
        "corners", new ListKind<double[]>(new PositionKind("right", "up"), 2, 40),
        "Two opposite corners of a box, or all corners in order.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a place that nobody measured.</summary>
internal static class PlaceKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Room = Keys.Optional("room", new TextKind(60), "The room or the part of the house that it is in.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>house</c>.</summary>
internal static class HouseKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<IReadOnlyList<Sourced<double[]>>> Footprint = Keys.Required(
        "footprint", new ListKind<double[]>(new PositionKind("right", "up"), 3, 40), "Corners of the house in plan, in order.");

    public static readonly Key<double> Width = Keys.Optional(
        "width", new QuantityKind(Dimension.Length, 1, 200, "m"), "Length of the front; with `depth` in place of `footprint`, for a house that is a box.");

    public static readonly Key<double> BoxDepth = Keys.Optional(
        "depth", new QuantityKind(Dimension.Length, 1, 200, "m"), "How deep the box is behind its front.");

    public static readonly Key<Bearing> Front = Keys.Optional(
        "front", new BearingKind(), "The bearing to which the front looks; in place of `plan-up`: the plan has the front below.");

    public static readonly Key<double> Eaves = Keys.Required(
        "eaves", new QuantityKind(Dimension.Length, 1, 60, "m"), "Height of the eaves above the ground.");

    public static readonly Key<double> Ridge = Keys.Required(
        "ridge", new QuantityKind(Dimension.Length, 1, 80, "m"), "Height of the ridge above the ground.");

    public static readonly Key<RoofForm> Roof = Keys.Optional(
        "roof", new WordKind<RoofForm>(),
        "Its form, over the box around the footprint. Without it nothing between eaves and ridge is checked.");

    public static readonly Key<RidgeAxis> RidgeAlong = Keys.Optional(
        "ridge-along", new WordKind<RidgeAxis>(), "Which way the ridge of a gable runs on the plan.");

    public static readonly Key<double> Wall = Keys.Optional(
        "wall", new QuantityKind(Dimension.Length, 0.02, 2, "m"), "Thickness of the outer walls, for the holes through them.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Storeys = Keys.Optional(
        "storeys", new MapKind<CheckedGroup>(StoreyKeys.Group, "storey", 0, 30), "The storeys, from below.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Rooms = Keys.Optional(
        "rooms", new MapKind<CheckedGroup>(RoomKeys.Group, "room", 0, 100),
        "The rooms that matter: the packet says which one an outlet is in.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a wall point.</summary>
internal static class WallPointKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<int> Wall = Keys.Required(
        "wall", new IntegerKind(1, 40), "The wall: number 1 runs from the first corner of the footprint to the second.");

    public static readonly Key<double> Along = Keys.Required(
        "along", new QuantityKind(Dimension.Length, 0, 500, "m"), "Distance along that wall from the corner where it starts.");

    public static readonly Key<double> Height = Keys.Required(
        "height", new QuantityKind(Dimension.Length, -10, 80, "m"), "Height above the ground.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of an entry of cable.</summary>
internal static class EntryKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<EntrySurface> Through = Keys.Required(
        "through", new WordKind<EntrySurface>(), "What the cable goes through.");

    public static readonly Key<double> Hole = Keys.Optional(
        "hole", new QuantityKind(Dimension.Length, 0.004, 0.1, "m"),
        "Drill of each hole, one for each cable; the cable and 3 mm when absent.");

    public static readonly Key<double> Slope = Keys.Default(
        "slope", new QuantityKind(Dimension.Angle, -45, 45, "deg"), "How steeply the hole falls to the outside.", "5 deg");

    public static readonly Key<bool> Existing = Keys.Default(
        "existing", new YesNoKind(), "Whether the hole is there already; then nothing is drilled.", "no");

    public static readonly Key<double> Thickness = Keys.Optional(
        "thickness", new QuantityKind(Dimension.Length, 0.005, 2, "m"),
        "What is drilled through, at right angles; `wall` of the house when absent.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a conduit.</summary>
internal static class ConduitKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Inside = Keys.Required(
        "inside", new QuantityKind(Dimension.Length, 0.005, 0.3, "m"), "Inside diameter.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> Runs = Keys.Required(
        "runs", new ListKind<string>(new ReferenceKind(ReferenceTarget.Run), 1, 40), "The runs that share it.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a run.</summary>
internal static class RunKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Cable = Keys.Required(
        "cable", new ReferenceKind(ReferenceTarget.Part, PartKind.Cable), "The cable.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> Path = Keys.Required(
        "path", new ListKind<string>(new ReferenceKind(ReferenceTarget.Point), 2, 60),
        "The points that it passes, from the antenna side to the receiver side. With `length` it may be left out: then from part to part.");

    public static readonly Key<double> Length = Keys.Optional(
        "length", new QuantityKind(Dimension.Length, 0.05, 500, "m"),
        "How long the way is, as measured along it, where nobody needs its points; goes before what the points would give.");

    public static readonly Key<CableWay> Way = Keys.Required(
        "way", new WordKind<CableWay>(), "How it is laid; `span` hangs free between its points. An existing run that does not say lies in the wall.");

    public static readonly Key<IReadOnlyList<Entry<CableWay>>> Ways = Keys.Optional(
        "ways", new MapKind<CableWay>(new WordKind<CableWay>(), "point", 0, 20),
        "Where the way changes: from that point of the path on it lies so.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> DripLoops = Keys.Optional(
        "drip-loops", new ListKind<string>(new ReferenceKind(ReferenceTarget.Point), 0, 20),
        "Points before which the cable hangs in a drip loop.");

    public static readonly Key<double> DripDepth = Keys.Default(
        "drip-depth", new QuantityKind(Dimension.Length, 0.03, 0.6, "m"), "How far a drip loop hangs below its point.", "150 mm");

    public static readonly Key<double> ServiceLoop = Keys.Default(
        "service-loop", new QuantityKind(Dimension.Length, 0, 10, "m"), "Spare cable left coiled at the ends.", "0 m");

    public static readonly Key<double> Slack = Keys.Default(
        "slack", new QuantityKind(Dimension.Length, 0, 20, "m"), "More cable, for what the geometry does not show.", "0 m");

    public static readonly Key<double> Dip = Keys.Optional(
        "dip", new QuantityKind(Dimension.Length, 0, 5, "m"), "Free spans: how far the cable hangs through in the middle.");

    public static readonly Key<bool> Messenger = Keys.Default(
        "messenger", new YesNoKind(), "Free spans: whether a wire carries the cable.", "no");

    public static readonly Key<double> FromPower = Keys.Optional(
        "from-power", new QuantityKind(Dimension.Length, 0, 100, "m"), "Least distance to power wiring along the run, as surveyed.");

    public static readonly Key<int> Supports = Keys.Default(
        "supports", new IntegerKind(0, 100), "Upright drops in wall or conduit: how many supports hold the cable on the way.", "0");

    public static readonly Key<bool> Existing = Keys.Default(
        "existing", new YesNoKind(), "Whether the cable lies in the house already; then nothing is bought or cut for it.", "no");

    public static readonly Key<bool> NewConnectors = Keys.Default(
        "new-connectors", new YesNoKind(), "Existing cable: whether it gets new connectors at both ends.", "no");

    public static readonly Key<string> Note = Keys.Optional("note", new TextKind(200), "A word to the crew about this run.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>routing</c>.</summary>
internal static class RoutingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<Bearing> PlanUp = Keys.Required(
        "plan-up", new BearingKind(), "The true bearing of the plan's upward axis: where the second number of a point grows.");

    public static readonly Key<CheckedGroup> House = Keys.Optional(
        "house", HouseKeys.Group, "The outline of the house, for the sketch and for the checks of the route.");

    public static readonly Key<IReadOnlyList<Entry<double[]>>> Points = Keys.Optional(
        "points", new MapKind<double[]>(new PositionKind("right", "up", "height"), "point", 0, 300),
        "Named points: distance to the right and up on the plan from its corner, and height above the ground.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Places = Keys.Optional(
        "places", new MapKind<CheckedGroup>(new ShortKind<CheckedGroup>(PlaceKeys.Group, new TextKind(160)), "point", 0, 300),
        "Places in words: on a wall, as `west wall, 6 ft from the south corner, 5 ft up`, `north gable, at the ridge` or "
        + "`wall 3, 6 ft from its left end, 5 ft up`; or a room, where nobody measured.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> WallPoints = Keys.Optional(
        "wall-points", new MapKind<CheckedGroup>(WallPointKeys.Group, "point", 0, 300),
        "More named points, measured along an outer wall of the house.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Entries = Keys.Optional(
        "entries", new MapKind<CheckedGroup>(EntryKeys.Group, "point", 0, 40), "Points where cable goes in or out of the house.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Conduits = Keys.Optional(
        "conduits", new MapKind<CheckedGroup>(ConduitKeys.Group, "conduit", 0, 40), "Conduits and how much they hold.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Runs = Keys.Required(
        "runs", new MapKind<CheckedGroup>(RunKeys.Group, "run", 1, 100), "The cable runs.");

    public static GroupKind Group => Keys.Group;
}
