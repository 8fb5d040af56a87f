namespace InstallPacket.Plans.Mounting;

/// <summary>Mount, access, clearances.</summary>
/// <param name="Ladder">How the ladder stands; null when none is used.</param>
/// <param name="PowerLinesKnown">Whether the survey says anything about overhead wires.</param>
public sealed record MountingPlan(
    MountKind Kind, string Mount, string Mast, double MastLengthM, double FreeLengthM, string On, IReadOnlyList<FixingPlan> Fixings,
        double? RoofPitchDeg,
    double WorkHeightM, Access Access, LadderSetPlan? Ladder, bool PowerLinesKnown, double PowerLineRequiredM,
        IReadOnlyList<PowerLinePlan> PowerLines,
    IReadOnlyList<CodeRule> Rules)
{
    /// <summary>What the wind does to antenna and mast; null when the job does not say enough.</summary>
    public WindPlan? Wind { get; init; }

    /// <summary>What holds the mast; null when the wind is not known or there is none.</summary>
    public LoadPathPlan? LoadPath { get; init; }

    /// <summary>The one plate and its arm; null where the mount has two brackets or none.</summary>
    public PlatePlan? Plate { get; init; }

    /// <summary>Whether mount and mast stand there already.</summary>
    public bool Existing { get; init; }

    /// <summary>Length of the longest antenna; 0 where none states it.</summary>
    public double LongestAntennaM { get; init; }

    /// <summary>What can hurt somebody here, in the order of the packet.</summary>
    public IReadOnlyList<HazardPlan> Hazards { get; init; } = [];

    /// <summary>What keeps a person from falling; empty when the job does not say.</summary>
    public FallProtection? FallProtection { get; init; }

    /// <summary>Height from which the code family asks for fall protection; null where the law names none.</summary>
    public double? FallFromM { get; init; }
}

/// <summary>Something that can hurt somebody at this house; its words stand in the template of that name.</summary>
/// <param name="Id">What it is.</param>
/// <param name="State">What the survey found, in a word.</param>
/// <param name="Stop">Whether work must not begin before it is settled.</param>
public sealed record HazardPlan(string Id, string State, bool Stop);

/// <summary>A kind of fixing.</summary>
/// <param name="PilotM">Pilot hole; null: follow the maker's sheet.</param>
/// <param name="TorqueNm">Torque; null: follow the maker's sheet.</param>
/// <param name="TorqueProvenance">How the torque is known.</param>
public sealed record FixingPlan(string Part, string Name, int Count, double? PilotM, string Into, double? TorqueNm, string TorqueProvenance)
{
    /// <summary>Whether it is there already.</summary>
    public bool Existing { get; init; }

    /// <summary>What it is; empty when the part does not say.</summary>
    public FixingForm? Form { get; init; }

    /// <summary>Screw: how deep it reaches into the timber, tip not counted.</summary>
    public double? DepthM { get; init; }

    /// <summary>Screw: smallest lead hole.</summary>
    public double? LeadFromM { get; init; }

    /// <summary>Screw: largest lead hole.</summary>
    public double? LeadToM { get; init; }

    /// <summary>Screw: distance to the end of the timber for the full value.</summary>
    public double? EndM { get; init; }

    /// <summary>Screw: distance to a loaded edge of the timber.</summary>
    public double? EdgeM { get; init; }

    /// <summary>Screw: the timber that is calculated with.</summary>
    public string Timber { get; init; } = "";

    /// <summary>Screw: whether nobody named the timber and the lightest was taken.</summary>
    public bool TimberAssumed { get; init; }

    /// <summary>Screw: whether the timber gets wet.</summary>
    public bool Wet { get; init; }

    /// <summary>Anchor: the sheet of its figures.</summary>
    public string Stated { get; init; } = "";
}

/// <summary>How the ladder stands.</summary>
/// <param name="WorkingM">Working length from foot to top support.</param>
/// <param name="FootM">Distance of the foot from the wall.</param>
/// <param name="RailM">Length of rail that reaches past the edge.</param>
public sealed record LadderSetPlan(double WorkingM, double FootM, double RailM)
{
    /// <summary>Size of the extension ladder as sold in feet; null when none fits or sizes are metric.</summary>
    public int? SizeFt { get; init; }

    /// <summary>Load of the ladder; null when the job does not say.</summary>
    public double? LoadKg { get; init; }

    /// <summary>Rating that the load asks for; empty when unknown.</summary>
    public string Rating { get; init; } = "";
}

/// <summary>An overhead wire.</summary>
/// <param name="Clear">Whether it is farther away than required.</param>
public sealed record PowerLinePlan(string Name, string What, double DistanceM, double HeightM, bool Clear)
{
    /// <summary>Distance that people and gear keep from it.</summary>
    public double KeepClearM { get; init; }

    /// <summary>Distance that it needs from the mast foot.</summary>
    public double RequiredM { get; init; }

    /// <summary>Voltage; null when unknown: then the distance for 50 kV is taken.</summary>
    public double? VoltageKv { get; init; }
}

/// <summary>A rule of a code family.</summary>
/// <param name="Id">Kebab-case identifier.</param>
/// <param name="Topic">Where the packet prints it: <c>mounting</c>, <c>bonding</c>, <c>routing</c>, <c>height</c>.</param>
/// <param name="Text">Its words where the table of the family holds them; null where the theme does (<c>rules.FAMILY.ID</c>).</param>
/// <param name="Document">Document and section.</param>
/// <param name="Edition">Edition.</param>
/// <param name="Provenance">How it is known: <c>read</c>, <c>derived</c>, <c>memory</c>, <c>common practice</c>.</param>
public sealed record CodeRule(string Id, string Topic, string? Text, string Document, string Edition, string Provenance);
