namespace InstallPacket.Jobs.Mounting;

/// <summary>How an antenna is held.</summary>
public enum MountKind
{
    /// <summary>Brackets on a gable.</summary>
    GableBracket,

    /// <summary>Brackets on a wall.</summary>
    WallBracket,

    /// <summary>Brackets at the eaves.</summary>
    EaveBracket,

    /// <summary>A mast on the ground, held at the house.</summary>
    GroundMast,

    /// <summary>Straps around a chimney.</summary>
    ChimneyLashing,

    /// <summary>A tripod on the roof.</summary>
    Tripod,

    /// <summary>A base that stands by its weight.</summary>
    Ballast,

    /// <summary>In the attic.</summary>
    Attic,
}

/// <summary>How the place of work is reached.</summary>
public enum Access
{
    /// <summary>By ladder.</summary>
    Ladder,

    /// <summary>By ladder and over the roof.</summary>
    LadderAndRoof,

    /// <summary>By a tower.</summary>
    Tower,

    /// <summary>By a platform.</summary>
    Platform,

    /// <summary>From inside.</summary>
    Inside,
}

/// <summary>What keeps a person from falling.</summary>
public enum FallProtection
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A guard at the edge.</summary>
    Edge,

    /// <summary>A harness.</summary>
    Harness,

    /// <summary>A platform.</summary>
    Platform,
}

/// <summary>What the survey found of a surface.</summary>
public enum SurfaceState
{
    /// <summary>Sound.</summary>
    Sound,

    /// <summary>Fragile.</summary>
    Fragile,

    /// <summary>Mossy.</summary>
    Mossy,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>What the survey found of asbestos and lead.</summary>
public enum AsbestosState
{
    /// <summary>None.</summary>
    None,

    /// <summary>Suspected.</summary>
    Suspected,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>What the survey found behind holes.</summary>
public enum BehindState
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>Something whose place is known.</summary>
    Known,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>What the survey found in the ground.</summary>
public enum BuriedState
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Services that are marked.</summary>
    Marked,

    /// <summary>Services that are not marked.</summary>
    Unmarked,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>What the survey found of a chimney.</summary>
public enum ChimneyState
{
    /// <summary>Sound.</summary>
    Sound,

    /// <summary>Cracked.</summary>
    Cracked,

    /// <summary>Leaning.</summary>
    Leaning,

    /// <summary>Not known.</summary>
    Unknown,
}

/// <summary>Whether the local code allows it.</summary>
public enum Permission
{
    /// <summary>It does.</summary>
    Yes,

    /// <summary>It does not.</summary>
    No,

    /// <summary>Not known.</summary>
    Unknown,
}
