namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Cautions of the terrain model, with the bits of the published model. They never change the result.</summary>
[Flags]
public enum ItmWarnings
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>Transmitting antenna below 1 m or above 1000 m.</summary>
    TxHeight = 0x0001,

    /// <summary>Receiving antenna below 1 m or above 1000 m.</summary>
    RxHeight = 0x0002,

    /// <summary>Frequency below 40 or above 10,000 MHz.</summary>
    Frequency = 0x0004,

    /// <summary>Path longer than 1000 km.</summary>
    LongPath = 0x0008,

    /// <summary>Path longer than 2000 km.</summary>
    VeryLongPath = 0x0010,

    /// <summary>Path shorter than five times the difference of the effective heights.</summary>
    SteepPath = 0x0020,

    /// <summary>Path shorter than 1 km.</summary>
    ShortPath = 0x0040,

    /// <summary>Horizon of the transmitter more than 0.2 rad from level.</summary>
    TxHorizonAngle = 0x0080,

    /// <summary>Horizon of the receiver more than 0.2 rad from level.</summary>
    RxHorizonAngle = 0x0100,

    /// <summary>Horizon of the transmitter nearer than a tenth of the smooth-earth distance.</summary>
    TxHorizonNear = 0x0200,

    /// <summary>Horizon of the receiver nearer than a tenth of the smooth-earth distance: usually a hill close to the house.</summary>
    RxHorizonNear = 0x0400,

    /// <summary>Horizon of the transmitter farther than three smooth-earth distances.</summary>
    TxHorizonFar = 0x0800,

    /// <summary>Horizon of the receiver farther than three smooth-earth distances.</summary>
    RxHorizonFar = 0x1000,

    /// <summary>A percentage so near to 0 or 100 that the statistics are not known there.</summary>
    FarTail = 0x2000,

    /// <summary>Surface refractivity below 250 N-units.</summary>
    Refractivity = 0x4000,
}

/// <summary>How far a result may be trusted: the classes of the model's first published program.</summary>
public enum ItmClass
{
    /// <summary>Within everything the model was fitted to.</summary>
    Clean = 0,

    /// <summary>An input near its limit.</summary>
    NearLimits = 1,

    /// <summary>An inner quantity out of range: dubious. Common in hills.</summary>
    Dubious = 3,

    /// <summary>An input out of range, or no result.</summary>
    OutOfRange = 4,
}

/// <summary>From warnings to the class.</summary>
public static class ItmClasses
{
    private const ItmWarnings Outside = ItmWarnings.VeryLongPath | ItmWarnings.ShortPath | ItmWarnings.Refractivity;

    private const ItmWarnings Inner = ItmWarnings.SteepPath | ItmWarnings.TxHorizonAngle | ItmWarnings.RxHorizonAngle | ItmWarnings.TxHorizonNear
        | ItmWarnings.RxHorizonNear | ItmWarnings.TxHorizonFar | ItmWarnings.RxHorizonFar;

    /// <summary>The greatest class that applies.</summary>
    /// <param name="warnings">Warnings of a result.</param>
    /// <returns>The class.</returns>
    public static ItmClass Of(ItmWarnings warnings) => warnings switch
    {
        _ when (warnings & Outside) != 0 => ItmClass.OutOfRange,
        _ when (warnings & Inner) != 0 => ItmClass.Dubious,
        ItmWarnings.None => ItmClass.Clean,
        _ => ItmClass.NearLimits,
    };
}
