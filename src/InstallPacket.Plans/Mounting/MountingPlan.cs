namespace InstallPacket.Plans;

/// <summary>Mount, access, clearances.</summary>
/// <param name="Ladder">How the ladder stands; null when none is used.</param>
/// <param name="PowerLinesKnown">Whether the survey says anything about overhead wires.</param>
public sealed record MountingPlan(
    string Kind, string Mount, string Mast, double MastLengthM, double FreeLengthM, string On, IReadOnlyList<FixingPlan> Fixings, double? RoofPitchDeg,
    double WorkHeightM, string Access, LadderSetPlan? Ladder, bool PowerLinesKnown, double PowerLineRequiredM, IReadOnlyList<PowerLinePlan> PowerLines,
    IReadOnlyList<CodeRule> Rules)
{
    /// <summary>What the wind does to antenna and mast; null when the job does not say enough.</summary>
    public WindPlan? Wind { get; init; }
}

/// <summary>A kind of fixing.</summary>
/// <param name="PilotM">Pilot hole; null: follow the maker's sheet.</param>
/// <param name="TorqueNm">Torque; null: follow the maker's sheet.</param>
/// <param name="TorqueProvenance">How the torque is known.</param>
public sealed record FixingPlan(string Part, string Name, int Count, double? PilotM, string Into, double? TorqueNm, string TorqueProvenance);

/// <summary>How the ladder stands.</summary>
/// <param name="WorkingM">Working length from foot to top support.</param>
/// <param name="FootM">Distance of the foot from the wall.</param>
/// <param name="RailM">Length of rail that reaches past the edge.</param>
public sealed record LadderSetPlan(double WorkingM, double FootM, double RailM);

/// <summary>An overhead wire.</summary>
/// <param name="Clear">Whether it is farther away than required.</param>
public sealed record PowerLinePlan(string Name, string What, double DistanceM, double HeightM, bool Clear);

/// <summary>A rule of a code family.</summary>
/// <param name="Id">Kebab-case identifier.</param>
/// <param name="Topic">Where the packet prints it: <c>mounting</c>, <c>bonding</c>, <c>routing</c>, <c>height</c>.</param>
/// <param name="Text">The rule in our words.</param>
/// <param name="Document">Document and section.</param>
/// <param name="Edition">Edition.</param>
/// <param name="Provenance">How it is known: <c>read</c>, <c>derived</c>, <c>memory</c>, <c>common practice</c>.</param>
public sealed record CodeRule(string Id, string Topic, string Text, string Document, string Edition, string Provenance);
