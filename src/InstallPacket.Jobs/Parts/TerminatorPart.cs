namespace InstallPacket.Jobs.Parts;

/// <summary>A terminator.</summary>
public sealed record TerminatorPart : ChainPart
{
    internal TerminatorPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Terminator;
}

/// <summary>The keys of a terminator.</summary>
public static class TerminatorPartKeys
{
    private static readonly KeyList Keys = new(ChainKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
