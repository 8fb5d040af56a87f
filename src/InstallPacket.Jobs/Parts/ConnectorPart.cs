namespace InstallPacket.Jobs.Parts;

/// <summary>A connector.</summary>
public sealed record ConnectorPart : Part
{
    internal ConnectorPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        TorqueNm = g.Maybe(PartKeys.Torque)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Connector;

    /// <summary>Tightening torque [N m].</summary>
    public double? TorqueNm { get; init; }
}

/// <summary>The keys of a connector.</summary>
public static class ConnectorPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Torque);

    internal static GroupKind Group => Keys.Group;
}
