namespace InstallPacket.Calc.Materials;

/// <summary>A length of stock that pieces are cut from. Lengths are whole numbers of one small unit, so that no rounding decides.</summary>
/// <param name="Length">Its length, above 0.</param>
/// <param name="Cost">What opening one costs, not negative, in whole numbers of one unit.</param>
/// <param name="Count">How many there are; null when there are as many as needed.</param>
public sealed record CutStock(long Length, long Cost, int? Count = null);

/// <summary>What to cut from what.</summary>
/// <param name="Pieces">Lengths of the pieces, each above 0.</param>
/// <param name="Stock">The stock.</param>
/// <param name="Kerf">What each cut takes away; 0 for cable.</param>
public sealed record CuttingProblem(IReadOnlyList<long> Pieces, IReadOnlyList<CutStock> Stock, long Kerf = 0);

/// <summary>One opened length of stock and what is cut from it.</summary>
/// <param name="Stock">Index in the list of stock.</param>
/// <param name="Pieces">Indexes in the list of pieces, longest first.</param>
public sealed record CutStrip(int Stock, IReadOnlyList<int> Pieces);

/// <summary>A cutting plan.</summary>
/// <param name="Strips">What is opened; empty when no plan was found.</param>
/// <param name="Found">Whether a plan was found.</param>
/// <param name="Cost">Its cost.</param>
/// <param name="Bound">No plan costs less.</param>
/// <param name="Proved">Whether it is known that no plan is better; without a plan, that there is none.</param>
public sealed record CutResult(IReadOnlyList<CutStrip> Strips, bool Found, long Cost, long Bound, bool Proved);

/// <summary>The problem in the form that the search works on: pieces of one length are counted, longest first; the kerf is in the
/// lengths.</summary>
/// <param name="Lengths">Lengths of the kinds of piece, falling.</param>
/// <param name="Demand">How many of each.</param>
/// <param name="StockLengths">Lengths of the stock.</param>
/// <param name="Costs">Costs of the stock.</param>
/// <param name="Counts">How many there are, never more than could be used.</param>
/// <param name="Limited">Whether a count can bind.</param>
/// <param name="CostMeasure">What one unit of cost stands for.</param>
internal sealed record CutInstance(long[] Lengths, int[] Demand, long[] StockLengths, long[] Costs, int[] Counts, bool[] Limited,
    long CostMeasure)
{
    /// <summary>Whether there is one kind of stock and enough of it.</summary>
    public bool OneStock => StockLengths.Length == 1 && !Limited[0];

    public long Total(int[] demand) => demand.Select((d, i) => d * Lengths[i]).Sum();

    /// <summary>Brings a problem into this form. Lengths are divided by their common measure; what is left of a stock below it is of no
    /// use.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="reduce">Whether to divide; the bounds of the lengths as they are may be lower.</param>
    public static CutInstance Of(CuttingProblem problem, bool reduce = true)
    {
        var kinds = problem.Pieces.GroupBy(l => l).OrderByDescending(g => g.Key).ToArray();
        var lengths = kinds.Select(g => g.Key + problem.Kerf).ToArray();
        var measure = reduce ? lengths.Aggregate(Divisor) : 1;
        var money = Math.Max(1, problem.Stock.Select(s => s.Cost).Aggregate(0L, Divisor));
        return new(
            [.. lengths.Select(l => l / measure)], [.. kinds.Select(g => g.Count())],
                [.. problem.Stock.Select(s => (s.Length + problem.Kerf) / measure)],
            [.. problem.Stock.Select(s => s.Cost / money)],
                [.. problem.Stock.Select(s => Math.Min(s.Count ?? int.MaxValue, problem.Pieces.Count))],
            [.. problem.Stock.Select(s => s.Count is { } n && n < problem.Pieces.Count)], money);
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
