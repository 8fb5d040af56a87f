namespace InstallPacket.Plans.Siting.Ground;

/// <summary>What the plan knows of the ground.</summary>
/// <param name="Folder">Folder of the tiles.</param>
/// <param name="SpacingArcS">Spacing of the finest tiles used.</param>
/// <param name="SiteGroundM">Ground at the antenna by the tiles; null when they do not cover it.</param>
/// <param name="Tiles">The tiles used.</param>
/// <param name="Missing">Names of tiles that would be needed and are not there.</param>
public sealed record GroundPlan(string Folder, double SpacingArcS, double? SiteGroundM, IReadOnlyList<TilePlan> Tiles,
    IReadOnlyList<string> Missing);

/// <summary>A tile that was used.</summary>
/// <param name="Path">Path below the jobs folder.</param>
/// <param name="Sha256">Hash of the file.</param>
/// <param name="SpacingArcS">Spacing of its rows.</param>
/// <param name="Datum">Vertical datum.</param>
public sealed record TilePlan(string Path, string Sha256, double SpacingArcS, string Datum);

/// <summary>The skyline in one direction, seen from the antenna.</summary>
/// <param name="BearingTrueDeg">True bearing.</param>
/// <param name="AngleDeg">Angle above the horizontal; null when unknown.</param>
/// <param name="DistanceKm">How far the skyline lies; null when unknown or measured from the house.</param>
/// <param name="From"><c>tiles</c>, <c>tiles in part</c> (far tiles are missing), <c>measured</c> or <c>unknown</c>.</param>
public sealed record SkylinePoint(double BearingTrueDeg, double? AngleDeg, double? DistanceKm, string From);

/// <summary>The ground toward one transmitter site, for the path profile.</summary>
/// <param name="Site">The site.</param>
/// <param name="Number">Its number on the figures.</param>
/// <param name="Station">The station whose antenna height and frequency are drawn.</param>
/// <param name="From"><c>measured</c> or <c>tiles</c>.</param>
/// <param name="FrequencyMhz">Frequency of the Fresnel zone.</param>
/// <param name="DistanceKm">Length of the path.</param>
/// <param name="AntennaM">Height of the antenna above sea level, on the ground of the profile.</param>
/// <param name="TransmitterM">Height of the transmitting antenna above sea level.</param>
/// <param name="InSight">Whether no ground stands above the ray.</param>
/// <param name="ClearShare">Smallest clearance as a share of the first Fresnel radius; negative when the ground blocks.</param>
/// <param name="ClearAtKm">Where that is, from the antenna.</param>
/// <param name="Edges">Edges that govern.</param>
/// <param name="Points">The profile from the antenna outward, thinned for drawing: summits, edges and the tightest spot are kept.</param>
public sealed record PathPlan(
    string Site, int Number, string Station, string From, double FrequencyMhz, double DistanceKm, double AntennaM, double TransmitterM,
        bool InSight,
    double ClearShare, double ClearAtKm, IReadOnlyList<PathEdge> Edges, IReadOnlyList<PathPoint> Points)
{
    /// <summary>The point of the smallest clearance; it is one of the points.</summary>
    public required PathPoint Tightest { get; init; }

    /// <summary>Obstructions of the survey that stand in this direction, nearest first.</summary>
    public IReadOnlyList<string> Obstructions { get; init; } = [];
}

/// <summary>A point of a path profile. Heights are drawn over the chord between the two ends at sea level.</summary>
/// <param name="DistanceKm">From the antenna.</param>
/// <param name="GroundM">Ground above sea level.</param>
/// <param name="CurvedM">Ground with the bulge of the earth (4/3 radius).</param>
/// <param name="BulgeM">Bulge of the earth.</param>
/// <param name="RayM">Height of the straight ray.</param>
/// <param name="FresnelM">Radius of the first Fresnel zone.</param>
public sealed record PathPoint(double DistanceKm, double GroundM, double CurvedM, double BulgeM, double RayM, double FresnelM);

/// <summary>An edge that governs a path.</summary>
/// <param name="What">In words: which horizon.</param>
/// <param name="DistanceKm">From the antenna.</param>
/// <param name="GroundM">Ground above sea level.</param>
/// <param name="CurvedM">With the bulge of the earth.</param>
/// <param name="AngleDeg">Elevation angle from the end whose horizon it is.</param>
public sealed record PathEdge(string What, double DistanceKm, double GroundM, double CurvedM, double AngleDeg);

/// <summary>Where the sun stands at an hour of the day of work.</summary>
/// <param name="Clock">Clock time.</param>
/// <param name="AzimuthDeg">True bearing.</param>
/// <param name="ElevationDeg">Elevation, through air.</param>
/// <param name="FromAimDeg">Turn from the aim to the sun, clockwise positive.</param>
public sealed record SunHour(string Clock, double AzimuthDeg, double ElevationDeg, double FromAimDeg)
{
    /// <summary>The same moment in universal time.</summary>
    public double UtcH { get; init; }
}
