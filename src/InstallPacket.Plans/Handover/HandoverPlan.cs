namespace InstallPacket.Plans.Handover;

/// <summary>What the customer is told and what the crew checks at the end.</summary>
/// <param name="ExistingInternet">Whether an internet service uses coax here.</param>
/// <param name="Words">A word to the customer.</param>
/// <param name="Scan">What a scan should find.</param>
public sealed record HandoverPlan(InternetKind ExistingInternet, string Words, IReadOnlyList<ScanRow> Scan)
{
    /// <summary>What the firm promises; empty when it says nothing.</summary>
    public string Warranty { get; init; } = "";

    /// <summary>Whether the table of outlets has a row for each outlet; otherwise it has one for each channel, which are more.</summary>
    public bool OutletsAsRows { get; init; }

    /// <summary>The work, step by step.</summary>
    public IReadOnlyList<WorkStep> Steps { get; init; } = [];
}

/// <summary>What a scan should find of one wanted channel.</summary>
/// <param name="Station">The station.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="ShowsAs">The number that the viewer sees.</param>
/// <param name="RfChannel">RF channel.</param>
/// <param name="FrequencyMhz">Centre frequency.</param>
/// <param name="LowestDbm">Lowest expected level among the outlets.</param>
/// <param name="HighestDbm">Highest expected level among the outlets.</param>
/// <param name="WorstOutlet">Outlet with the smallest margin.</param>
/// <param name="WorstMarginDb">That margin.</param>
/// <param name="WorstChancePct">Least chance of reception among the outlets.</param>
/// <param name="ChanceWord">That chance in a word.</param>
/// <param name="Verdict"><c>steady</c>, <c>thin</c>, <c>short</c>, <c>strong</c> or <c>unseen</c> (steady if no hill stands between): the worst of its outlets.</param>
public sealed record ScanRow(
    string Station, string Name, string ShowsAs, int RfChannel, double FrequencyMhz, double LowestDbm, double HighestDbm,
        string WorstOutlet,
    double WorstMarginDb, double WorstChancePct, string ChanceWord, string Verdict)
{
    /// <summary>Whether it has the smallest margin of all wanted channels.</summary>
    public bool Weakest { get; init; }

    /// <summary>How the ground toward the station is known: the whole <c>path</c>, the <c>skyline</c> before the house alone, or <c>nothing</c>.</summary>
    public string Ground { get; init; } = "path";

    /// <summary>The site it comes from.</summary>
    public string Site { get; init; } = "";

    /// <summary>Other wanted stations of the same site, by name.</summary>
    public IReadOnlyList<string> SameSite { get; init; } = [];

    /// <summary>Level at the antenna's terminals, the first test point.</summary>
    public double TerminalsDbm { get; init; }

    /// <summary>What to expect at each outlet.</summary>
    public IReadOnlyList<ScanOutlet> Outlets { get; init; } = [];
}

/// <summary>One wanted channel at one outlet.</summary>
/// <param name="Outlet">The outlet.</param>
/// <param name="LevelDbm">Expected level.</param>
/// <param name="MarginDb">Margin.</param>
/// <param name="ChancePct">Chance of reception.</param>
public sealed record ScanOutlet(string Outlet, double LevelDbm, double MarginDb, double ChancePct);
