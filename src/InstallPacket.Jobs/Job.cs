using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs.Parts;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Jobs;

/// <summary>The units that a packet prints.</summary>
public enum UnitFamily
{
    /// <summary>Metres, kilometres, newton metres, degrees Celsius.</summary>
    Metric,

    /// <summary>Feet and inches, miles, pound-force inches, degrees Fahrenheit.</summary>
    Us,
}

/// <summary>What the author wrote, checked and with every reference resolved.</summary>
public sealed record Job
{
    /// <summary>The job's name: its folder.</summary>
    public required string Id { get; init; }

    /// <summary>Path of the job file below the jobs folder.</summary>
    public required string File { get; init; }

    /// <summary>One line.</summary>
    public required string Title { get; init; }

    /// <summary>Planned day of work.</summary>
    public required Sourced<DateOnly> Date { get; init; }

    /// <summary>Code family: <c>us</c> or <c>eu</c>.</summary>
    public required string Code { get; init; }

    /// <summary>Units to print.</summary>
    public required UnitFamily Units { get; init; }

    /// <summary>Paper of the PDF: <c>letter</c> or <c>a4</c>.</summary>
    public required string Paper { get; init; }

    /// <summary>Unit of levels: <c>dBuV</c>, <c>dBmV</c> or <c>dBm</c>.</summary>
    public required string LevelUnit { get; init; }

    /// <summary>BCP 47 tag of the language of the packet; null for that of the code family.</summary>
    public string? Language { get; init; }

    /// <summary>The firm.</summary>
    public required Party PreparedBy { get; init; }

    /// <summary>The customer.</summary>
    public required Party Customer { get; init; }

    /// <summary>Where.</summary>
    public required SitingSection Siting { get; init; }

    /// <summary>What to receive.</summary>
    public required ReceptionSection Reception { get; init; }

    /// <summary>The chain.</summary>
    public required CablingSection Cabling { get; init; }

    /// <summary>The route.</summary>
    public required RoutingSection Routing { get; init; }

    /// <summary>The mount.</summary>
    public required MountingSection Mounting { get; init; }

    /// <summary>The bonding.</summary>
    public required BondingSection Bonding { get; init; }

    /// <summary>Extra materials.</summary>
    public required IReadOnlyList<ExtraPart> Extras { get; init; }

    /// <summary>Stock, prices, crew.</summary>
    public MaterialsSection Materials { get; init; } = new(default);

    /// <summary>Parts of this job alone; they go before those of the library.</summary>
    public IReadOnlyList<Part> OwnParts { get; init; } = [];

    /// <summary>Words for the customer.</summary>
    public required HandoverSection Handover { get; init; }
}

/// <summary>A firm or a person.</summary>
public sealed record Party(string Name, string? Address, string? Phone, string? Note);

/// <summary>Where the antenna stands. Lengths are above ground unless said.</summary>
public sealed record SitingSection(
    Sourced<double> LatitudeDeg,
    Sourced<double> LongitudeDeg,
    Sourced<Length> Ground,
    Sourced<Length> AntennaHeight,
    string Surroundings,
    Landmark? Landmark,
    IReadOnlyList<Obstruction> Obstructions,
    IReadOnlyList<PowerLine>? PowerLines,
    SourceSpan At)
{
    /// <summary>Folder of elevation tiles below the jobs folder, or null.</summary>
    public Sourced<string>? Terrain { get; init; }

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
public sealed record Obstruction(string Name, string Kind, Bearing Bearing, double WidthDeg, Length Distance, Length Height, SourceSpan At)
{
    /// <summary>Trees: how deep the wood is along the path, or null.</summary>
    public Length? Depth { get; init; }

    /// <summary>Trees: whether they are reckoned in leaf.</summary>
    public bool InLeaf { get; init; } = true;
}

/// <summary>An overhead wire.</summary>
public sealed record PowerLine(string Name, string What, Length Distance, Length Height, SourceSpan At)
{
    /// <summary>Voltage [kV], or null.</summary>
    public double? VoltageKv { get; init; }
}

/// <summary>What to receive.</summary>
public sealed record ReceptionSection(
    IReadOnlyList<Station> Stations,
    IReadOnlyList<Sourced<string>> Want,
    Length Within,
    Sourced<Bearing>? Aim,
    Gain Reserve,
    Gain Multipath,
    SourceSpan At)
{
    /// <summary>Chance of reception that wanted stations should have [%].</summary>
    public double ChancePct { get; init; } = 90;

    /// <summary>Where <c>want</c> is written.</summary>
    public SourceSpan WantAt { get; init; } = At;
}

/// <summary>The chain.</summary>
public sealed record CablingSection(
    Part Receiver, Part FlyCable, double ColdC, double HotC, IReadOnlyList<Element> Chain, SourceSpan At)
{
    /// <summary>Other services on this tree of cables.</summary>
    public IReadOnlyList<Sourced<string>> AlsoCarries { get; init; } = [];

    /// <summary>Where <c>chain</c> is written.</summary>
    public SourceSpan ChainAt { get; init; } = At;
}

/// <summary>One part in its place in the chain.</summary>
/// <param name="Id">Its name in the job.</param>
/// <param name="Part">The part.</param>
/// <param name="Point">Point of the house.</param>
/// <param name="From">What feeds it; null for the antenna.</param>
/// <param name="FromPort">Output of the feeding element, counted from 1.</param>
/// <param name="Run">Run that brings the signal; null when it is screwed on.</param>
/// <param name="Setting">Gain to set on a variable amplifier.</param>
/// <param name="Serves">What an outlet serves.</param>
/// <param name="FlyLead">Lead from outlet to receiver.</param>
/// <param name="At">Where it is written.</param>
public sealed record Element(
    string Id, Part Part, string Point, string? From, int FromPort, string? Run, Gain? Setting, string? Serves, Length FlyLead, SourceSpan At)
{
    /// <summary>Where <c>from</c> is written.</summary>
    public SourceSpan FromAt { get; init; } = At;

    /// <summary>Where <c>run</c> is written.</summary>
    public SourceSpan RunAt { get; init; } = At;

    /// <summary>Combiner: what feeds its second input, or null.</summary>
    public string? Second { get; init; }

    /// <summary>Combiner: output of the element that feeds its second input, counted from 1.</summary>
    public int SecondPort { get; init; } = 1;

    /// <summary>Combiner: run to its second input, or null.</summary>
    public string? SecondRun { get; init; }

    /// <summary>Second antenna: where it points, or null.</summary>
    public Sourced<Bearing>? Aim { get; init; }

    /// <summary>Where <c>second</c> is written.</summary>
    public SourceSpan SecondAt { get; init; } = At;

    /// <summary>Where <c>setting</c> is written.</summary>
    public SourceSpan SettingAt { get; init; } = At;
}

/// <summary>The bonding.</summary>
public sealed record BondingSection(
    string Connection, Part Conductor, Length MastLength, Length ShieldLength, string By, string? Note, SourceSpan At)
{
    /// <summary>Where <c>conductor</c> is written.</summary>
    public SourceSpan ConductorAt { get; init; } = At;

    /// <summary>Where <c>shield-length</c> is written.</summary>
    public SourceSpan ShieldLengthAt { get; init; } = At;

    /// <summary>The conductor from the grounding block.</summary>
    public Part ShieldConductor { get; init; } = Conductor;

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
}

/// <summary>How a bonding conductor runs; what the survey does not say is null.</summary>
/// <param name="Bends">Changes of direction.</param>
/// <param name="BendRadius">Radius of the tightest bend.</param>
/// <param name="Coils">Turns of coiled slack.</param>
/// <param name="PowerDistance">Distance to the nearest power conductor.</param>
/// <param name="PowerCircuit">What that carries.</param>
public sealed record BondRoute(int? Bends, Sourced<Length>? BendRadius, Sourced<int>? Coils, Sourced<Length>? PowerDistance, string? PowerCircuit, SourceSpan At);

/// <summary>A rod of the mast.</summary>
/// <param name="Soil">Word for the ground, or null.</param>
/// <param name="ResistivityOhmM">Measured resistivity, or null.</param>
/// <param name="Jumper">What joins it to the electrode system of the building, or null.</param>
/// <param name="JumperLength">Its length.</param>
public sealed record EarthRod(
    Part Part, int Count, Length? Spacing, string? Soil, double? ResistivityOhmM, Part? Jumper, Length JumperLength, Part? Clamp, SourceSpan At)
{
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

/// <summary>A part that no other section asks for.</summary>
public sealed record ExtraPart(Part Part, int Count, string For);

/// <summary>Words for the customer.</summary>
public sealed record HandoverSection(string ExistingInternet, string? Words);
