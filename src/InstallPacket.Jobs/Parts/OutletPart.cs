using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>An outlet; with several outputs it passes on.</summary>
public sealed record OutletPart : DividerPart
{
    internal OutletPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        LeastLevel = Dbm(g.Maybe(PartKeys.LeastLevel));
        LargestLevel = Dbm(g.Maybe(PartKeys.LargestLevel));
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Outlet;

    /// <summary>Lowest level it is made for.</summary>
    public Level? LeastLevel { get; init; }

    /// <summary>Highest level it is made for.</summary>
    public Level? LargestLevel { get; init; }
}

/// <summary>The keys of an outlet.</summary>
public static class OutletPartKeys
{
    private static readonly KeyList Keys = new(DividerKeys.Group, PartKeys.LeastLevel, PartKeys.LargestLevel);

    internal static GroupKind Group => Keys.Group;
}
