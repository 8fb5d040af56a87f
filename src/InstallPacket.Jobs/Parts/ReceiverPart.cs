using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A receiver.</summary>
public sealed record ReceiverPart : Part
{
    internal ReceiverPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        NoiseFigureDb = g.Maybe(PartKeys.NoiseFigure)?.Value;
        LeastLevel = Dbm(g.Maybe(PartKeys.LeastLevel));
        LargestLevel = Dbm(g.Maybe(PartKeys.LargestLevel));
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Receiver;

    /// <summary>Noise figure [dB].</summary>
    public FrequencyCurve? NoiseFigureDb { get; init; }

    /// <summary>Lowest level it is made for.</summary>
    public Level? LeastLevel { get; init; }

    /// <summary>Highest level it is made for.</summary>
    public Level? LargestLevel { get; init; }
}

/// <summary>The keys of a receiver.</summary>
public static class ReceiverPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.NoiseFigure, PartKeys.LeastLevel, PartKeys.LargestLevel);

    internal static GroupKind Group => Keys.Group;
}
