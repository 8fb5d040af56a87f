using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Cabling;

/// <summary>The chain.</summary>
public sealed record CablingSection(
    ReceiverPart Receiver, CablePart FlyCable, double ColdC, double HotC, IReadOnlyList<Element> Chain, SourceSpan At)
{
    /// <summary>The antennas.</summary>
    public IEnumerable<AntennaPart> Antennas => Chain.Select(e => e.Part).OfType<AntennaPart>();

    /// <summary>Other services on this tree of cables.</summary>
    public IReadOnlyList<Sourced<SharedService>> AlsoCarries { get; init; } = [];

    /// <summary>The entry of an internet service; null when the job says nothing here.</summary>
    public ServiceEntry? Internet { get; init; }

    /// <summary>Where <c>chain</c> is written.</summary>
    public SourceSpan ChainAt { get; init; } = At;
}

/// <summary>One part in its place in the chain.</summary>
/// <param name="Id">Its name in the job.</param>
/// <param name="Part">The part.</param>
/// <param name="Point">Point of the house.</param>
/// <param name="From">What feeds it; null for the antenna.</param>
/// <param name="FromPort">Output of the feeding element, counted from 1.</param>
/// <param name="Run">Run that brings the signal; null when it is screwed on.</param>
/// <param name="Setting">Gain to set on a variable amplifier.</param>
/// <param name="Serves">What an outlet serves.</param>
/// <param name="FlyLead">Lead from outlet to receiver.</param>
/// <param name="At">Where it is written.</param>
public sealed record Element(
    string Id, ChainPart Part, string Point, string? From, int FromPort, string? Run, Gain? Setting, string? Serves, Length FlyLead,
        SourceSpan At)
{
    /// <summary>The dwelling of an outlet; null when the job does not say.</summary>
    public string? Dwelling { get; init; }

    /// <summary>Where <c>from</c> is written.</summary>
    public SourceSpan FromAt { get; init; } = At;

    /// <summary>Where <c>run</c> is written.</summary>
    public SourceSpan RunAt { get; init; } = At;

    /// <summary>Combiner: what feeds its second input, or null.</summary>
    public string? Second { get; init; }

    /// <summary>Combiner: output of the element that feeds its second input, counted from 1.</summary>
    public int SecondPort { get; init; } = 1;

    /// <summary>Combiner: run to its second input, or null.</summary>
    public string? SecondRun { get; init; }

    /// <summary>Second antenna: where it points, or null.</summary>
    public Sourced<Bearing>? Aim { get; init; }

    /// <summary>Where <c>second</c> is written.</summary>
    public SourceSpan SecondAt { get; init; } = At;

    /// <summary>What it is fixed to its place with; null when nobody says, or when it hangs there already.</summary>
    public ElementFixing? FixedWith { get; init; }

    /// <summary>Whether it is in the house already.</summary>
    public bool Existing { get; init; }

    /// <summary>Where <c>setting</c> is written.</summary>
    public SourceSpan SettingAt { get; init; } = At;
}

/// <summary>What a device is fixed to its place with.</summary>
/// <param name="Part">The fixing.</param>
/// <param name="Count">How many.</param>
public sealed record ElementFixing(FixingPart Part, int Count);
