using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A mast tube.</summary>
public sealed record MastPart : Part
{
    internal MastPart(Entry<CheckedGroup> entry) : this(entry, entry.Value)
    {
    }

    /// <summary>The mast that comes with a mount.</summary>
    internal MastPart(Entry<CheckedGroup> entry, CheckedGroup g) : base(entry)
    {
        DiameterM = g.Maybe(PartKeys.Diameter)?.Value;
        WallM = g.Maybe(MastPartKeys.Wall)?.Value;
        Material = g.Maybe(MastPartKeys.Material)?.Value;
        LengthM = g.Maybe(PartKeys.Length)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Mast;

    /// <summary>Outside diameter [m].</summary>
    public double? DiameterM { get; init; }

    /// <summary>Wall of the tube [m].</summary>
    public double? WallM { get; init; }

    /// <summary>Material of the tube; null when unknown.</summary>
    public string? Material { get; init; }

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }
}

/// <summary>The keys of a mast.</summary>
public static class MastPartKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common, PartKeys.Diameter, PartKeys.Length);

    /// <summary>Mast: wall of the tube.</summary>
    public static readonly Key<double> Wall = Keys.Optional(
        "wall", new QuantityKind(Dimension.Length, 0.0005, 0.02, "m"), "Mast: wall of the tube.");

    /// <summary>Mast: material of the tube; steel of which nothing is known when absent.</summary>
    // A row of the table of tube materials, which gives strength and density.
    public static readonly Key<string> Material = Keys.Optional(
        "material", new TableWordKind([.. MastTubes.Materials.Select(m => m.Word)]),
        "Mast: material of the tube; steel of which nothing is known when absent.");

    internal static GroupKind Group => Keys.Group;
}
