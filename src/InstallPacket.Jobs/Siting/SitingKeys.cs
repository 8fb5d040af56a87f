using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Siting;

/// <summary>The keys of an obstruction.</summary>
internal static class ObstructionKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<ObstructionKind> Kind = Keys.Required("kind", new WordKind<ObstructionKind>(), "What it is.");

    public static readonly Key<Bearing> Bearing = Keys.Required("bearing", new BearingKind(), "Bearing of its middle from the antenna.");

    public static readonly Key<double> Width = Keys.Required(
        "width", new QuantityKind(Dimension.Angle, 0.1, 360, "deg"), "How wide it looks from the antenna.");

    public static readonly Key<double> Distance = Keys.Required(
        "distance", new QuantityKind(Dimension.Length, 1, 50000, "m"), "Distance from the antenna.");

    public static readonly Key<double> Height = Keys.Required(
        "height", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Height of its top above the ground at the house.");

    public static readonly Key<double> Depth = Keys.Optional(
        "depth", new QuantityKind(Dimension.Length, 0.5, 400, "m"),
        "Trees: how deep the wood is along the path; then the field may also come through them.");

    public static readonly Key<Leaf> Leaf = Keys.Default("leaf", new WordKind<Leaf>(), "Trees: the state to calculate with.", "in-leaf");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a power line.</summary>
internal static class PowerLineKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> What = Keys.Required("what", new TextKind(80), "Which line it is.");

    public static readonly Key<double> Distance = Keys.Required(
        "distance", new QuantityKind(Dimension.Length, 0, 1000, "m"), "Horizontal distance from the mast foot to the nearest wire.");

    public static readonly Key<double> Height = Keys.Required(
        "height", new QuantityKind(Dimension.Length, 0, 100, "m"), "Height of the nearest wire above the ground.");

    public static readonly Key<double> Voltage = Keys.Optional(
        "voltage", new QuantityKind(Dimension.Voltage, 10, 1000000, "V"), "Voltage of the line; up to 50 kV is taken when absent.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>landmark</c>.</summary>
internal static class LandmarkKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> What = Keys.Required("what", new TextKind(80), "Something that can be seen from the antenna.");

    public static readonly Key<Bearing> Bearing = Keys.Required("bearing", new BearingKind(), "Its bearing from the antenna.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a measured piece of the skyline.</summary>
internal static class HorizonArcKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<Bearing> Bearing = Keys.Required(
        "bearing", new BearingKind(), "Bearing of the middle of the arc from the antenna.");

    public static readonly Key<double> Width = Keys.Default(
        "width", new QuantityKind(Dimension.Angle, 1, 360, "deg"), "How wide the arc is.", "10 deg");

    public static readonly Key<double> Angle = Keys.Required(
        "angle", new QuantityKind(Dimension.Angle, -5, 60, "deg"), "Angle of the skyline above the horizontal, seen from the antenna.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a profile point.</summary>
internal static class ProfilePointKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Distance = Keys.Required(
        "distance", new QuantityKind(Dimension.Length, 0, 300000, "m"), "Distance from the antenna along the path.");

    public static readonly Key<double> Ground = Keys.Required(
        "ground", new QuantityKind(Dimension.Length, -430, 6000, "m"), "Height of the ground there above sea level.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a profile.</summary>
internal static class ProfileKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Station = Keys.Required(
        "station", new ReferenceKind(ReferenceTarget.Station), "A station at the far end; the profile serves all stations of its site.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Points = Keys.Required(
        "points", new ListKind<CheckedGroup>(ProfilePointKeys.Group, 3, 2000),
        "The ground from the antenna outward; the first point at the antenna, the last one at the transmitter.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>siting</c>.</summary>
internal static class SitingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Place = Keys.Optional(
        "place", new TextKind(60), "Latitude and longitude in one, for example `44.2900 N, 71.6100 W`; in place of the two.");

    public static readonly Key<double> Latitude = Keys.Required("latitude", new CoordinateKind(true), "Latitude of the antenna, WGS84.");

    public static readonly Key<double> Longitude = Keys.Required(
        "longitude", new CoordinateKind(false), "Longitude of the antenna, WGS84.");

    public static readonly Key<double> Ground = Keys.Optional(
        "ground", new QuantityKind(Dimension.Length, -430, 5000, "m"), "Height of the ground above sea level; that of the tiles when absent.");

    public static readonly Key<double> AntennaHeight = Keys.Required(
        "antenna-height", new QuantityKind(Dimension.Length, 1, 200, "m"), "Height of the antenna above the ground.");

    public static readonly Key<Surroundings> Surroundings = Keys.Required(
        "surroundings", new WordKind<Surroundings>(), "What stands around; chooses the man-made noise.");

    public static readonly Key<double> UtcOffset = Keys.Optional(
        "utc-offset", new QuantityKind(Dimension.Duration, -12, 14, "h"),
        "Clock time less universal time on the day of work, for the table of the sun; universal time is printed when absent.");

    // A row of the table of roof losses, which gives loss and spread.
    public static readonly Key<string> UnderRoof = Keys.Optional(
        "under-roof", new TableWordKind([.. AtticLoss.Roofs]), "The roof above an antenna in the attic; absent outdoors.");

    public static readonly Key<string> Terrain = Keys.Optional(
        "terrain", new PathKind(),
        "A folder of elevation tiles below `_shared/terrain` or the job's own folder; without it the curves judge the path blind.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Profiles = Keys.Optional(
        "profiles", new ListKind<CheckedGroup>(ProfileKeys.Group, 0, 20),
        "Measured profiles of the ground toward a site; they go before the tiles.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Horizon = Keys.Optional(
        "horizon", new ListKind<CheckedGroup>(HorizonArcKeys.Group, 0, 72), "Measured skyline; it goes before the skyline of the tiles.");

    public static readonly Key<CheckedGroup> Landmark = Keys.Optional(
        "landmark", LandmarkKeys.Group, "A mark to aim by when the compass is disturbed.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Obstructions = Keys.Optional(
        "obstructions", new MapKind<CheckedGroup>(ObstructionKeys.Group, "obstruction", 0, 60), "What the survey saw standing in the way.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> PowerLines = Keys.Optional(
        "power-lines", new MapKind<CheckedGroup>(PowerLineKeys.Group, "power line", 0, 20),
        "Overhead wires near the work. Say `{}` when the survey found none.");

    public static GroupKind Group => Keys.Group;
}
