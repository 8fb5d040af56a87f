namespace InstallPacket.Jobs.Materials;

/// <summary>What cable lies on.</summary>
public enum StockKind
{
    /// <summary>A reel.</summary>
    Reel,

    /// <summary>A pull box.</summary>
    Box,

    /// <summary>A length cut before.</summary>
    PreCut,
}

/// <summary>What a cutting plan seeks.</summary>
public enum CuttingAim
{
    /// <summary>The least length opened.</summary>
    LeastWaste,

    /// <summary>The least price of what is opened.</summary>
    LeastCost,
}
