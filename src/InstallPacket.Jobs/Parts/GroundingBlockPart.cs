namespace InstallPacket.Jobs.Parts;

/// <summary>A grounding block.</summary>
public sealed record GroundingBlockPart : PassivePart
{
    internal GroundingBlockPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.GroundingBlock;
}

/// <summary>The keys of a grounding-block.</summary>
public static class GroundingBlockPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
