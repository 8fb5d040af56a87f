namespace InstallPacket.Plans.Cabling.Cures;

/// <summary>One change that mends a shortfall, found by planning the chain again with it.</summary>
/// <param name="What">The change in words.</param>
/// <param name="Adds">Parts that it adds, by name.</param>
/// <param name="Station">The wanted station with the smallest margin today.</param>
/// <param name="MarginDb">Its margin after the change.</param>
/// <param name="GainDb">How much that is more than today.</param>
/// <param name="Mends">How many of today's shortfalls it mends.</param>
/// <param name="Leaves">How many it leaves.</param>
public sealed record CurePlan(string What, IReadOnlyList<string> Adds, string Station, double MarginDb, double GainDb, int Mends, int Leaves)
{
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
