namespace InstallPacket.Plans;

/// <summary>Bonding conductors and rules.</summary>
public sealed record BondingPlan(
    string Connection, string Conductor, string ConductorPart, double MastLengthM, double ShieldLengthM, string By, string Note, string BlockElement,
    IReadOnlyList<CodeRule> Rules);
