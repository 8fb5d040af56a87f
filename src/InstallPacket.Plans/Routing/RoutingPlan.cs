namespace InstallPacket.Plans.Routing;

/// <summary>Runs and their lengths.</summary>
/// <param name="PlanUpDeg">True bearing of the plan's upward axis.</param>
/// <param name="Outline">Corners of the house; empty when the job gives none.</param>
/// <param name="EavesM">Eaves above ground, or null.</param>
/// <param name="RidgeM">Ridge above ground, or null.</param>
/// <param name="Points">Named points.</param>
/// <param name="Runs">Runs in the order of the job.</param>
/// <param name="Cables">The kinds of cable used.</param>
/// <param name="Rules">Rules of the code family about cable.</param>
public sealed record RoutingPlan(
    double PlanUpDeg, IReadOnlyList<PlanCorner> Outline, double? EavesM, double? RidgeM, IReadOnlyList<PointPlan> Points,
        IReadOnlyList<RunPlan> Runs,
    IReadOnlyList<CablePlan> Cables, IReadOnlyList<CodeRule> Rules)
{
    /// <summary>Form of the roof; empty when unknown.</summary>
    public RoofForm? Roof { get; init; }

    /// <summary>Which way the ridge of a gable runs; empty when unknown.</summary>
    public RidgeAxis? RidgeAlong { get; init; }

    /// <summary>Storeys from below.</summary>
    public IReadOnlyList<StoreyPlan> Storeys { get; init; } = [];

    /// <summary>Rooms of the job.</summary>
    public IReadOnlyList<RoomPlan> Rooms { get; init; } = [];

    /// <summary>Where cable goes in or out.</summary>
    public IReadOnlyList<EntryPlan> Entries { get; init; } = [];

    /// <summary>Sides of the plan, besides the lower one, on which cable runs outdoors: <c>right</c>, <c>upper</c>, <c>left</c>.</summary>
    public IReadOnlyList<string> Sides { get; init; } = [];

    /// <summary>Conduits.</summary>
    public IReadOnlyList<ConduitPlan> Conduits { get; init; } = [];
}

/// <summary>A kind of cable that the runs use.</summary>
/// <param name="BendRadiusM">Smallest bend radius; null when unknown.</param>
/// <param name="Connector">The connector that fits; empty when the part does not say.</param>
/// <param name="TorqueNm">Torque of the connector; null: maker's sheet.</param>
/// <param name="TorqueProvenance">How the torque is known.</param>
public sealed record CablePlan(string Part, string Name, double? BendRadiusM, string Connector, double? TorqueNm, string TorqueProvenance);

/// <summary>A corner of the house in plan.</summary>
public sealed record PlanCorner(double RightM, double UpM);

/// <summary>A storey.</summary>
public sealed record StoreyPlan(string Name, double FloorM);

/// <summary>A room.</summary>
public sealed record RoomPlan(string Name, string Storey, IReadOnlyList<PlanCorner> Corners);

/// <summary>A named point.</summary>
/// <param name="Elements">Elements that sit there.</param>
public sealed record PointPlan(string Name, double RightM, double UpM, double HeightM, IReadOnlyList<string> Elements)
{
    /// <summary>The room that it is in; empty when the job describes none there.</summary>
    public string Room { get; init; } = "";
}

/// <summary>A hole for cable.</summary>
/// <param name="Point">The point at its outer end.</param>
/// <param name="Number">Its number on the sketch.</param>
/// <param name="Through"><c>wall</c> or <c>roof</c>.</param>
/// <param name="Runs">Runs that use it, a hole each.</param>
/// <param name="HoleM">Drill; null when unknown.</param>
/// <param name="SlopeDeg">Fall to the outside.</param>
/// <param name="ThicknessM">What is drilled through; null when unknown.</param>
/// <param name="HoleLengthM">Length of the hole; null when unknown.</param>
/// <param name="FallM">How much lower its outer end is; null when unknown.</param>
/// <param name="CableM">Outside diameter of the thickest cable; null when unknown.</param>
/// <param name="DripDepthM">Depth of the drip loop before it; null when none hangs there.</param>
/// <param name="BendRadiusM">Bend radius of that cable; null when unknown.</param>
/// <param name="Figure">Name of its figure; empty when a measure for it is unknown.</param>
public sealed record EntryPlan(
    string Point, int Number, EntrySurface Through, IReadOnlyList<string> Runs, double? HoleM, double SlopeDeg, double? ThicknessM,
        double? HoleLengthM, double? FallM,
    double? CableM, double? DripDepthM, double? BendRadiusM, string Figure)
{
    /// <summary>Whether the hole is there already.</summary>
    public bool Existing { get; init; }
}

/// <summary>A conduit.</summary>
/// <param name="FillPct">Share of its inside that cables fill; null when a cable does not state its diameter.</param>
/// <param name="LimitPct">Largest share.</param>
public sealed record ConduitPlan(string Name, double InsideM, IReadOnlyList<string> Runs, double? FillPct, double LimitPct)
{
    /// <summary>Sum of the squares of the outside diameters of its cables; null when one does not state it.</summary>
    public double? SquaresM2 { get; init; }

    /// <summary>How many cables share it.</summary>
    public int Cables { get; init; }
}

/// <summary>Legs of a run that lie alike.</summary>
/// <param name="FromPoint">Where it begins.</param>
/// <param name="ToPoint">Where it ends.</param>
/// <param name="Way">How it is laid.</param>
/// <param name="StraightM">Sum of its straight legs.</param>
/// <param name="UprightM">What of it is upright.</param>
/// <param name="RouteFactor">Allowance for the real route.</param>
/// <param name="RoutedM">With the allowance.</param>
public sealed record StretchPlan(string FromPoint, string ToPoint, CableWay Way, double StraightM, double UprightM, double RouteFactor,
    double RoutedM);

/// <summary>One run, one piece of cable.</summary>
/// <param name="Id">Its name in the job.</param>
/// <param name="Number">Its number on sketch, list and label.</param>
/// <param name="Cable">Part name of the cable.</param>
/// <param name="CableName">What the cable is.</param>
/// <param name="Way">How it is laid.</param>
/// <param name="Path">Points that it passes.</param>
/// <param name="FromElement">Element at its start; empty when unused.</param>
/// <param name="ToElement">Element at its end; empty when unused.</param>
/// <param name="StraightM">Sum of the straight legs.</param>
/// <param name="RouteFactor">Allowance for the real route, over all stretches.</param>
/// <param name="DripLoops">Points before which it hangs in a loop.</param>
/// <param name="DripDepthM">Depth of each loop.</param>
/// <param name="DripExtraM">Length of all drip loops.</param>
/// <param name="ServiceM">Service loop.</param>
/// <param name="TerminationM">Trim and re-termination at both ends.</param>
/// <param name="LengthM">Length to cut.</param>
/// <param name="Clips">Clips to set; 0 when it is not clipped.</param>
/// <param name="ClipSpacingM">Largest clip spacing; null when it is not clipped.</param>
/// <param name="BendRadiusM">Smallest bend radius; null when unknown.</param>
/// <param name="Note">A word to the crew.</param>
public sealed record RunPlan(
    string Id, int Number, string Cable, string CableName, CableWay Way, IReadOnlyList<string> Path, string FromElement, string ToElement,
        double StraightM,
    double RouteFactor, IReadOnlyList<string> DripLoops, double DripDepthM, double DripExtraM, double ServiceM, double TerminationM,
        double LengthM, int Clips,
    double? ClipSpacingM, double? BendRadiusM, string Note)
{
    /// <summary>Whether the cable lies in the house already; then it is not cut.</summary>
    public bool Existing { get; init; }

    /// <summary>The length as measured along the way; null when the points give it.</summary>
    public double? GivenM { get; init; }

    /// <summary>Existing cable: whether it gets new connectors.</summary>
    public bool NewConnectors { get; init; }

    /// <summary>Existing cable: the least loop resistance to expect at its test; null when the cable does not state it.</summary>
    public double? LoopLeastOhm { get; init; }

    /// <summary>The most to expect.</summary>
    public double? LoopMostOhm { get; init; }

    /// <summary>How that is known, the least before the most, as the cable states it.</summary>
    public IReadOnlyList<string> LoopSources { get; init; } = [];

    /// <summary>Its stretches in turn, one where the way never changes.</summary>
    public IReadOnlyList<StretchPlan> Stretches { get; init; } = [];

    /// <summary>All stretches with their allowance.</summary>
    public double RoutedM { get; init; }

    /// <summary>What free spans take beyond the straight line.</summary>
    public double SagExtraM { get; init; }

    /// <summary>Level and sloping cable that is clipped.</summary>
    public double ClippedLevelM { get; init; }

    /// <summary>Upright cable that is clipped.</summary>
    public double ClippedUprightM { get; init; }

    /// <summary>More cable by the job.</summary>
    public double SlackM { get; init; }

    /// <summary>Largest clip spacing on upright cable; null when it is not clipped.</summary>
    public double? UprightClipSpacingM { get; init; }

    /// <summary>Corners of the path.</summary>
    public int Corners { get; init; }

    /// <summary>What a bend in place of each square corner would save; it stays in the piece as reserve. Null when the radius is
    /// unknown.</summary>
    public double? CornerReserveM { get; init; }

    /// <summary>Surveyed distance to power wiring; null when the job does not say.</summary>
    public double? FromPowerM { get; init; }

    /// <summary>Supports of upright drops in wall or conduit.</summary>
    public int Supports { get; init; }

    /// <summary>Whether any stretch lies in one of these ways.</summary>
    /// <param name="ways">The ways.</param>
    public bool Lies(params CableWay[] ways) => Stretches.Any(s => ways.Contains(s.Way)) || (Stretches.Count == 0 && ways.Contains(Way));

    /// <summary>The share of its length that lies in one of these ways.</summary>
    internal double ShareIn(params CableWay[] ways)
    {
        var all = Stretches.Sum(s => s.RoutedM);
        return all > 0 ? Stretches.Where(s => ways.Contains(s.Way)).Sum(s => s.RoutedM) / all : ways.Contains(Way) ? 1 : 0;
    }
}
