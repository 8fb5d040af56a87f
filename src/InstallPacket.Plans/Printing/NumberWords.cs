namespace InstallPacket.Plans.Printing;

/// <summary>The signs and words of a language that stand in numbers. Findings use <see cref="Default"/>; pages use those of their
/// language.</summary>
public sealed record NumberWords
{
    /// <summary>English signs.</summary>
    public static readonly NumberWords Default = new();

    /// <summary>The sign before decimals.</summary>
    public string Decimal { get; init; } = ".";

    /// <summary>The sign of negative numbers.</summary>
    public string Minus { get; init; } = "\u2212";

    /// <summary>What stands for a number that nobody knows.</summary>
    public string Unknown { get; init; } = "unknown";

    /// <summary>A chance of 99 per cent and more.</summary>
    public string Over99 { get; init; } = "over 99 %";

    /// <summary>A chance below one per cent.</summary>
    public string Under1 { get; init; } = "under 1 %";

    /// <summary>Letters of coordinates: north, south, east, west.</summary>
    public IReadOnlyList<string> Letters { get; init; } = ["N", "S", "E", "W"];

    /// <summary>The word of a unit by its sign in the plan, such as <c>ft</c>.</summary>
    public Func<string, string> Unit { get; init; } = unit => unit;
}
