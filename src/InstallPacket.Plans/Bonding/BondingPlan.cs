namespace InstallPacket.Plans.Bonding;

/// <summary>Bonding conductors and rules.</summary>
public sealed record BondingPlan(
    string Connection, string Conductor, string ConductorPart, double MastLengthM, double ShieldLengthM, string By, string Note,
        string BlockElement,
    IReadOnlyList<CodeRule> Rules)
{
    /// <summary>The conductor of the shield.</summary>
    public required string ShieldConductor { get; init; }

    /// <summary>Its part.</summary>
    public required string ShieldConductorPart { get; init; }

    /// <summary>Size of the mast's conductor.</summary>
    public required BondSize MastSize { get; init; }

    /// <summary>Size of the shield's conductor.</summary>
    public required BondSize ShieldSize { get; init; }

    /// <summary>Each size beside the least one of the code family.</summary>
    public required IReadOnlyList<BondSizePlan> Sizes { get; init; }

    /// <summary>Each length of a rod beside the least one.</summary>
    public required IReadOnlyList<BondLengthPlan> Lengths { get; init; }

    /// <summary>How the conductors run.</summary>
    public required IReadOnlyList<BondRoutePlan> Routes { get; init; }

    /// <summary>Whether the conductor from the mast is there already.</summary>
    public bool MastExisting { get; init; }

    /// <summary>Whether the conductor from the grounding block is there already.</summary>
    public bool ShieldExisting { get; init; }

    /// <summary>Whether the rod, its jumper and its clamps are there already.</summary>
    public bool RodExisting { get; init; }

    /// <summary>Existing conductor from the mast: its resistance from end to end at 20 C; null when its size or metal is unknown.</summary>
    public double? MastOhm { get; init; }

    /// <summary>The same of the conductor from the grounding block.</summary>
    public double? ShieldOhm { get; init; }

    /// <summary>The mast's own rod, or null.</summary>
    public RodPlan? Rod { get; init; }

    /// <summary>What a surge does along the mast's conductor; null when its size is unknown.</summary>
    public BondSurgePlan? Surge { get; init; }

    /// <summary>Flashes to be expected; null when the job does not say enough.</summary>
    public StrikePlan? Strikes { get; init; }

    /// <summary>The zone at the wall; null when the job or the family has none.</summary>
    public ZonePlan? Zone { get; init; }

    /// <summary>Whether the mast needs a conductor.</summary>
    public bool MastNeeded => Zone is not { Exempt: true };
}

/// <summary>A conductor beside the least size.</summary>
/// <param name="Use">Which conductor, in words.</param>
/// <param name="Planned">Its size.</param>
/// <param name="Least">The least size.</param>
/// <param name="UseShare">Least over planned; above 1 is a stop.</param>
public sealed record BondSizePlan(string Use, BondSize Planned, BondSize Least, double LeastMm2, double HasMm2, double UseShare,
    string Document, string Edition, string Provenance);

/// <summary>A length of a rod or its spacing beside the least one.</summary>
/// <param name="What">Which length.</param>
/// <param name="UseShare">Least over planned; above 1 is a stop.</param>
public sealed record BondLengthPlan(string What, double LeastM, double HasM, double UseShare, string Document, string Edition,
    string Provenance);

/// <summary>How a conductor runs; null is unknown.</summary>
/// <param name="Use">Which conductor.</param>
/// <param name="Bends">Changes of direction.</param>
/// <param name="BendRadiusM">Tightest bend.</param>
/// <param name="Coils">Turns of coiled slack.</param>
/// <param name="PowerDistanceM">Distance to the nearest power conductor.</param>
/// <param name="PowerCircuit">What that carries; empty when unknown.</param>
/// <param name="PowerLeastM">Distance that the family asks for; null when our notes have none.</param>
public sealed record BondRoutePlan(
    string Use, double LengthM, int? Bends, double? BendRadiusM, int? Coils, double? PowerDistanceM, string PowerCircuit,
        double? PowerLeastM, string PowerDocument, string PowerEdition);

/// <summary>The mast's own rod.</summary>
/// <param name="Soil">The ground in words; empty when unknown.</param>
/// <param name="SoilProvenance">How its resistivity is known.</param>
/// <param name="LowOhm">Resistance at the low end of the soil's range; null when unknown.</param>
/// <param name="HighOhm">At the high end.</param>
/// <param name="LimitOhm">What the family compares one rod with; null when nothing.</param>
/// <param name="PotentialKv">Its potential in an induced surge of 10 kA at the low resistance, before the soil breaks down.</param>
/// <param name="Jumper">Conductor to the building's electrode system; empty when none is planned.</param>
/// <param name="Clamps">Clamps on the rods.</param>
public sealed record RodPlan(
    string Part, string Name, int Count, double? LengthM, double? DiameterM, double? SpacingM, string Soil, string SoilProvenance,
        double? LowOhmM, double? HighOhmM,
    double? LowOhm, double? HighOhm, double? LimitOhm, string LimitDocument, double? PotentialKv, string Jumper, string JumperPart,
        BondSize? JumperSize, double JumperLengthM, string Clamp, int Clamps);

/// <summary>What a surge does along a conductor. Orders of magnitude only.</summary>
/// <param name="Lengths">Half, once and twice the planned length.</param>
/// <param name="InducedKa">Peak of the induced surge.</param>
/// <param name="StrokeKa">Peak of the direct stroke.</param>
/// <param name="ResistiveV">Drop by resistance at the induced peak; null when the metal's resistivity is unknown.</param>
/// <param name="CoilUh">What the coiled slack adds; 0 without a coil.</param>
/// <param name="CoilKv">Voltage that goes with it.</param>
/// <param name="StrokeRiseK">Rise of temperature in that stroke; null when the metal is not copper.</param>
/// <param name="StrokeMelts">Whether that is beyond the melting point.</param>
public sealed record BondSurgePlan(
    IReadOnlyList<SurgeLengthPlan> Lengths, double InducedKa, double StrokeKa, double? ResistiveV, double CoilUh, double CoilKv,
        double? StrokeRiseK, bool StrokeMelts);

/// <summary>One length.</summary>
/// <param name="Planned">Whether it is the planned one.</param>
public sealed record SurgeLengthPlan(double LengthM, bool Planned, double InductanceUh, double InducedKv, double StrokeKv);

/// <summary>Flashes to be expected.</summary>
/// <param name="HouseM2">Collection area of the house; null when its outline is unknown.</param>
/// <param name="MastM2">Of the antenna's tip; null in an attic.</param>
/// <param name="Governs"><c>house</c> or <c>mast</c>.</param>
public sealed record StrikePlan(double FlashesPerKm2Year, bool FromThunderDays, string Place, double PlaceFactor, double? HouseM2,
    double? MastM2, string Governs, double PerYear, double? IntervalYears);

/// <summary>The zone at the wall.</summary>
/// <param name="Contradicted">The heights of the job speak against it.</param>
/// <param name="Exempt">No earthing conductor from the mast is asked for.</param>
public sealed record ZonePlan(double BelowEdgeM, double OutM, double LeastBelowM, double LargestOutM, bool Contradicted, bool Exempt);
