using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Routing;

/// <summary>The keys of <c>routing</c>.</summary>
internal static class RoutingKeys
{
    private static readonly WordKind Way = new("outside", "attic", "wall", "crawl-space", "conduit", "buried", "span");

    private static readonly GroupKind Storey = new(
        new Key("floor", new QuantityKind(Dimension.Length, -10, 60, "m"), "Height of its floor above the ground.", Required: true));

    private static readonly GroupKind Room = new(
        new("storey", new TextKind(40), "The storey that it is on.", Required: true),
        new("corners", new ListKind(new PositionKind("right", "up"), 2, 40), "Two opposite corners of a box, or all corners in order.", Required: true));

    private static readonly GroupKind House = new(
        new("footprint", new ListKind(new PositionKind("right", "up"), 3, 40), "Corners of the house in plan, in order.", Required: true),
        new("eaves", new QuantityKind(Dimension.Length, 1, 60, "m"), "Height of the eaves above the ground.", Required: true),
        new("ridge", new QuantityKind(Dimension.Length, 1, 80, "m"), "Height of the ridge above the ground.", Required: true),
        new("roof", new WordKind("flat", "gable", "hip"), "Its form, over the box around the footprint. Without it nothing between eaves and ridge is checked."),
        new("ridge-along", new WordKind("right", "up"), "Which way the ridge of a gable runs on the plan."),
        new("wall", new QuantityKind(Dimension.Length, 0.02, 2, "m"), "Thickness of the outer walls, for the holes through them."),
        new("storeys", new MapKind(Storey, "storey", 0, 30), "The storeys, from below."),
        new("rooms", new MapKind(Room, "room", 0, 100), "The rooms that matter: the packet says which one an outlet is in."));

    private static readonly GroupKind WallPoint = new(
        new("wall", new IntegerKind(1, 40), "The wall: number 1 runs from the first corner of the footprint to the second.", Required: true),
        new("along", new QuantityKind(Dimension.Length, 0, 500, "m"), "Distance along that wall from the corner where it starts.", Required: true),
        new("height", new QuantityKind(Dimension.Length, -10, 80, "m"), "Height above the ground.", Required: true));

    private static readonly GroupKind Entry = new(
        new("through", new WordKind("wall", "roof"), "What the cable goes through.", Required: true),
        new("hole", new QuantityKind(Dimension.Length, 0.004, 0.1, "m"), "Drill of each hole, one for each cable; the cable and 3 mm when absent."),
        new("slope", new QuantityKind(Dimension.Angle, -45, 45, "deg"), "How steeply the hole falls to the outside.", Default: "5 deg"),
        new("thickness", new QuantityKind(Dimension.Length, 0.005, 2, "m"), "What is drilled through, at right angles; `wall` of the house when absent."));

    private static readonly GroupKind Conduit = new(
        new("inside", new QuantityKind(Dimension.Length, 0.005, 0.3, "m"), "Inside diameter.", Required: true),
        new("runs", new ListKind(new ReferenceKind(ReferenceTarget.Run), 1, 40), "The runs that share it.", Required: true));

    private static readonly GroupKind Run = new(
        new("cable", new ReferenceKind(ReferenceTarget.Part, "cable"), "The cable.", Required: true),
        new("path", new ListKind(new ReferenceKind(ReferenceTarget.Point), 2, 60), "The points that it passes, from the antenna side to the receiver side.", Required: true),
        new("way", Way, "How it is laid; `span` hangs free between its points.", Required: true),
        new("ways", new MapKind(Way, "point", 0, 20), "Where the way changes: from that point of the path on it lies so."),
        new("drip-loops", new ListKind(new ReferenceKind(ReferenceTarget.Point), 0, 20), "Points before which the cable hangs in a drip loop."),
        new("drip-depth", new QuantityKind(Dimension.Length, 0.03, 0.6, "m"), "How far a drip loop hangs below its point.", Default: "150 mm"),
        new("service-loop", new QuantityKind(Dimension.Length, 0, 10, "m"), "Spare cable left coiled at the ends.", Default: "0 m"),
        new("slack", new QuantityKind(Dimension.Length, 0, 20, "m"), "More cable, for what the geometry does not show.", Default: "0 m"),
        new("dip", new QuantityKind(Dimension.Length, 0, 5, "m"), "Free spans: how far the cable hangs through in the middle."),
        new("messenger", new WordKind("yes", "no"), "Free spans: whether a wire carries the cable.", Default: "no"),
        new("from-power", new QuantityKind(Dimension.Length, 0, 100, "m"), "Least distance to power wiring along the run, as surveyed."),
        new("supports", new IntegerKind(0, 100), "Upright drops in wall or conduit: how many supports hold the cable on the way.", Default: "0"),
        new("existing", new WordKind("yes", "no"), "Whether the cable lies in the house already; then nothing is bought or cut for it.", Default: "no"),
        new("note", new TextKind(200), "A word to the crew about this run."));

    public static readonly GroupKind Section = new(
        new("plan-up", new BearingKind(), "The true bearing of the plan's upward axis: where the second number of a point grows.", Required: true),
        new("house", House, "The outline of the house, for the sketch and for the checks of the route."),
        new("points", new MapKind(new PositionKind("right", "up", "height"), "point", 2, 300),
            "Named points: distance to the right and up on the plan from its corner, and height above the ground.", Required: true),
        new("wall-points", new MapKind(WallPoint, "point", 0, 300), "More named points, measured along an outer wall of the house."),
        new("entries", new MapKind(Entry, "point", 0, 40), "Points where cable goes in or out of the house."),
        new("conduits", new MapKind(Conduit, "conduit", 0, 40), "Conduits and how much they hold."),
        new("runs", new MapKind(Run, "run", 1, 100), "The cable runs.", Required: true));
}
