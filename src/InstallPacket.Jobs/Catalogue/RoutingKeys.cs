using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Catalogue;

/// <summary>The keys of <c>routing</c>.</summary>
internal static class RoutingKeys
{
    private static readonly GroupKind House = new(
        new("footprint", new ListKind(new PositionKind("right", "up"), 3, 40), "Corners of the house in plan, in order.", Required: true),
        new("eaves", new QuantityKind(Dimension.Length, 1, 60, "m"), "Height of the eaves above the ground.", Required: true),
        new("ridge", new QuantityKind(Dimension.Length, 1, 80, "m"), "Height of the ridge above the ground.", Required: true));

    private static readonly GroupKind Run = new(
        new("cable", new ReferenceKind(ReferenceTarget.Part, "cable"), "The cable.", Required: true),
        new("path", new ListKind(new ReferenceKind(ReferenceTarget.Point), 2, 60), "The points that it passes, from the antenna side to the receiver side.", Required: true),
        new("way", new WordKind("outside", "attic", "wall", "crawl-space", "conduit"), "How it is laid.", Required: true),
        new("drip-loops", new ListKind(new ReferenceKind(ReferenceTarget.Point), 0, 20), "Points before which the cable hangs in a drip loop."),
        new("drip-depth", new QuantityKind(Dimension.Length, 0.03, 0.6, "m"), "How far a drip loop hangs below its point.", Default: "150 mm"),
        new("service-loop", new QuantityKind(Dimension.Length, 0, 10, "m"), "Spare cable left coiled at the ends.", Default: "0 m"),
        new("existing", new WordKind("yes", "no"), "Whether the cable lies in the house already; then nothing is bought or cut for it.", Default: "no"),
        new("note", new TextKind(200), "A word to the crew about this run."));

    public static readonly GroupKind Section = new(
        new("plan-up", new BearingKind(), "The true bearing of the plan's upward axis: where the second number of a point grows.", Required: true),
        new("house", House, "The outline of the house, for the sketch."),
        new("points", new MapKind(new PositionKind("right", "up", "height"), "point", 2, 300),
            "Named points: distance to the right and up on the plan from its corner, and height above the ground.", Required: true),
        new("runs", new MapKind(Run, "run", 1, 100), "The cable runs.", Required: true));
}
