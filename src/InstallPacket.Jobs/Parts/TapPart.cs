namespace InstallPacket.Jobs.Parts;

/// <summary>A tap: its first output goes on.</summary>
public sealed record TapPart : DividerPart
{
    internal TapPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Tap;
}

/// <summary>The keys of a tap.</summary>
public static class TapPartKeys
{
    private static readonly KeyList Keys = new(DividerKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
