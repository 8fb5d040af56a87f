using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs;

/// <summary>What the author wrote, checked and with every reference resolved.</summary>
public sealed record Job
{
    /// <summary>The job's name: its folder.</summary>
    public required string Id { get; init; }

    /// <summary>Path of the job file below the jobs folder.</summary>
    public required string File { get; init; }

    /// <summary>One line.</summary>
    public required string Title { get; init; }

    /// <summary>Planned day of work.</summary>
    public required Sourced<DateOnly> Date { get; init; }

    /// <summary>Code family: <c>us</c> or <c>eu</c>.</summary>
    public required string Code { get; init; }

    /// <summary>Units to print.</summary>
    public required UnitFamily Units { get; init; }

    /// <summary>Paper of the PDF.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Unit of levels.</summary>
    public required LevelUnit LevelUnit { get; init; }

    /// <summary>BCP 47 tag of the language of the packet; null for that of the code family.</summary>
    public string? Language { get; init; }

    /// <summary>The firm.</summary>
    public required Party PreparedBy { get; init; }

    /// <summary>The customer.</summary>
    public required Party Customer { get; init; }

    /// <summary>Where.</summary>
    public required SitingSection Siting { get; init; }

    /// <summary>What to receive.</summary>
    public required ReceptionSection Reception { get; init; }

    /// <summary>The chain.</summary>
    public required CablingSection Cabling { get; init; }

    /// <summary>The route.</summary>
    public required RoutingSection Routing { get; init; }

    /// <summary>The mount.</summary>
    public required MountingSection Mounting { get; init; }

    /// <summary>The bonding.</summary>
    public required BondingSection Bonding { get; init; }

    /// <summary>Extra materials.</summary>
    public required IReadOnlyList<ExtraPart> Extras { get; init; }

    /// <summary>Stock, prices, crew.</summary>
    public MaterialsSection Materials { get; init; } = new(default);

    /// <summary>Parts of this job alone; they go before those of the library.</summary>
    public IReadOnlyList<Part> OwnParts { get; init; } = [];

    /// <summary>Whether nobody was there yet: route, mount and bonding are those of a usual house and mean nothing.</summary>
    public bool IsStudy { get; init; }

    /// <summary>Words for the customer.</summary>
    public required HandoverSection Handover { get; init; }

    /// <summary>Whether an internet service uses coax in the house, wherever the job says so.</summary>
    public InternetKind Internet => Cabling.Internet switch
    {
        null => Handover.ExistingInternet,
        { Unit: ServiceUnit.None } => InternetKind.None,
        { Over: ServiceLine.Coax } => InternetKind.Coax,
        _ => InternetKind.Other,
    };
}
