namespace InstallPacket.Jobs.Handover;

/// <summary>A firm or a person.</summary>
public sealed record Party(string Name, string? Address, string? Phone, string? Note)
{
    /// <summary>Mail address, or null.</summary>
    public string? Mail { get; init; }

    /// <summary>Licence or registration of a firm, or null.</summary>
    public string? Licence { get; init; }

    /// <summary>Logo of a firm, or null.</summary>
    public LogoPicture? Logo { get; init; }
}

/// <summary>Words for the customer.</summary>
public sealed record HandoverSection(InternetKind ExistingInternet, string? Words)
{
    /// <summary>The same where the author wrote it, or null.</summary>
    public Sourced<InternetKind>? InternetSaid { get; init; }

    /// <summary>What the firm promises, or null.</summary>
    public string? Warranty { get; init; }
}
