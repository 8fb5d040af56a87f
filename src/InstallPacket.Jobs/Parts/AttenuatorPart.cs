namespace InstallPacket.Jobs.Parts;

/// <summary>An attenuator.</summary>
public sealed record AttenuatorPart : PassivePart
{
    internal AttenuatorPart(Entry<CheckedGroup> entry) : base(entry)
    {
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Attenuator;
}

/// <summary>The keys of an attenuator.</summary>
public static class AttenuatorPartKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    internal static GroupKind Group => Keys.Group;
}
