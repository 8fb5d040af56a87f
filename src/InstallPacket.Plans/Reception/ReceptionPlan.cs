namespace InstallPacket.Plans.Reception;

/// <summary>Stations, field strength, aim.</summary>
/// <param name="Aim">Where the antenna points.</param>
/// <param name="AntennaPart">Part name of the antenna.</param>
/// <param name="AntennaName">What the antenna is.</param>
/// <param name="AntennaId">Its name in the chain.</param>
/// <param name="ReserveDb">Margin that wanted channels should keep.</param>
/// <param name="MultipathDb">Allowance for reflections.</param>
/// <param name="Polarisation">How the elements of the antenna lie.</param>
/// <param name="Stations">Stations within reach, wanted first, then by RF channel.</param>
public sealed record ReceptionPlan(
    AimPlan Aim, string AntennaPart, string AntennaName, string AntennaId, double ReserveDb, double MultipathDb, Polarisation Polarisation,
    IReadOnlyList<StationPlan> Stations)
{
    private const string CurvesModel = "curves";

    /// <summary>Share of the time for which a channel must come in [%].</summary>
    public double ServedPct { get; init; }

    /// <summary>Chance that is demanded of wanted stations [%].</summary>
    public double DemandedPct { get; init; }

    /// <summary>The propagation model that the code family plans with where the ground is known.</summary>
    public string PlanningModel { get; init; } = "";

    /// <summary>Models that the plan uses for at least one calculated station.</summary>
    public IReadOnlyList<string> Models { get; init; } = [];

    /// <summary>The model that plans stations toward which the ground is known; empty when no station is planned by one.</summary>
    public string GroundModel => Models.FirstOrDefault(m => m != CurvesModel) ?? "";

    /// <summary>Where the curves decide: <c>nowhere</c>, <c>in-part</c> or <c>alone</c>.</summary>
    public string Curves => !Models.Contains(CurvesModel) ? "nowhere" : Models.Count > 1 ? "in-part" : "alone";

    /// <summary>Whether any calculated station has a directional pattern.</summary>
    public bool AnyPattern { get; init; }

    /// <summary>The sun on the day of work, to check the aim.</summary>
    public IReadOnlyList<SunHour> Sun { get; init; } = [];

    /// <summary>Further antennas, each with its aim and the wanted stations that it serves.</summary>
    public IReadOnlyList<AntennaAim> MoreAntennas { get; init; } = [];

    /// <summary>The wanted stations that the plan could calculate with.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public IEnumerable<StationPlan> Wanted => Stations.Where(s => s.Wanted && s.Calculated);
}

/// <summary>One station as it arrives at the antenna.</summary>
/// <param name="Id">Its name in the list.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="Site">Its site.</param>
/// <param name="Wanted">Whether the job wants it.</param>
/// <param name="Calculated">Whether level and margin could be computed.</param>
/// <param name="WhyNot">When not: why, by its id in <c>pages.workings.why-not</c> of the words.</param>
/// <param name="System">Transmission system.</param>
/// <param name="Mode">Mode.</param>
/// <param name="RfChannel">RF channel.</param>
/// <param name="ShowsAs">The number that the viewer sees.</param>
/// <param name="Polarisation">Polarisation.</param>
/// <param name="FrequencyMhz">Centre of the channel.</param>
/// <param name="DistanceKm">Distance.</param>
/// <param name="BearingTrueDeg">True bearing.</param>
/// <param name="OffAimDeg">Turn from the aim to the station, clockwise positive.</param>
/// <param name="Budget">The computed figures; null when not calculated.</param>
public sealed record StationPlan(
    string Id, string Name, string Site, bool Wanted, bool Calculated, string WhyNot, string System, string Mode, int RfChannel,
        string ShowsAs,
    Polarisation Polarisation, double FrequencyMhz, double DistanceKm, double BearingTrueDeg, double OffAimDeg, StationBudget? Budget);

/// <summary>From field strength to the antenna terminals.</summary>
/// <param name="FreeSpaceDbuvM">Field in free space.</param>
/// <param name="Estimates">What each propagation model says; the curves first.</param>
/// <param name="PlannedBy">The model that the plan uses.</param>
/// <param name="ObstructionLossDb">Loss over the governing obstruction of the survey.</param>
/// <param name="Obstruction">Its name; empty when none.</param>
/// <param name="FieldDbuvM">Field at the antenna for the demanded share of the time.</param>
/// <param name="MedianDbuvM">Field at the antenna for half of the time.</param>
/// <param name="Spread">How sure that is.</param>
/// <param name="GainDbd">Antenna gain toward the station.</param>
/// <param name="LevelDbm">Power at the antenna terminals.</param>
/// <param name="ThermalNoiseDbm">kTB at 290 K.</param>
/// <param name="ExternalNoiseDb">Noise factor of the surroundings.</param>
/// <param name="RequiredCnDb">Required C/N with the allowance for reflections.</param>
/// <param name="RequiredCnProvenance">How the threshold is known.</param>
public sealed record StationBudget(
    double FreeSpaceDbuvM, IReadOnlyList<FieldEstimate> Estimates, string PlannedBy, double ObstructionLossDb, string Obstruction,
        double FieldDbuvM, double MedianDbuvM,
    SpreadPlan Spread, double GainDbd, double LevelDbm, double ThermalNoiseDbm, double ExternalNoiseDb, double RequiredCnDb,
        string RequiredCnProvenance)
{
    /// <summary>Field exceeded for the rest of the time: what overloads and disturbs is judged by it.</summary>
    public double StrongDbuvM { get; init; }

    /// <summary>Power at the antenna terminals for the rest of the time.</summary>
    public double StrongDbm { get; init; }

    /// <summary>How the ground toward the station is known: the whole <c>path</c>, the <c>skyline</c> before the house alone, or <c>nothing</c>.</summary>
    public string Ground { get; init; } = "path";

    /// <summary>What the roof above the antenna costs.</summary>
    public double RoofLossDb { get; init; }

    /// <summary>What the plane of polarisation costs; it is in the gain already.</summary>
    public double PolarisationLossDb { get; init; }

    /// <summary>Noise temperature of the surroundings as the antenna sees them.</summary>
    public double AntennaNoiseK { get; init; }

    /// <summary>All disturbers together, counted as noise at the antenna terminals; null when there is none.</summary>
    public double? InterferenceDbm { get; init; }

    /// <summary>Stations on the same or near channels, worst first; only of wanted stations.</summary>
    public IReadOnlyList<DisturberPlan> Disturbers { get; init; } = [];

    /// <summary>Effective radiated power toward the house.</summary>
    public double ErpKw { get; init; }

    /// <summary>Gain of the transmitter's pattern toward the house, relative to its strongest direction; null when it has no
    /// pattern.</summary>
    public double? PatternDb { get; init; }
}

/// <summary>A station on the same or on a near channel.</summary>
/// <param name="Station">The station.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="RfChannel">RF channel.</param>
/// <param name="OffsetChannels">How many channels it lies above the wanted one.</param>
/// <param name="RatioDb">Wanted over other at the antenna terminals: the wanted for 90 %, the other for 10 % of the time.</param>
/// <param name="LimitDb">Ratio at which nothing of the margin is left; null when no document tells.</param>
/// <param name="LimitSource">How the limit is known.</param>
public sealed record DisturberPlan(string Station, string Name, int RfChannel, int OffsetChannels, double RatioDb, double? LimitDb,
    string LimitSource)
{
    /// <summary>Antenna gain toward it, its polarisation counted in.</summary>
    public double GainDbd { get; init; }
}
