namespace InstallPacket.Jobs.Handover;

/// <summary>Whether an internet service uses coax in the house.</summary>
public enum InternetKind
{
    /// <summary>No.</summary>
    None,

    /// <summary>It does.</summary>
    Coax,

    /// <summary>There is one, over something else.</summary>
    Other,
}
