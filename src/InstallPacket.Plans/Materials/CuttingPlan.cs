namespace InstallPacket.Plans.Materials;

/// <summary>How the pieces are cut from the stock.</summary>
/// <param name="Aim">What it seeks.</param>
/// <param name="KeepAboveM">Leftovers of this length and more are kept.</param>
/// <param name="Cables">One entry a kind of cable or conductor.</param>
/// <param name="Figures">Names of the figures.</param>
public sealed record CuttingPlan(CuttingAim Aim, double KeepAboveM, IReadOnlyList<CableCutPlan> Cables, IReadOnlyList<string> Figures)
{
    /// <summary>The currency as printed; empty when the job does not say.</summary>
    public string Currency { get; init; } = "";

    /// <summary>What the van holds afterwards: counted stock that was not opened, and leftovers worth keeping.</summary>
    public IReadOnlyList<VanStockPlan> VanList { get; init; } = [];
}

/// <summary>A line of the list of the van.</summary>
/// <param name="Stock">Its name in the job.</param>
/// <param name="Part">Part name.</param>
/// <param name="Name">What it is.</param>
/// <param name="Kind">What it lies on.</param>
/// <param name="PartUsed">Whether some was used.</param>
/// <param name="LengthM">What is on each.</param>
/// <param name="Count">How many.</param>
public sealed record VanStockPlan(string Stock, string Part, string Name, StockKind Kind, bool PartUsed, double LengthM, int Count);

/// <summary>One kind of cable or conductor.</summary>
/// <param name="Part">Part name.</param>
/// <param name="Name">What it is.</param>
/// <param name="By">What was made least: <c>length</c> or <c>price</c>.</param>
/// <param name="PiecesM">Pieces together.</param>
/// <param name="OpenedM">Stock opened.</param>
/// <param name="WastePct">Share of it that is not used.</param>
/// <param name="KeptM">Leftovers worth keeping.</param>
/// <param name="ScrapM">Leftovers below that.</param>
/// <param name="Proved">Whether no plan can be better.</param>
/// <param name="BoundM">By length: no plan opens less; null otherwise.</param>
/// <param name="PriceAmount">By price: that of the opened stock; null otherwise.</param>
/// <param name="BoundAmount">By price: no plan costs less; null otherwise.</param>
/// <param name="Strips">What is opened.</param>
public sealed record CableCutPlan(
    string Part, string Name, string By, double PiecesM, double OpenedM, double WastePct, double KeptM, double ScrapM, bool Proved,
        double? BoundM,
    double? PriceAmount, double? BoundAmount, IReadOnlyList<StripPlan> Strips)
{
    /// <summary>How many pieces.</summary>
    public int PieceCount { get; init; }
}

/// <summary>One opened reel, box or length.</summary>
/// <param name="Number">Its number in the plan.</param>
/// <param name="Stock">Its name in the job.</param>
/// <param name="Kind">What it lies on.</param>
/// <param name="PartUsed">Whether some was used before.</param>
/// <param name="LengthM">What is on it.</param>
/// <param name="Pieces">Pieces in the order of their numbers.</param>
/// <param name="LeftM">What is left.</param>
/// <param name="Keep">Whether that goes back to the van.</param>
/// <param name="Figure">The figure that shows it.</param>
public sealed record StripPlan(
    int Number, string Stock, StockKind Kind, bool PartUsed, double LengthM, IReadOnlyList<StripPiecePlan> Pieces, double LeftM, bool Keep,
        string Figure);

/// <summary>A piece on a strip.</summary>
public sealed record StripPiecePlan(int Number, string Run, double LengthM);
