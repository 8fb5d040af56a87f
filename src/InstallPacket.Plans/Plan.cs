using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>Everything computed from a job. Names of numbers end in their unit; <c>plan.json</c> carries the same names.</summary>
public sealed record Plan
{
    /// <summary>What job it is.</summary>
    public required JobFacts Job { get; init; }

    /// <summary>Place, bearings, compass.</summary>
    public required SitingPlan Siting { get; init; }

    /// <summary>Stations, field strength, aim.</summary>
    public required ReceptionPlan Reception { get; init; }

    /// <summary>Levels and margins from the antenna to every outlet.</summary>
    public required CablingPlan Cabling { get; init; }

    /// <summary>Runs and their lengths.</summary>
    public required RoutingPlan Routing { get; init; }

    /// <summary>Mount, ladder, clearances.</summary>
    public required MountingPlan Mounting { get; init; }

    /// <summary>Bonding conductors and rules.</summary>
    public required BondingPlan Bonding { get; init; }

    /// <summary>What to buy and cut.</summary>
    public required MaterialsPlan Materials { get; init; }

    /// <summary>What the customer is told.</summary>
    public required HandoverPlan Handover { get; init; }

    /// <summary>All findings of reading and planning.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Every computed number with its equation and inputs, in the order of computation.</summary>
    public required IReadOnlyList<Row> Workings { get; init; }

    /// <summary>Whether the plan must not be installed.</summary>
    public bool Stopped => Findings.Any(f => f.Severity == Severity.Stop);

    /// <summary>What the plan is good for: <c>planned</c>; <c>stopped</c>, not to be installed so; <c>study</c>, not surveyed.</summary>
    public string State => Stopped ? "stopped" : Job.Study ? "study" : "planned";
}

/// <summary>What job it is.</summary>
public sealed record JobFacts(
    string Id, string Title, DateOnly Date, string Code, string? CodeName, UnitFamily Units, PaperSize Paper, LevelUnit LevelUnit,
        string Language, Party PreparedBy, Party Customer)
{
    /// <summary>Whether it is a desk study: nobody was there yet.</summary>
    public bool Study { get; init; }
}
