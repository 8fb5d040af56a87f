using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Catalogue;

/// <summary>The keys of <c>siting</c>.</summary>
internal static class SitingKeys
{
    private static readonly GroupKind Obstruction = new(
        new("kind", new WordKind("trees", "building", "hill", "other"), "What it is.", Required: true),
        new("bearing", new BearingKind(), "Bearing of its middle from the antenna.", Required: true),
        new("width", new QuantityKind(Dimension.Angle, 0.1, 360, "deg"), "How wide it looks from the antenna.", Required: true),
        new("distance", new QuantityKind(Dimension.Length, 1, 50000, "m"), "Distance from the antenna.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Height of its top above the ground at the house.", Required: true));

    private static readonly GroupKind PowerLine = new(
        new("what", new TextKind(80), "Which line it is.", Required: true),
        new("distance", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Horizontal distance from the mast foot to the nearest wire.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height of the nearest wire above the ground.", Required: true));

    private static readonly GroupKind Landmark = new(
        new("what", new TextKind(80), "Something that can be seen from the antenna.", Required: true),
        new("bearing", new BearingKind(), "Its bearing from the antenna.", Required: true));

    public static readonly GroupKind Section = new(
        new("latitude", new CoordinateKind(true), "Latitude of the antenna, WGS84.", Required: true),
        new("longitude", new CoordinateKind(false), "Longitude of the antenna, WGS84.", Required: true),
        new("ground", new QuantityKind(Dimension.Length, -430, 5000, "m"), "Height of the ground above sea level.", Required: true),
        new("antenna-height", new QuantityKind(Dimension.Length, 1, 200, "m"), "Height of the antenna above the ground.", Required: true),
        new("surroundings", new WordKind("city", "residential", "rural", "quiet-rural"),
            "What stands around; chooses the man-made noise.", Required: true),
        new("landmark", Landmark, "A mark to aim by when the compass is disturbed."),
        new("obstructions", new MapKind(Obstruction, "obstruction", 0, 60), "What the survey saw standing in the way."),
        new("power-lines", new MapKind(PowerLine, "power line", 0, 20), "Overhead wires near the work. Say `{}` when the survey found none."));
}
