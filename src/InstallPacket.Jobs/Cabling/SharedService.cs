namespace InstallPacket.Jobs.Cabling;

/// <summary>Another service on a tree of cables.</summary>
public enum SharedService
{
    /// <summary>A home network over coax.</summary>
    Moca,

    /// <summary>Satellite.</summary>
    Satellite,

    /// <summary>The plant of a cable operator.</summary>
    Operator,
}
