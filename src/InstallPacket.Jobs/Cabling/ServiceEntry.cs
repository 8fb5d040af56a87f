namespace InstallPacket.Jobs.Cabling;

/// <summary>The unit at which an internet or cable service enters the house.</summary>
public enum ServiceUnit
{
    /// <summary>Looked for and found none.</summary>
    None,

    /// <summary>A node of the provider's network.</summary>
    Node,

    /// <summary>A modem.</summary>
    Modem,

    /// <summary>The unit that ends an optical fibre.</summary>
    OpticalUnit,
}

/// <summary>What an internet service uses inside the house.</summary>
public enum ServiceLine
{
    /// <summary>Coax of the house.</summary>
    Coax,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>The entry of an internet or cable service, which no step touches.</summary>
/// <param name="Unit">What it is.</param>
/// <param name="Over">What it uses in the house.</param>
/// <param name="Point">Where it sits; null when not known.</param>
/// <param name="Feeds">What stays connected to it, in words, or null.</param>
/// <param name="Connected">Runs of the house that stay connected to it.</param>
/// <param name="CutOff">Runs that come off it, because the antenna takes them over; null when the survey does not say.</param>
/// <param name="OpenPorts">Ports of its splitter that stay open then; null when the job does not say.</param>
/// <param name="At">Where it is written.</param>
public sealed record ServiceEntry(
    ServiceUnit Unit, ServiceLine Over, string? Point, string? Feeds, IReadOnlyList<Sourced<string>> Connected,
    IReadOnlyList<Sourced<string>>? CutOff, int? OpenPorts, SourceSpan At);
