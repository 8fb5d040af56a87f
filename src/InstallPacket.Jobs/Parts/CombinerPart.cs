using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A combiner of two antennas, each through a band of its own.</summary>
public sealed record CombinerPart : PassivePart
{
    internal CombinerPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        SecondFromMHz = g.Maybe(CombinerPartKeys.SecondFrom)?.Value;
        SecondToMHz = g.Maybe(CombinerPartKeys.SecondTo)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Combiner;

    /// <summary>Lowest frequency of its second input [MHz].</summary>
    public double? SecondFromMHz { get; init; }

    /// <summary>Highest frequency of its second input [MHz].</summary>
    public double? SecondToMHz { get; init; }
}

/// <summary>The keys of a combiner.</summary>
public static class CombinerPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    /// <summary>Combiner: lowest frequency of its second input; <c>from</c> and <c>to</c> are those of the first.</summary>
    public static readonly Key<double> SecondFrom = Keys.Optional(
        "second-from", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"),
        "Combiner: lowest frequency of its second input; `from` and `to` are those of the first.");

    /// <summary>Combiner: highest frequency of its second input.</summary>
    public static readonly Key<double> SecondTo = Keys.Optional(
        "second-to", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Combiner: highest frequency of its second input.");

    internal static GroupKind Group => Keys.Group;
}
