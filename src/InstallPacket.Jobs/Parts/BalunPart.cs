namespace InstallPacket.Jobs.Parts;

/// <summary>A balun.</summary>
public sealed record BalunPart : PassivePart
{
    internal BalunPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Balun;
}

/// <summary>The keys of a balun.</summary>
public static class BalunPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
