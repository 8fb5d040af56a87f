namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>One change that fixes a shortfall, found by planning the chain again with it. Section <c>fixes</c> of the words says what to
/// change.</summary>
/// <param name="Id">The kind of change.</param>
/// <param name="Adds">Parts that it adds, by name.</param>
/// <param name="Station">The wanted station with the smallest margin today.</param>
/// <param name="MarginDb">Its margin after the change.</param>
/// <param name="GainDb">How much that is more than today.</param>
/// <param name="Fixed">How many of today's shortfalls it fixes.</param>
/// <param name="Left">How many it leaves.</param>
public sealed record FixPlan(string Id, IReadOnlyList<string> Adds, string Station, double MarginDb, double GainDb, int Fixed, int Left)
{
    /// <summary>The element that it concerns; empty when none.</summary>
    public string Element { get; init; } = "";

    /// <summary>The run that it concerns; empty when none.</summary>
    public string Run { get; init; } = "";

    /// <summary>The part that it takes, by its id; empty when none.</summary>
    public string Part { get; init; } = "";

    /// <summary>The power inserter that goes with the part, by its id; empty when none.</summary>
    public string Inserter { get; init; } = "";

    /// <summary>The new setting of an amplifier; null when it sets none.</summary>
    public double? SetDb { get; init; }

    /// <summary>The new bearing of the antenna, true; null when it does not turn.</summary>
    public double? BearingDeg { get; init; }

    /// <summary>By how much the antenna goes up; null where it stays.</summary>
    public double? RaiseM { get; init; }

    /// <summary>What the added parts cost, in the currency of the firm; null when a price is unknown.</summary>
    public double? AddedCost { get; init; }
}

/// <summary>Where the control of an amplifier may stand.</summary>
/// <param name="Amplifier">The amplifier.</param>
/// <param name="FromDb">Lowest gain at which nothing falls short.</param>
/// <param name="ToDb">Highest gain at which nothing is overloaded.</param>
/// <param name="SetDb">What the job sets.</param>
/// <param name="Whole">Whether the window is without any shortfall; otherwise it is only the best there is.</param>
public sealed record GainWindow(string Amplifier, double FromDb, double ToDb, double SetDb, bool Whole);
