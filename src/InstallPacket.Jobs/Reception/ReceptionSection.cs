using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Reception;

/// <summary>What to receive.</summary>
public sealed record ReceptionSection(
    IReadOnlyList<Station> Stations,
    IReadOnlyList<Sourced<string>> Want,
    Length Within,
    Sourced<Bearing>? Aim,
    Gain Reserve,
    Gain Multipath,
    SourceSpan At)
{
    /// <summary>Chance of reception that wanted stations should have [%].</summary>
    public double ChancePct { get; init; } = 90;

    /// <summary>Share of the time for which a channel must come in [%]; null where the code family says it.</summary>
    public double? TimePct { get; init; }

    /// <summary>Where <c>want</c> is written.</summary>
    public SourceSpan WantAt { get; init; } = At;
}
