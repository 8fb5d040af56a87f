using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Materials;

/// <summary>What the van and the shop have, what it costs, who works.</summary>
/// <param name="At">Where it is written.</param>
public sealed record MaterialsSection(SourceSpan At)
{
    /// <summary>What there is to cut from.</summary>
    public IReadOnlyList<StockLength> Stock { get; init; } = [];

    /// <summary>What the cutting plan seeks.</summary>
    public CuttingAim Aim { get; init; }

    /// <summary>Where <c>aim</c> is written.</summary>
    public SourceSpan AimAt { get; init; } = At;

    /// <summary>Leftovers of this length and more are kept.</summary>
    public Length KeepAbove { get; init; } = Length.FromMetres(3);

    /// <summary>The currency as printed, or null.</summary>
    public string? Currency { get; init; }

    /// <summary>Prices of this job, by part.</summary>
    public IReadOnlyList<NamedNumber> Prices { get; init; } = [];

    /// <summary>Spare shares [%], by part.</summary>
    public IReadOnlyList<NamedNumber> Spares { get; init; } = [];

    /// <summary>Tax on top [%], or null.</summary>
    public double? TaxPct { get; init; }

    /// <summary>What the customer provides.</summary>
    public IReadOnlyList<string> CustomerSupplies { get; init; } = [];

    /// <summary>How many people work.</summary>
    public int Crew { get; init; } = 2;

    /// <summary>Person-hours of this job, by task.</summary>
    public IReadOnlyList<NamedNumber> Hours { get; init; } = [];

    /// <summary>Tools to bring besides.</summary>
    public IReadOnlyList<Sourced<string>> Tools { get; init; } = [];
}

/// <summary>A length of cable or conductor to cut from.</summary>
/// <param name="Name">Its name in the job.</param>
/// <param name="Cable">What it is.</param>
/// <param name="Kind">What it lies on.</param>
/// <param name="Length">How much is on it.</param>
/// <param name="Count">How many there are; null when as many as needed.</param>
/// <param name="PartUsed">Whether some was used before.</param>
/// <param name="Price">What one costs, or null.</param>
/// <param name="At">Where it is written.</param>
public sealed record StockLength(string Name, Part Cable, StockKind Kind, Length Length, int? Count, bool PartUsed, double? Price,
    SourceSpan At);

/// <summary>A number under a name of the author.</summary>
public sealed record NamedNumber(string Name, double Value, SourceSpan At);

/// <summary>A part that no other section asks for.</summary>
public sealed record ExtraPart(Part Part, int Count, string For);
