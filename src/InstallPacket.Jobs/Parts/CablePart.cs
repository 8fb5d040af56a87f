using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A cable.</summary>
public sealed record CablePart : Part
{
    internal CablePart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        AttenuationDbPer100M = g.Maybe(CablePartKeys.Attenuation)?.Value;
        TolerancePct = g.Maybe(CablePartKeys.Tolerance)?.Value ?? 0;
        LoopOhmPerKm = g.Maybe(CablePartKeys.LoopResistance)?.Value;
        LoopLeastOhmPerKm = g.Maybe(CablePartKeys.LoopLeast)?.Value ?? LoopOhmPerKm;
        LoopMostOhmPerKm = g.Maybe(CablePartKeys.LoopMost)?.Value ?? LoopOhmPerKm;
        DiameterM = g.Maybe(PartKeys.Diameter)?.Value;
        BendRadiusM = g.Maybe(CablePartKeys.BendRadius)?.Value;
        Connector = g.Maybe(CablePartKeys.Connector)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Cable;

    /// <summary>Loss [dB/100 m] at 20 C.</summary>
    public FrequencyCurve? AttenuationDbPer100M { get; init; }

    /// <summary>How far its loss may lie off the table [%].</summary>
    public double TolerancePct { get; init; }

    /// <summary>Resistance of both conductors in series [ohm/km].</summary>
    public double? LoopOhmPerKm { get; init; }

    /// <summary>The least that this resistance may be [ohm/km]; the same where the kind of cable is known.</summary>
    public double? LoopLeastOhmPerKm { get; init; }

    /// <summary>The most that it may be [ohm/km]; the same where the kind of cable is known.</summary>
    public double? LoopMostOhmPerKm { get; init; }

    /// <summary>The key that states the least.</summary>
    public Key LoopLeastKey => LoopLeastOhmPerKm == LoopOhmPerKm ? CablePartKeys.LoopResistance : CablePartKeys.LoopLeast;

    /// <summary>The key that states the most.</summary>
    public Key LoopMostKey => LoopMostOhmPerKm == LoopOhmPerKm ? CablePartKeys.LoopResistance : CablePartKeys.LoopMost;

    /// <summary>Outside diameter [m].</summary>
    public double? DiameterM { get; init; }

    /// <summary>Smallest bend radius [m].</summary>
    public double? BendRadiusM { get; init; }

    /// <summary>The connector that fits.</summary>
    public string? Connector { get; init; }
}

/// <summary>The keys of a cable.</summary>
public static class CablePartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Diameter);

    /// <summary>Cable: loss per length at 20 C.</summary>
    public static readonly Key<FrequencyCurve> Attenuation = Keys.Optional(
        "attenuation", new CurveKind(Dimension.Attenuation, 0, 300, "dB/100 m"), "Cable: loss per length at 20 C.");

    /// <summary>Cable: how far its loss may lie off the table, for cable of unknown kind or age.</summary>
    public static readonly Key<double> Tolerance = Keys.Optional(
        "tolerance", new QuantityKind(Dimension.Share, 0, 100, "%"),
        "Cable: how far its loss may lie off the table, for cable of unknown kind or age.");

    /// <summary>Cable: resistance of centre conductor and shield in series, for the supply of an amplifier.</summary>
    public static readonly Key<double> LoopResistance = Keys.Optional(
        "loop-resistance", new QuantityKind(Dimension.LoopResistance, 0, 2000, "ohm/km"),
        "Cable: resistance of centre conductor and shield in series, for the supply of an amplifier.");

    /// <summary>Cable of unknown kind: the least that its loop resistance may be.</summary>
    public static readonly Key<double> LoopLeast = Keys.Optional(
        "loop-resistance-least", new QuantityKind(Dimension.LoopResistance, 0, 2000, "ohm/km"),
        "Cable of unknown kind: the least that its loop resistance may be; `loop-resistance` when absent.");

    /// <summary>Cable of unknown kind: the most that its loop resistance may be.</summary>
    public static readonly Key<double> LoopMost = Keys.Optional(
        "loop-resistance-most", new QuantityKind(Dimension.LoopResistance, 0, 2000, "ohm/km"),
        "Cable of unknown kind: the most that its loop resistance may be, with which the supply of an amplifier is calculated; "
        + "`loop-resistance` when absent.");

    /// <summary>Cable: smallest bend radius at rest, to the axis.</summary>
    public static readonly Key<double> BendRadius = Keys.Optional(
        "bend-radius", new QuantityKind(Dimension.Length, 0.001, 1, "m"), "Cable: smallest bend radius at rest, to the axis.");

    /// <summary>Cable: the connector that fits it.</summary>
    public static readonly Key<string> Connector = Keys.Optional(
        "connector", new ReferenceKind(ReferenceTarget.Part, PartKind.Connector), "Cable: the connector that fits it.");

    internal static GroupKind Group => Keys.Group;
}
