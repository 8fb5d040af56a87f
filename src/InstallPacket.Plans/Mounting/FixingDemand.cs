namespace InstallPacket.Plans.Mounting;

/// <summary>What one fixing must bear.</summary>
/// <param name="Case">The case of wind, for example <c>wind along the wall</c>.</param>
/// <param name="PullN">Pull [N].</param>
/// <param name="ShearN">Shear [N].</param>
internal sealed record FixingDemand(string Case, Term PullN, Term ShearN);
