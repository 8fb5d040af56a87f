namespace InstallPacket.Jobs.Parts;

/// <summary>A filter.</summary>
public sealed record FilterPart : PassivePart
{
    internal FilterPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Filter;
}

/// <summary>The keys of a filter.</summary>
public static class FilterPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
