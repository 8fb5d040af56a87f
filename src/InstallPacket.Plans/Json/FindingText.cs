namespace InstallPacket.Plans.Json;

/// <summary>What a finding says in a language.</summary>
/// <param name="Found">What was found, with its value and unit.</param>
/// <param name="Limit">The limit or the expectation, with its source; may be empty.</param>
/// <param name="Remedy">What to do.</param>
public sealed record FindingText(string Found, string Limit, string Remedy);
