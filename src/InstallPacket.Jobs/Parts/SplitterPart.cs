using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A splitter.</summary>
public sealed record SplitterPart : DividerPart
{
    internal SplitterPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        Outputs = g.Maybe(SplitterPartKeys.Outputs)?.Value ?? Math.Max(1, PortLossesDb.Count);
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Splitter;

    /// <inheritdoc/>
    public override int Outputs { get; }
}

/// <summary>The keys of a splitter.</summary>
public static class SplitterPartKeys
{
    private static readonly KeyList Keys = new(DividerKeys.Group);

    /// <summary>Splitter: number of outputs.</summary>
    public static readonly Key<int> Outputs = Keys.Optional("outputs", new IntegerKind(1, 16), "Splitter: number of outputs.");

    internal static GroupKind Group => Keys.Group;
}
