using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Mounting;

/// <summary>The mount.</summary>
public sealed record MountingSection(
    MountKind Kind, MountPart Mount, MastPart Mast, Length MastLength, Length FreeLength, string On, IReadOnlyList<Fixing> Fixings,
        double? RoofPitchDeg,
    Length WorkHeight, Access Access, SourceSpan At)
{
    /// <summary>Distance between the two supports of the mast, or null.</summary>
    public Length? Spacing { get; init; }

    /// <summary>Where <c>spacing</c> is written.</summary>
    public SourceSpan SpacingAt { get; init; } = At;

    /// <summary>How the holes of the one plate lie, measured; null when the job does not say.</summary>
    public HolePattern? Plate { get; init; }

    /// <summary>Whether the mount brings its own mast and the job takes it.</summary>
    public bool OwnMast => ReferenceEquals(Mast, Mount.OwnMast);

    /// <summary>Whether one plate with an arm holds the mast.</summary>
    public bool OnePlate => Mount.Plates == 1 && Kind is MountKind.GableBracket or MountKind.WallBracket or MountKind.EaveBracket;

    /// <summary>The wind that the mast must stand, or null.</summary>
    public DesignWind? Wind { get; init; }

    /// <summary>Guys, or null.</summary>
    public GuySection? Guys { get; init; }

    /// <summary>Ballast, or null.</summary>
    public BallastSection? Ballast { get; init; }

    /// <summary>The chimney, or null.</summary>
    public ChimneySection? Chimney { get; init; }

    /// <summary>What the survey found, or null.</summary>
    public SurveySection? Survey { get; init; }

    /// <summary>Load of the ladder [kg], or null.</summary>
    public Sourced<double>? LadderLoadKg { get; init; }

    /// <summary>What keeps a person from falling, or null.</summary>
    public Sourced<FallProtection>? FallProtection { get; init; }

    /// <summary>Whether mount and mast stand there already.</summary>
    public bool Existing { get; init; }

    /// <summary>Where <c>free-length</c> is written.</summary>
    public SourceSpan FreeLengthAt { get; init; } = At;
}

/// <summary>The wind of the place.</summary>
/// <param name="SpeedMS">Basic wind speed [m/s].</param>
/// <param name="Exposure">What the wind blows over.</param>
/// <param name="Crest">Whether the house stands on a crest.</param>
public sealed record DesignWind(double SpeedMS, Sourced<string> Exposure, bool Crest, SourceSpan At);

/// <summary>A kind of fixing and how many.</summary>
/// <param name="Pilot">Pilot hole, or null.</param>
/// <param name="Into">What it bites into.</param>
public sealed record Fixing(FixingPart Part, int Count, Length? Pilot, string Into, SourceSpan At)
{
    /// <summary>Whether it is there already.</summary>
    public bool Existing { get; init; }

    /// <summary>Group or class of timber, or null.</summary>
    public Sourced<string>? Timber { get; init; }

    /// <summary>Whether the timber gets wet.</summary>
    public bool Wet { get; init; } = true;

    /// <summary>What lies between plate and timber [m].</summary>
    public double GapM { get; init; }

    /// <summary>Distance to the end of the timber [m], or null.</summary>
    public Sourced<double>? EndM { get; init; }

    /// <summary>Distance to its edge [m], or null.</summary>
    public Sourced<double>? EdgeM { get; init; }

    /// <summary>Maker's figure for pull [N], or null.</summary>
    public double? PullN { get; init; }

    /// <summary>Maker's figure for shear [N], or null.</summary>
    public double? ShearN { get; init; }

    /// <summary>Where those figures come from.</summary>
    public string? Stated { get; init; }

    /// <summary>Where <c>pilot</c> is written.</summary>
    public SourceSpan PilotAt { get; init; } = At;
}

/// <summary>Guys.</summary>
public sealed record GuySection(GuyPart Part, double PretensionN, IReadOnlyList<GuySet> Sets, string Anchor, double? AnchorPullN,
    string? Stated, SourceSpan At);

/// <summary>A ring of guys.</summary>
public sealed record GuySet(double RingM, int Count, double RadiusM, SourceSpan At);

/// <summary>A base that stands by its weight.</summary>
public sealed record BallastSection(double SideM, double BlockKg, int? Blocks, double? Friction, double? RoofBearsPa, string? Stated,
    SourceSpan At);

/// <summary>A chimney stack.</summary>
public sealed record ChimneySection(double SideM, double HeightM, double StrapSpacingM, Sourced<ChimneyState> State,
    Sourced<Permission> Allowed, SourceSpan At);

/// <summary>What the survey found that can hurt somebody.</summary>
public sealed record SurveySection(SurfaceState Roof, AsbestosState Asbestos, BehindState Behind, BuriedState Buried, bool OldMast,
    SourceSpan At);
