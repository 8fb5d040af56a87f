using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Bonding;

/// <summary>The bonding.</summary>
public sealed record BondingSection(
    string Connection, BondingPart Conductor, Length MastLength, Length ShieldLength, string By, string? Note, SourceSpan At)
{
    /// <summary>Where <c>conductor</c> is written.</summary>
    public SourceSpan ConductorAt { get; init; } = At;

    /// <summary>Where <c>shield-length</c> is written.</summary>
    public SourceSpan ShieldLengthAt { get; init; } = At;

    /// <summary>The conductor from the grounding block.</summary>
    public BondingPart ShieldConductor { get; init; } = Conductor;

    /// <summary>Where it is written.</summary>
    public SourceSpan ShieldConductorAt { get; init; } = At;

    /// <summary>How the conductor from the mast runs, or null.</summary>
    public BondRoute? MastRoute { get; init; }

    /// <summary>How the conductor from the grounding block runs, or null.</summary>
    public BondRoute? ShieldRoute { get; init; }

    /// <summary>A rod for the mast of its own, or null.</summary>
    public EarthRod? Rod { get; init; }

    /// <summary>Where antenna and mast stand at the wall, or null.</summary>
    public WallZone? Zone { get; init; }

    /// <summary>What is known of lightning, or null.</summary>
    public LightningSurvey? Lightning { get; init; }

    /// <summary>Whether the conductor from the mast is there already.</summary>
    public bool MastExisting { get; init; }

    /// <summary>Whether the conductor from the grounding block is there already.</summary>
    public bool ShieldExisting { get; init; }
}

/// <summary>How a bonding conductor runs; what the survey does not say is null.</summary>
/// <param name="Bends">Changes of direction.</param>
/// <param name="BendRadius">Radius of the tightest bend.</param>
/// <param name="Coils">Turns of coiled slack.</param>
/// <param name="PowerDistance">Distance to the nearest power conductor.</param>
/// <param name="PowerCircuit">What that carries.</param>
public sealed record BondRoute(int? Bends, Sourced<Length>? BendRadius, Sourced<int>? Coils, Sourced<Length>? PowerDistance,
    PowerCircuit? PowerCircuit, SourceSpan At);

/// <summary>A rod of the mast.</summary>
/// <param name="Soil">Word for the ground, or null.</param>
/// <param name="ResistivityOhmM">Measured resistivity, or null.</param>
/// <param name="Jumper">What joins it to the electrode system of the building, or null.</param>
/// <param name="JumperLength">Its length.</param>
public sealed record EarthRod(
    BondingPart Part, int Count, Length? Spacing, string? Soil, double? ResistivityOhmM, BondingPart? Jumper, Length JumperLength,
        Part? Clamp, SourceSpan At)
{
    /// <summary>Whether rod, jumper and clamps are there already.</summary>
    public bool Existing { get; init; }

    /// <summary>Where the part of the jumper is written.</summary>
    public SourceSpan JumperAt { get; init; } = At;
}

/// <summary>Antenna and mast at the wall.</summary>
public sealed record WallZone(Length BelowEdge, Length Out, SourceSpan At);

/// <summary>Lightning at the place.</summary>
/// <param name="FlashesPerKm2Year">Flash density, or null.</param>
/// <param name="ThunderDays">Days with thunder, or null.</param>
/// <param name="Place">What stands around.</param>
public sealed record LightningSurvey(double? FlashesPerKm2Year, int? ThunderDays, string Place, SourceSpan At);
