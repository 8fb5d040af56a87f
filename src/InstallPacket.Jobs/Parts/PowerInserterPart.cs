using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A power inserter: it feeds the supply of an amplifier into the cable.</summary>
public sealed record PowerInserterPart : PassivePart
{
    internal PowerInserterPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        SupplyV = g.Maybe(PartKeys.Supply)?.Value;
        LargestCurrentMa = g.Maybe(PowerInserterPartKeys.LargestCurrent)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.PowerInserter;

    /// <inheritdoc/>
    public override double? SupplyV { get; }

    /// <summary>Largest current of a supply [mA].</summary>
    public double? LargestCurrentMa { get; init; }
}

/// <summary>The keys of a power-inserter.</summary>
public static class PowerInserterPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group, PartKeys.Supply);

    /// <summary>Power inserter: the largest current that its supply gives.</summary>
    public static readonly Key<double> LargestCurrent = Keys.Optional(
        "largest-current", new QuantityKind(Dimension.Current, 0, 5000, "mA"),
        "Power inserter: the largest current that its supply gives.");

    internal static GroupKind Group => Keys.Group;
}
