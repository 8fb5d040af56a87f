using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Siting;

/// <summary>The keys of <c>siting</c>.</summary>
internal static class SitingKeys
{
    private static readonly GroupKind Obstruction = new(
        new("kind", new WordKind("trees", "building", "hill", "other"), "What it is.", Required: true),
        new("bearing", new BearingKind(), "Bearing of its middle from the antenna.", Required: true),
        new("width", new QuantityKind(Dimension.Angle, 0.1, 360, "deg"), "How wide it looks from the antenna.", Required: true),
        new("distance", new QuantityKind(Dimension.Length, 1, 50000, "m"), "Distance from the antenna.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Height of its top above the ground at the house.", Required: true),
        new("depth", new QuantityKind(Dimension.Length, 0.5, 400, "m"), "Trees: how deep the wood is along the path; then the field may also come through them."),
        new("leaf", new WordKind("in-leaf", "bare"), "Trees: the state to reckon with.", Default: "in-leaf"));

    private static readonly GroupKind PowerLine = new(
        new("what", new TextKind(80), "Which line it is.", Required: true),
        new("distance", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Horizontal distance from the mast foot to the nearest wire.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height of the nearest wire above the ground.", Required: true),
        new("voltage", new QuantityKind(Dimension.Voltage, 10, 1000000, "V"), "Voltage of the line; up to 50 kV is taken when absent."));

    private static readonly GroupKind Landmark = new(
        new("what", new TextKind(80), "Something that can be seen from the antenna.", Required: true),
        new("bearing", new BearingKind(), "Its bearing from the antenna.", Required: true));

    private static readonly GroupKind HorizonArc = new(
        new("bearing", new BearingKind(), "Bearing of the middle of the arc from the antenna.", Required: true),
        new("width", new QuantityKind(Dimension.Angle, 1, 360, "deg"), "How wide the arc is.", Default: "10 deg"),
        new("angle", new QuantityKind(Dimension.Angle, -5, 60, "deg"), "Angle of the skyline above the horizontal, seen from the antenna.", Required: true));

    private static readonly GroupKind ProfilePoint = new(
        new("distance", new QuantityKind(Dimension.Length, 0, 300000, "m"), "Distance from the antenna along the path.", Required: true),
        new("ground", new QuantityKind(Dimension.Length, -430, 6000, "m"), "Height of the ground there above sea level.", Required: true));

    private static readonly GroupKind Profile = new(
        new("station", new ReferenceKind(ReferenceTarget.Station), "A station at the far end; the profile serves all stations of its site.", Required: true),
        new("points", new ListKind(ProfilePoint, 3, 2000), "The ground from the antenna outward; the first point at the antenna, the last one at the transmitter.", Required: true));

    public static readonly GroupKind Section = new(
        new("latitude", new CoordinateKind(true), "Latitude of the antenna, WGS84.", Required: true),
        new("longitude", new CoordinateKind(false), "Longitude of the antenna, WGS84.", Required: true),
        new("ground", new QuantityKind(Dimension.Length, -430, 5000, "m"), "Height of the ground above sea level.", Required: true),
        new("antenna-height", new QuantityKind(Dimension.Length, 1, 200, "m"), "Height of the antenna above the ground.", Required: true),
        new("surroundings", new WordKind("city", "residential", "rural", "quiet-rural"),
            "What stands around; chooses the man-made noise.", Required: true),
        new("utc-offset", new QuantityKind(Dimension.Duration, -12, 14, "h"), "Clock time less universal time on the day of work, for the table of the sun; universal time is printed when absent."),
        new("under-roof", new WordKind([.. AtticLoss.Roofs]), "The roof above an antenna in the attic; absent outdoors."),
        new("terrain", new PathKind(), "A folder of elevation tiles below `_shared/terrain` or the job's own folder; without it the curves judge the path blind."),
        new("profiles", new ListKind(Profile, 0, 20), "Measured profiles of the ground toward a site; they go before the tiles."),
        new("horizon", new ListKind(HorizonArc, 0, 72), "Measured skyline; it goes before the skyline of the tiles."),
        new("landmark", Landmark, "A mark to aim by when the compass is disturbed."),
        new("obstructions", new MapKind(Obstruction, "obstruction", 0, 60), "What the survey saw standing in the way."),
        new("power-lines", new MapKind(PowerLine, "power line", 0, 20), "Overhead wires near the work. Say `{}` when the survey found none."));
}
