using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A screw, an anchor, a bolt or a clamp.</summary>
public sealed record FixingPart : Part
{
    internal FixingPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        Form = g.Maybe(FixingPartKeys.Form)?.Value;
        DiameterM = g.Maybe(PartKeys.Diameter)?.Value;
        LengthM = g.Maybe(PartKeys.Length)?.Value;
        ThreadM = g.Maybe(FixingPartKeys.Thread)?.Value;
        TorqueNm = g.Maybe(PartKeys.Torque)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Fixing;

    /// <summary>What it is; null when not stated.</summary>
    public FixingForm? Form { get; init; }

    /// <summary>Outside diameter [m].</summary>
    public double? DiameterM { get; init; }

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }

    /// <summary>Length of its thread [m].</summary>
    public double? ThreadM { get; init; }

    /// <summary>Tightening torque [N m].</summary>
    public double? TorqueNm { get; init; }
}

/// <summary>The keys of a fixing.</summary>
public static class FixingPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Diameter, PartKeys.Length, PartKeys.Torque);

    /// <summary>Fixing: what it is; a clamp holds the antenna to the mast and bears nothing else.</summary>
    public static readonly Key<FixingForm> Form = Keys.Optional(
        "form", new WordKind<FixingForm>(), "Fixing: what it is; a clamp holds the antenna to the mast and bears nothing else.");

    /// <summary>Screw: length of its thread, tip included; of a lag screw the standard length counts when absent.</summary>
    public static readonly Key<double> Thread = Keys.Optional(
        "thread", new QuantityKind(Dimension.Length, 0.005, 0.5, "m"),
        "Screw: length of its thread, tip included; of a lag screw the standard length counts when absent.");

    internal static GroupKind Group => Keys.Group;
}
