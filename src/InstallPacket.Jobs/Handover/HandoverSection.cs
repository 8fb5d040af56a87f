namespace InstallPacket.Jobs.Handover;

/// <summary>A firm or a person.</summary>
public sealed record Party(string Name, string? Address, string? Phone, string? Note)
{
    /// <summary>Mail address, or null.</summary>
    public string? Mail { get; init; }

    /// <summary>Licence or registration of a firm, or null.</summary>
    public string? Licence { get; init; }

    /// <summary>Mark of a firm, or null.</summary>
    public LogoPicture? Logo { get; init; }
}

/// <summary>Words for the customer.</summary>
public sealed record HandoverSection(InternetKind ExistingInternet, string? Words)
{
    /// <summary>What the firm promises, or null.</summary>
    public string? Warranty { get; init; }
}
