namespace InstallPacket.Jobs.Parts;

/// <summary>A surge protector.</summary>
public sealed record SurgeProtectorPart : PassivePart
{
    internal SurgeProtectorPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.SurgeProtector;
}

/// <summary>The keys of a surge-protector.</summary>
public static class SurgeProtectorPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
