namespace InstallPacket.Plans;

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
    double PlanUpDeg, IReadOnlyList<PlanCorner> Outline, double? EavesM, double? RidgeM, IReadOnlyList<PointPlan> Points, IReadOnlyList<RunPlan> Runs,
    IReadOnlyList<CablePlan> Cables, IReadOnlyList<CodeRule> Rules);

/// <summary>A kind of cable that the runs use.</summary>
/// <param name="BendRadiusM">Smallest bend radius; null when unknown.</param>
/// <param name="Connector">The connector that fits; empty when the part does not say.</param>
/// <param name="TorqueNm">Torque of the connector; null: maker's sheet.</param>
/// <param name="TorqueProvenance">How the torque is known.</param>
public sealed record CablePlan(string Part, string Name, double? BendRadiusM, string Connector, double? TorqueNm, string TorqueProvenance);

/// <summary>A corner of the house in plan.</summary>
public sealed record PlanCorner(double RightM, double UpM);

/// <summary>A named point.</summary>
/// <param name="Elements">Elements that sit there.</param>
public sealed record PointPlan(string Name, double RightM, double UpM, double HeightM, IReadOnlyList<string> Elements);

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
/// <param name="RouteFactor">Allowance for the real route.</param>
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
    string Id, int Number, string Cable, string CableName, string Way, IReadOnlyList<string> Path, string FromElement, string ToElement, double StraightM,
    double RouteFactor, IReadOnlyList<string> DripLoops, double DripDepthM, double DripExtraM, double ServiceM, double TerminationM, double LengthM, int Clips,
    double? ClipSpacingM, double? BendRadiusM, string Note)
{
    /// <summary>Whether the cable lies in the house already; then it is not cut.</summary>
    public bool Existing { get; init; }
}
