using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A bonding conductor, or a rod.</summary>
public sealed record BondingPart : Part
{
    internal BondingPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        Metal = g.Maybe(BondingPartKeys.Metal)?.Value;
        CrossSectionMm2 = g.Maybe(BondingPartKeys.CrossSection)?.Value;
        Gauge = g.Maybe(BondingPartKeys.Gauge)?.Value;
        LengthM = g.Maybe(PartKeys.Length)?.Value;
        DiameterM = g.Maybe(PartKeys.Diameter)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Bonding;

    /// <summary>What it is made of; null when unknown.</summary>
    public Metal? Metal { get; init; }

    /// <summary>Cross-section [mm2], when the part states it.</summary>
    public double? CrossSectionMm2 { get; init; }

    /// <summary>American wire gauge, when the part states it.</summary>
    public int? Gauge { get; init; }

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }

    /// <summary>Outside diameter [m].</summary>
    public double? DiameterM { get; init; }
}

/// <summary>The keys of a bonding.</summary>
public static class BondingPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Length, PartKeys.Diameter);

    /// <summary>Bonding conductor or rod: what it is made of.</summary>
    public static readonly Key<Metal> Metal = Keys.Optional(
        "metal", new WordKind<Metal>(), "Bonding conductor or rod: what it is made of.");

    /// <summary>Bonding conductor: cross-section of its metal.</summary>
    public static readonly Key<double> CrossSection = Keys.Optional(
        "cross-section", new QuantityKind(Dimension.Area, 0.5, 500, "mm2"), "Bonding conductor: cross-section of its metal.");

    /// <summary>Bonding conductor: American wire gauge, instead of <c>cross-section</c>; 0 is 1/0.</summary>
    public static readonly Key<int> Gauge = Keys.Optional(
        "gauge", new IntegerKind(0, 24), "Bonding conductor: American wire gauge, instead of `cross-section`; 0 is 1/0.");

    internal static GroupKind Group => Keys.Group;
}
