namespace InstallPacket.Jobs.Parts;

/// <summary>A guy wire.</summary>
public sealed record GuyPart : Part
{
    internal GuyPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        BreakingN = g.Maybe(PartKeys.Breaking)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Guy;

    /// <summary>Breaking strength [N].</summary>
    public double? BreakingN { get; init; }
}

/// <summary>The keys of a guy.</summary>
public static class GuyPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Breaking);

    internal static GroupKind Group => Keys.Group;
}
