namespace InstallPacket.Jobs.Handover;

/// <summary>A firm or a person.</summary>
public sealed record Party(string Name, string? Address, string? Phone, string? Note);

/// <summary>Words for the customer.</summary>
public sealed record HandoverSection(InternetKind ExistingInternet, string? Words);
