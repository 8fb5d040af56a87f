namespace InstallPacket.Plans.Materials;

/// <summary>What to buy and cut.</summary>
/// <param name="Pieces">Pieces to cut, numbered as on the sketch; fly leads and bonding conductors take the numbers behind.</param>
/// <param name="Items">Parts and fixings.</param>
/// <param name="Figures">How the figures of those parts are known.</param>
public sealed record MaterialsPlan(IReadOnlyList<PiecePlan> Pieces, IReadOnlyList<ItemPlan> Items, IReadOnlyList<PartFigure> Figures)
{
    /// <summary>How the pieces are cut from the stock; null when the job states none.</summary>
    public CuttingPlan? Cutting { get; init; }

    /// <summary>Sheets of cable labels.</summary>
    public IReadOnlyList<LabelSheetPlan> LabelSheets { get; init; } = [];

    /// <summary>Tools that the plan calls for.</summary>
    public IReadOnlyList<ToolPlan> Tools { get; init; } = [];

    /// <summary>What the materials cost; null when the job states no prices.</summary>
    public CostPlan? Cost { get; init; }

    /// <summary>Rough hours.</summary>
    public required TimePlan Time { get; init; }

    /// <summary>What the customer provides.</summary>
    public IReadOnlyList<string> CustomerSupplies { get; init; } = [];
}

/// <summary>A figure of a part that the plan used, and how it is known.</summary>
public sealed record PartFigure(string Part, string Name, string Figure, string Provenance);

/// <summary>A piece of cable or conductor.</summary>
public sealed record PiecePlan(int Number, string Run, string Cable, string CableName, double LengthM, string From, string To)
{
    /// <summary>What it is for.</summary>
    public PieceKind Kind { get; init; }
}

/// <summary>What a piece is for.</summary>
public enum PieceKind
{
    /// <summary>A run.</summary>
    Run,

    /// <summary>A lead from an outlet to its receiver.</summary>
    FlyLead,

    /// <summary>A bonding conductor.</summary>
    Bonding,

    /// <summary>A guy.</summary>
    Guy,
}

/// <summary>A sheet of labels.</summary>
/// <param name="Figure">Name of the figure.</param>
/// <param name="First">First piece, counted from 1.</param>
/// <param name="Count">Pieces on it.</param>
public sealed record LabelSheetPlan(string Figure, int First, int Count);

/// <summary>A line of the parts list.</summary>
/// <param name="Part">Part name.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Count">Pieces; null when bought by length.</param>
/// <param name="LengthM">Length; null when bought by the piece.</param>
/// <param name="For">What it is for.</param>
public sealed record ItemPlan(string Part, string Name, PartKind Kind, int? Count, double? LengthM, string For)
{
    /// <summary>Spare share of the part; null when it states none.</summary>
    public double? SparePct { get; init; }

    /// <summary>How many are sold together; null when by the piece.</summary>
    public int? PackCount { get; init; }

    /// <summary>Whole packs to bring; null when not sold in packs.</summary>
    public int? Packs { get; init; }

    /// <summary>Pieces to bring, with spares and in whole packs; null when bought by length.</summary>
    public int? BringCount { get; init; }
}

/// <summary>A tool to bring.</summary>
/// <param name="Id">Its name in the table of tools; section <c>tools</c> of the words says what it is.</param>
/// <param name="Why">What calls for it.</param>
public sealed record ToolPlan(string Id, string Why)
{
    /// <summary>A size that it must have, for example the diameter of a drill.</summary>
    public double? SizeM { get; init; }

    /// <summary>A length that it must have, for example of a ladder.</summary>
    public double? LengthM { get; init; }

    /// <summary>Lowest torque that it must set.</summary>
    public double? LowestTorqueNm { get; init; }

    /// <summary>Highest torque that it must set.</summary>
    public double? HighestTorqueNm { get; init; }
}

/// <summary>What the materials cost.</summary>
/// <param name="Currency">The currency as printed; empty when the job does not say.</param>
/// <param name="Lines">Parts with a price.</param>
/// <param name="NetAmount">Their sum.</param>
/// <param name="TaxPct">Tax; null when the job states none.</param>
/// <param name="TaxAmount">The tax.</param>
/// <param name="TotalAmount">Sum with tax.</param>
/// <param name="Unpriced">Parts without a price, which are not in the sum.</param>
public sealed record CostPlan(
    string Currency, IReadOnlyList<CostLine> Lines, double NetAmount, double? TaxPct, double TaxAmount, double TotalAmount,
        IReadOnlyList<string> Unpriced);

/// <summary>A part with its price.</summary>
public sealed record CostLine(string Part, string Name, int? Count, double? LengthM, double UnitAmount, double LineAmount);

/// <summary>Rough hours.</summary>
/// <param name="Crew">How many people work.</param>
/// <param name="Tasks">By task.</param>
/// <param name="PersonH">Together.</param>
/// <param name="ClockH">By the clock.</param>
/// <param name="OutdoorClockH">Of that outdoors.</param>
/// <param name="DaylightH">Daylight of the day of work.</param>
public sealed record TimePlan(int Crew, IReadOnlyList<TaskPlan> Tasks, double PersonH, double ClockH, double OutdoorClockH,
    double DaylightH)
{
    /// <summary>Person-hours outdoors.</summary>
    public double OutdoorPersonH { get; init; }
}

/// <summary>A task.</summary>
/// <param name="Id">Its name in the table of hours; section <c>tasks</c> of the words says what is done.</param>
/// <param name="Per">What is counted.</param>
/// <param name="Count">How often; null when it goes by length.</param>
/// <param name="LengthM">Length of cable; null when it is counted.</param>
/// <param name="EachH">Hours for each, or for the length of <paramref name="PerLengthM"/>.</param>
/// <param name="PerLengthM">A round length in the units of the job; null when it is counted.</param>
/// <param name="PersonH">Person-hours.</param>
/// <param name="Outdoors">Whether it needs daylight and weather.</param>
/// <param name="Provenance">How the hours are known.</param>
public sealed record TaskPlan(string Id, string Per, int? Count, double? LengthM, double EachH, double? PerLengthM, double PersonH,
    bool Outdoors, string Provenance);
