using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Routing;

/// <summary>The route.</summary>
/// <param name="PlanUpDeg">True bearing of the plan's upward axis [deg].</param>
/// <param name="House">Outline, or null.</param>
/// <param name="Points">Named points.</param>
/// <param name="Runs">Runs in the order of the file.</param>
/// <param name="At">Where it is written.</param>
public sealed record RoutingSection(
    double PlanUpDeg, House? House, IReadOnlyDictionary<string, HousePoint> Points, IReadOnlyList<Run> Runs, SourceSpan At)
{
    /// <summary>Points that are measured along a wall; they are among <see cref="Points"/> too.</summary>
    public IReadOnlyList<WallPoint> WallPoints { get; init; } = [];

    /// <summary>Places that nobody measured, with the room that they are in, or null.</summary>
    public IReadOnlyDictionary<string, string?> Unmeasured { get; init; } = new Dictionary<string, string?>(StringComparer.Ordinal);

    /// <summary>Where cable goes in or out.</summary>
    public IReadOnlyList<CableEntry> Entries { get; init; } = [];

    /// <summary>Conduits.</summary>
    public IReadOnlyList<Conduit> Conduits { get; init; } = [];
}

/// <summary>The outline of the house.</summary>
public sealed record House(IReadOnlyList<(double Right, double Up)> Footprint, Length Eaves, Length Ridge)
{
    /// <summary>Where <c>footprint</c> is written.</summary>
    public SourceSpan FootprintAt { get; init; }

    /// <summary>Where <c>ridge</c> is written.</summary>
    public SourceSpan RidgeAt { get; init; }

    /// <summary>Form of the roof, or null when unknown.</summary>
    public RoofForm? Roof { get; init; }

    /// <summary>Gable: which way the ridge runs, or null when unknown.</summary>
    public RidgeAxis? RidgeAlong { get; init; }

    /// <summary>Thickness of the outer walls, or null.</summary>
    public Length? Wall { get; init; }

    /// <summary>Storeys in the order of the file.</summary>
    public IReadOnlyList<Storey> Storeys { get; init; } = [];

    /// <summary>Rooms in the order of the file.</summary>
    public IReadOnlyList<Room> Rooms { get; init; } = [];
}

/// <summary>A storey.</summary>
public sealed record Storey(string Name, double FloorM);

/// <summary>A room; its corners are complete, also for a box.</summary>
public sealed record Room(string Name, Sourced<string> Storey, IReadOnlyList<(double Right, double Up)> Corners, SourceSpan At);

/// <summary>A point in the house [m]: right and up on the plan, height above ground.</summary>
public sealed record HousePoint(string Name, double RightM, double UpM, double HeightM, SourceSpan At);

/// <summary>A point on an outer wall.</summary>
/// <param name="Wall">Number of the wall, from 1.</param>
/// <param name="AlongM">Distance from its first corner.</param>
public sealed record WallPoint(string Name, Sourced<int> Wall, Sourced<double> AlongM, double HeightM, SourceSpan At);

/// <summary>A hole for cable.</summary>
/// <param name="Point">The point at its outer end.</param>
/// <param name="Through">What it goes through.</param>
/// <param name="Hole">Drill, or null.</param>
/// <param name="SlopeDeg">Fall to the outside.</param>
/// <param name="Thickness">What is drilled through, or null.</param>
public sealed record CableEntry(string Point, EntrySurface Through, Sourced<Length>? Hole, Sourced<double> SlopeDeg, Length? Thickness,
    SourceSpan At)
{
    /// <summary>Whether the hole is there already.</summary>
    public bool Existing { get; init; }
}

/// <summary>A conduit.</summary>
public sealed record Conduit(string Name, Sourced<Length> Inside, IReadOnlyList<string> Runs, SourceSpan At);

/// <summary>From a point of the path on the cable lies in another way.</summary>
public sealed record WayChange(string Point, CableWay Way, SourceSpan At);

/// <summary>A cable run.</summary>
public sealed record Run(
    string Id, CablePart Cable, IReadOnlyList<string> Path, CableWay Way, IReadOnlyList<string> DripLoops, Sourced<Length> DripDepth,
    Length ServiceLoop, string? Note, SourceSpan At)
{
    /// <summary>Whether the cable lies in the house already.</summary>
    public bool Existing { get; init; }

    /// <summary>Existing cable: whether it gets new connectors.</summary>
    public bool NewConnectors { get; init; }

    /// <summary>The length of the way as measured; null when its points give it.</summary>
    public Length? Given { get; init; }

    /// <summary>Where <c>path</c> is written.</summary>
    public SourceSpan PathAt { get; init; } = At;

    /// <summary>Where <c>drip-loops</c> is written.</summary>
    public SourceSpan DripLoopsAt { get; init; } = At;

    /// <summary>Changes of way along the path.</summary>
    public IReadOnlyList<WayChange> Ways { get; init; } = [];

    /// <summary>More cable.</summary>
    public Length Slack { get; init; }

    /// <summary>Dip of free spans, or null.</summary>
    public Length? Dip { get; init; }

    /// <summary>Whether a wire carries the free spans.</summary>
    public bool Messenger { get; init; }

    /// <summary>Least distance to power wiring, or null.</summary>
    public Sourced<Length>? FromPower { get; init; }

    /// <summary>Supports of upright drops.</summary>
    public int Supports { get; init; }
}
