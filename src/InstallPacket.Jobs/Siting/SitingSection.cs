using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Siting;

/// <summary>Where the antenna stands. Lengths are above ground unless said.</summary>
public sealed record SitingSection(
    Sourced<double> LatitudeDeg,
    Sourced<double> LongitudeDeg,
    Sourced<Length> Ground,
    Sourced<Length> AntennaHeight,
    Surroundings Surroundings,
    Landmark? Landmark,
    IReadOnlyList<Obstruction> Obstructions,
    IReadOnlyList<PowerLine>? PowerLines,
    SourceSpan At)
{
    /// <summary>Folder of elevation tiles below the jobs folder, or null.</summary>
    public Sourced<string>? Terrain { get; init; }

    /// <summary>Whether the job states the ground; otherwise the tiles give it.</summary>
    public bool GroundKnown { get; init; } = true;

    /// <summary>Measured profiles of the ground.</summary>
    public IReadOnlyList<MeasuredProfile> Profiles { get; init; } = [];

    /// <summary>Measured skyline.</summary>
    public IReadOnlyList<HorizonArc> Horizon { get; init; } = [];

    /// <summary>The roof above an antenna in the attic, or null outdoors.</summary>
    public Sourced<string>? UnderRoof { get; init; }

    /// <summary>Clock time less universal time, or null when the job does not say.</summary>
    public TimeSpan? UtcOffset { get; init; }
}

/// <summary>A measured profile of the ground, from the antenna outward.</summary>
/// <param name="Station">A station at the far end.</param>
/// <param name="Points">Distance from the antenna and ground above sea level, distances growing.</param>
public sealed record MeasuredProfile(string Station, IReadOnlyList<(double DistanceM, double GroundM)> Points, SourceSpan At);

/// <summary>A measured piece of the skyline.</summary>
/// <param name="Bearing">Bearing of its middle.</param>
/// <param name="WidthDeg">How wide it is.</param>
/// <param name="AngleDeg">Angle above the horizontal.</param>
public sealed record HorizonArc(Bearing Bearing, double WidthDeg, double AngleDeg, SourceSpan At);

/// <summary>A mark to aim by.</summary>
public sealed record Landmark(string What, Bearing Bearing);

/// <summary>Something in the way.</summary>
/// <param name="Height">Top above the ground at the house.</param>
public sealed record Obstruction(string Name, ObstructionKind Kind, Bearing Bearing, double WidthDeg, Length Distance, Length Height,
    SourceSpan At)
{
    /// <summary>Trees: how deep the wood is along the path, or null.</summary>
    public Length? Depth { get; init; }

    /// <summary>Trees: whether they are calculated in leaf.</summary>
    public bool InLeaf { get; init; } = true;
}

/// <summary>An overhead wire.</summary>
public sealed record PowerLine(string Name, string What, Length Distance, Length Height, SourceSpan At)
{
    /// <summary>Voltage [kV], or null.</summary>
    public double? VoltageKv { get; init; }
}
