namespace InstallPacket.Jobs.Routing;

/// <summary>How a cable is laid.</summary>
public enum CableWay
{
    /// <summary>Outside, on a surface.</summary>
    Outside,

    /// <summary>In the attic.</summary>
    Attic,

    /// <summary>In a wall.</summary>
    Wall,

    /// <summary>In a crawl space.</summary>
    CrawlSpace,

    /// <summary>In conduit.</summary>
    Conduit,

    /// <summary>In the ground.</summary>
    Buried,

    /// <summary>Hanging free between its points.</summary>
    Span,
}

/// <summary>Form of a roof.</summary>
public enum RoofForm
{
    /// <summary>Flat.</summary>
    Flat,

    /// <summary>Gable.</summary>
    Gable,

    /// <summary>Hip.</summary>
    Hip,
}

/// <summary>Which way a ridge runs on the plan.</summary>
public enum RidgeAxis
{
    /// <summary>To the right.</summary>
    Right,

    /// <summary>Upward.</summary>
    Up,
}

/// <summary>What an entry goes through.</summary>
public enum EntrySurface
{
    /// <summary>A wall.</summary>
    Wall,

    /// <summary>The roof.</summary>
    Roof,
}
