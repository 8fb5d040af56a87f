namespace InstallPacket.Jobs.Parts;

/// <summary>What else is needed: clips, boots, sealant, tape.</summary>
public sealed record SundryPart : Part
{
    internal SundryPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        LengthM = g.Maybe(PartKeys.Length)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Sundry;

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }
}

/// <summary>The keys of a sundry.</summary>
public static class SundryPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Length);

    internal static GroupKind Group => Keys.Group;
}
