namespace InstallPacket.Plans.Siting;

/// <summary>Place, bearings, compass.</summary>
/// <param name="LatitudeDeg">Latitude, north positive.</param>
/// <param name="LongitudeDeg">Longitude, east positive.</param>
/// <param name="GroundM">Ground above sea level.</param>
/// <param name="AntennaHeightM">Antenna above ground.</param>
/// <param name="Compass">What a compass shows here on the day of work.</param>
/// <param name="Sites">Transmitter sites within reach, nearest first.</param>
/// <param name="LeftOut">How many stations of the list lie farther away than the job asks for.</param>
/// <param name="Landmark">A mark to aim by, or null.</param>
/// <param name="Obstructions">What stands in the way.</param>
public sealed record SitingPlan(
    double LatitudeDeg, double LongitudeDeg, double GroundM, double AntennaHeightM, CompassPlan Compass, IReadOnlyList<SitePlan> Sites,
        int LeftOut,
    LandmarkPlan? Landmark, IReadOnlyList<ObstructionPlan> Obstructions)
{
    /// <summary>The elevation tiles that the plan rests on; null when the job names none.</summary>
    public GroundPlan? Ground { get; init; }

    /// <summary>The skyline every two degrees; empty when nothing is known of it.</summary>
    public IReadOnlyList<SkylinePoint> Skyline { get; init; } = [];

    /// <summary>The ground toward sites of which it is known, nearest first; of many sites those with a wanted station and the nearest
    /// others.</summary>
    public IReadOnlyList<PathPlan> Paths { get; init; } = [];

    /// <summary>Names of the sites toward which nobody looked at the ground because there are so many.</summary>
    public IReadOnlyList<string> PathsLeftOut { get; init; } = [];

    /// <summary>Sites with a wanted station toward which the ground is not known as a whole.</summary>
    public IReadOnlyList<UnknownPath> PathsUnknown { get; init; } = [];
}

/// <summary>A site toward which the ground is not known.</summary>
/// <param name="Site">The site.</param>
/// <param name="Number">Its number on the figures.</param>
/// <param name="Known"><c>nothing</c>, or <c>in-part</c> where tiles end on the way.</param>
public sealed record UnknownPath(string Site, int Number, string Known);

/// <summary>What a compass shows.</summary>
/// <param name="Usable">Whether the packet prints compass readings.</param>
/// <param name="Why">When not: why.</param>
/// <param name="DeclinationDeg">Declination, east positive; null when no model covers the date.</param>
/// <param name="SigmaDeg">One-sigma uncertainty of the model.</param>
/// <param name="RateDegPerYear">Change a year.</param>
/// <param name="HorizontalNt">Horizontal field.</param>
/// <param name="Model">The model used.</param>
/// <param name="Zone">Usable, caution or blackout.</param>
public sealed record CompassPlan(
    bool Usable, string Why, double? DeclinationDeg, double? SigmaDeg, double? RateDegPerYear, double? HorizontalNt, string Model,
        string Zone);

/// <summary>A transmitter site.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Number">Its number on the figures.</param>
/// <param name="DistanceKm">Distance.</param>
/// <param name="BearingTrueDeg">True bearing from the antenna.</param>
/// <param name="BearingMagneticDeg">Compass reading, or null.</param>
/// <param name="CompassPoint">Sixteen-point name of the true bearing.</param>
/// <param name="ElevationDeg">Elevation angle of its antenna on the 4/3 earth, or null when its height is unknown.</param>
/// <param name="Stations">Identifiers of its stations.</param>
/// <param name="AnyWanted">Whether a wanted station stands there.</param>
public sealed record SitePlan(
    string Name, int Number, double DistanceKm, double BearingTrueDeg, double? BearingMagneticDeg, string CompassPoint,
        double? ElevationDeg,
    IReadOnlyList<string> Stations, bool AnyWanted);

/// <summary>A mark to aim by.</summary>
public sealed record LandmarkPlan(string What, double BearingTrueDeg);

/// <summary>Something in the way.</summary>
/// <param name="Name">Its name in the job.</param>
/// <param name="Kind">What it is.</param>
/// <param name="BearingTrueDeg">True bearing of its middle.</param>
/// <param name="WidthDeg">How wide it looks.</param>
/// <param name="DistanceM">Distance from the antenna.</param>
/// <param name="HeightM">Height of its top above the ground at the house.</param>
/// <param name="AngleDeg">Elevation angle of its top, seen from the antenna.</param>
public sealed record ObstructionPlan(string Name, ObstructionKind Kind, double BearingTrueDeg, double WidthDeg, double DistanceM,
    double HeightM, double AngleDeg)
{
    /// <summary>Trees: how deep the wood is along the path; null when the survey does not say.</summary>
    public double? DepthM { get; init; }

    /// <summary>Trees: whether they are calculated in leaf.</summary>
    public bool InLeaf { get; init; } = true;
}
