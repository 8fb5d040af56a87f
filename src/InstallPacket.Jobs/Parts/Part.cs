using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>
/// A generic part of the library. What all kinds have stands here; each kind adds the figures of its own. A figure that the part does
/// not state is null: unknown, never a friendly default.
/// </summary>
public abstract record Part
{
    private protected Part(Entry<CheckedGroup> entry)
    {
        var g = entry.Value;
        Id = entry.Name;
        At = entry.At;
        Name = g.Get(PartKeys.Name);
        Role = g.Maybe(PartKeys.Role)?.Value;
        ByLength = g.Get(PartKeys.Unit) == SoldBy.Length;
        Price = g.Maybe(PartKeys.Price)?.Value;
        Pack = g.Maybe(PartKeys.Pack)?.Value;
        SparePct = g.Maybe(PartKeys.Spare)?.Value;
        Provenance = g.Entries(PartKeys.Provenance).ToDictionary(e => e.Name, e => new FigureSource(e.Value), StringComparer.Ordinal);
    }

    /// <summary>Its name in the library.</summary>
    public string Id { get; init; }

    /// <summary>What it is.</summary>
    public abstract PartKind Kind { get; }

    /// <summary>What to ask for in a shop.</summary>
    public string Name { get; init; }

    /// <summary>What the plan uses it for by itself; null for what a job names.</summary>
    public PartRole? Role { get; init; }

    /// <summary>Whether it is bought by length.</summary>
    public bool ByLength { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan At { get; init; }

    /// <summary>How each figure is known, by the name of its key.</summary>
    public IReadOnlyDictionary<string, FigureSource> Provenance { get; init; }

    /// <summary>Price of a piece or a metre, in the currency of the firm.</summary>
    public double? Price { get; init; }

    /// <summary>How many are sold together; null when by the piece.</summary>
    public int? Pack { get; init; }

    /// <summary>How many more to bring [%]; null when the part states none.</summary>
    public double? SparePct { get; init; }

    /// <summary>The mark word of a figure's provenance; <c>unknown</c> without one.</summary>
    /// <param name="figure">The key of the figure.</param>
    public string ProvenanceOf(Key figure) => Provenance.TryGetValue(figure.Name, out var source) ? source.Word : "unknown";

    private protected static Level? Dbm(Sourced<double>? dbm) => dbm is { } level ? Level.FromDbm(level.Value) : null;
}
