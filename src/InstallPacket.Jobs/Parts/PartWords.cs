namespace InstallPacket.Jobs.Parts;

/// <summary>What a part is, in the order of the parts list.</summary>
public enum PartKind
{
    /// <summary>An antenna.</summary>
    Antenna,

    /// <summary>A balun.</summary>
    Balun,

    /// <summary>A filter.</summary>
    Filter,

    /// <summary>An attenuator.</summary>
    Attenuator,

    /// <summary>An amplifier.</summary>
    Amplifier,

    /// <summary>It feeds the supply of an amplifier into the cable.</summary>
    PowerInserter,

    /// <summary>A grounding block.</summary>
    GroundingBlock,

    /// <summary>A surge protector.</summary>
    SurgeProtector,

    /// <summary>It joins two antennas.</summary>
    Combiner,

    /// <summary>A splitter.</summary>
    Splitter,

    /// <summary>A tap.</summary>
    Tap,

    /// <summary>An outlet.</summary>
    Outlet,

    /// <summary>A receiver.</summary>
    Receiver,

    /// <summary>A cable.</summary>
    Cable,

    /// <summary>A connector.</summary>
    Connector,

    /// <summary>A terminator.</summary>
    Terminator,

    /// <summary>A bracket, a base, a tripod or straps.</summary>
    Mount,

    /// <summary>A mast tube.</summary>
    Mast,

    /// <summary>A guy wire.</summary>
    Guy,

    /// <summary>A screw, an anchor, a bolt or a clamp.</summary>
    Fixing,

    /// <summary>A bonding conductor, or a rod.</summary>
    Bonding,

    /// <summary>What else is needed.</summary>
    Sundry,
}

/// <summary>What the plan uses a part for by itself.</summary>
public enum PartRole
{
    /// <summary>Holds cable on a surface.</summary>
    Clip,

    /// <summary>Keeps rain off a connector.</summary>
    WeatherBoot,

    /// <summary>Ends an open output.</summary>
    Terminator,

    /// <summary>Joins two F sockets that are screwed together.</summary>
    Coupler,

    /// <summary>Ties cable to a mast.</summary>
    Tie,

    /// <summary>Seals holes.</summary>
    Sealant,

    /// <summary>Wraps connectors.</summary>
    Tape,

    /// <summary>Warns or names.</summary>
    Label,

    /// <summary>Joins a conductor to a rod.</summary>
    RodClamp,

    /// <summary>Holds an antenna on its mast; no hole is drilled for it.</summary>
    AntennaClamp,
}

/// <summary>How a part is sold.</summary>
public enum SoldBy
{
    /// <summary>By the piece.</summary>
    Piece,

    /// <summary>By length.</summary>
    Length,
}

/// <summary>Which ports let an amplifier's supply through.</summary>
public enum PowerPass
{
    /// <summary>All.</summary>
    Yes,

    /// <summary>None.</summary>
    No,

    /// <summary>The first one only.</summary>
    Output1,

    /// <summary>Of a combiner with one output: toward its first input only.</summary>
    Input1,

    /// <summary>Of a combiner with one output: toward its second input only.</summary>
    Input2,

    /// <summary>All, each through a diode: current flows toward the antenna and never out of another port.</summary>
    Steered,
}

/// <summary>What a conductor or a rod is made of.</summary>
public enum Metal
{
    /// <summary>Copper.</summary>
    Copper,

    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Steel with a skin of copper.</summary>
    CopperCladSteel,

    /// <summary>Bronze.</summary>
    Bronze,

    /// <summary>Steel.</summary>
    Steel,
}

/// <summary>What a fixing is.</summary>
public enum FixingForm
{
    /// <summary>A lag screw.</summary>
    LagScrew,

    /// <summary>A wood screw.</summary>
    WoodScrew,

    /// <summary>An anchor in masonry.</summary>
    Anchor,

    /// <summary>A bolt.</summary>
    Bolt,

    /// <summary>It clamps and bears nothing else.</summary>
    Clamp,
}

/// <summary>Cross-section of a bar.</summary>
public enum BarForm
{
    /// <summary>Round.</summary>
    Round,

    /// <summary>Square.</summary>
    Square,
}

/// <summary>Which wind meets a bar.</summary>
public enum BarFace
{
    /// <summary>Wind along the boom.</summary>
    Front,

    /// <summary>Wind across the boom.</summary>
    Side,
}
