namespace InstallPacket.Jobs.Siting;

/// <summary>What stands around the antenna; it chooses the man-made noise.</summary>
public enum Surroundings
{
    /// <summary>City.</summary>
    City,

    /// <summary>Residential.</summary>
    Residential,

    /// <summary>Rural.</summary>
    Rural,

    /// <summary>Rural, far from machines and lines.</summary>
    QuietRural,
}

/// <summary>What stands in the way.</summary>
public enum ObstructionKind
{
    /// <summary>Trees.</summary>
    Trees,

    /// <summary>A building.</summary>
    Building,

    /// <summary>A hill.</summary>
    Hill,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>The state of trees.</summary>
public enum Leaf
{
    /// <summary>In leaf.</summary>
    InLeaf,

    /// <summary>Bare.</summary>
    Bare,
}
