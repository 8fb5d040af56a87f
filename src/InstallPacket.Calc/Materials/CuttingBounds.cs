using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Materials;

/// <summary>Lower bounds of the cost of a cutting plan.</summary>
public static class CuttingBounds
{
    private const int MostSteps = 4000;

    /// <summary>The least stock that the sum of the pieces asks for.</summary>
    public static readonly Formula CoverFormula = new(
        "cutting-cover-bound",
        "Least cost of stock that is as long as all pieces together",
        "B = min sum c n, over n with sum L n >= sum l",
        new("B", "", "bound of the cost"), [new("sum l", "m", "pieces together, with the kerf")],
        "cutting-notes", "continuous bound, whole lengths of stock", Provenance.Derived);

    /// <summary>The bound that looks at pieces longer than half a stock.</summary>
    public static readonly Formula LongPiecesFormula = new(
        "cutting-long-pieces-bound",
        "Least number of stock lengths, with an eye on the long pieces (L2 of Martello and Toth)",
        "L2 = max over a of |J1| + |J2| + max(0, ceiling((sum J3 - (|J2| L - sum J2)) / L))",
        new("L2", "", "stock lengths"), [new("L", "m", "stock length"), new("n", "", "pieces")],
        "cutting-notes", "section on bounds", Provenance.Memory);

    /// <summary>The bound L2 for one kind of stock, kerf included in all lengths.</summary>
    /// <param name="lengths">Lengths of the kinds of piece, falling.</param>
    /// <param name="demand">How many of each.</param>
    /// <param name="stock">Length of the stock.</param>
    /// <returns>No plan opens fewer.</returns>
    public static long LongPieces(IReadOnlyList<long> lengths, IReadOnlyList<int> demand, long stock)
    {
        long best = 0;
        for (var t = -1; t < lengths.Count; t++)
        {
            if (t >= 0 && (demand[t] == 0 || 2 * lengths[t] > stock)) continue;
            best = Math.Max(best, WithThreshold(lengths, demand, stock, t < 0 ? 0 : lengths[t]));
        }
        return best;
    }

    private static long WithThreshold(IReadOnlyList<long> lengths, IReadOnlyList<int> demand, long stock, long threshold)
    {
        long alone = 0, halves = 0, halvesSum = 0, small = 0;
        for (var i = 0; i < lengths.Count; i++)
        {
            if (lengths[i] > stock - threshold) alone += demand[i];
            else if (2 * lengths[i] > stock) (halves, halvesSum) = (halves + demand[i], halvesSum + demand[i] * lengths[i]);
            else if (lengths[i] >= threshold) small += demand[i] * lengths[i];
        }
        return alone + halves + Math.Max(0, RatioUp(small - (halves * stock - halvesSum), stock));
    }

    /// <summary>The least cost of stock as long as a sum; <see cref="long.MaxValue"/> when there is not enough.</summary>
    internal static long Cover(CutInstance instance, long needed, int[] counts)
    {
        // By cost of a unit of length, cheapest first.
        var order = Enumerable.Range(0, counts.Length).Where(s => counts[s] > 0 && instance.StockLengths[s] > 0)
            .OrderBy(s => (double)instance.Costs[s] / instance.StockLengths[s]).ToArray();
        var best = long.MaxValue;
        var steps = 0;
        var cut = false;
        void Choose(int at, long open, long cost)
        {
            if (open <= 0) { best = Math.Min(best, cost); return; }
            if (at == order.Length) return;
            if (++steps > MostSteps) { cut = true; return; }
            var s = order[at];
            // No later stock is cheaper by length, so this is a floor of what is still to pay.
            if (best < long.MaxValue && cost + RatioUp(open * instance.Costs[s], instance.StockLengths[s]) >= best) return;
            for (var n = Math.Min(counts[s], RatioUp(open, instance.StockLengths[s])); n >= 0; n--)
                Choose(at + 1, open - n * instance.StockLengths[s], cost + n * instance.Costs[s]);
        }
        Choose(0, needed, 0);
        if (!cut) return best;
        return order.Length == 0 ? long.MaxValue : RatioUp(needed * instance.Costs[order[0]], instance.StockLengths[order[0]]);
    }

    /// <summary>All bounds that are quick to have.</summary>
    internal static long Quick(CutInstance instance, int[] demand, int[] counts)
    {
        var cover = Cover(instance, instance.Total(demand), counts);
        return instance.OneStock ? Math.Max(cover, LongPieces(instance.Lengths, demand, instance.StockLengths[0]) * instance.Costs[0])
            : cover;
    }

    internal static long RatioUp(long a, long b) => a <= 0 ? 0 : (a + b - 1) / b;
}
