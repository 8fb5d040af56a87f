namespace InstallPacket.Calc.Materials;

/// <summary>Depth-first search that completes one length of stock after the other (bin completion), best looking filling first.</summary>
/// <param name="instance">The problem.</param>
/// <param name="mostNodes">Where it stops.</param>
internal sealed class CuttingSearch(CutInstance instance, int mostNodes)
{
    private const int MostFillings = 3000;
    private readonly CuttingFillings _fillings = new(instance, MostFillings);
    private readonly Dictionary<string, long> _seen = new(StringComparer.Ordinal);
    private readonly List<Filling> _open = [];
    private int _nodes;
    private long _target;

    /// <summary>The best plan so far, or null.</summary>
    public IReadOnlyList<Filling>? Best { get; private set; }

    public long BestCost { get; private set; } = long.MaxValue;

    /// <summary>Whether everything was looked at, so that the best plan is proved best.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>Searches; stops early at a plan that costs no more than the target.</summary>
    /// <param name="demand">Pieces to cut.</param>
    /// <param name="counts">Stock that is left.</param>
    /// <param name="target">A lower bound of the cost.</param>
    /// <param name="below">Only plans cheaper than this are of interest.</param>
    public void Run(int[] demand, int[] counts, long target, long below = long.MaxValue)
    {
        _target = target;
        BestCost = below;
        Descend((int[])demand.Clone(), (int[])counts.Clone(), 0);
    }

    // The first plan may take longer: one that is not best is better than none.
    private int Limit => Best is null && BestCost == long.MaxValue ? 4 * mostNodes : mostNodes;

    private void Descend(int[] demand, int[] counts, long cost)
    {
        var first = Array.FindIndex(demand, d => d > 0);
        if (first < 0)
        {
            if (cost < BestCost) (Best, BestCost) = ([.. _open], cost);
            return;
        }
        if (++_nodes + _fillings.Steps / 8 > Limit) { Complete = false; return; }
        var bound = CuttingBounds.Quick(instance, demand, counts);
        if (bound == long.MaxValue || cost + bound >= BestCost || Known(demand, counts, cost)) return;
        foreach (var filling in Candidates(demand, counts, first))
        {
            Change(demand, counts, filling, -1);
            _open.Add(filling);
            Descend(demand, counts, cost + instance.Costs[filling.Stock]);
            _open.RemoveAt(_open.Count - 1);
            Change(demand, counts, filling, 1);
            if (BestCost <= _target) break;
        }
    }

    // Least cost for each unit of length that is used, then least left over, then the longer pieces.
    private IEnumerable<Filling> Candidates(int[] demand, int[] counts, int first)
    {
        var all = new List<Filling>();
        for (var s = 0; s < counts.Length; s++)
        {
            if (counts[s] == 0 || instance.StockLengths[s] < instance.Lengths[first]) continue;
            all.AddRange(_fillings.Of(s, demand, first));
            Complete &= _fillings.Complete;
        }
        return all.Select((f, i) => (Filling: f, At: i))
            .OrderBy(f => (double)instance.Costs[f.Filling.Stock] / f.Filling.Used).ThenBy(f =>
                instance.StockLengths[f.Filling.Stock] - f.Filling.Used).ThenBy(f => f.At)
            .Select(f => f.Filling);
    }

    // The same open pieces and the same stock were met before at no higher cost.
    private bool Known(int[] demand, int[] counts, long cost)
    {
        var key = string.Join(',', demand) + "|" + string.Join(',', counts.Where((_, s) => instance.Limited[s]));
        if (_seen.TryGetValue(key, out var before) && before <= cost) return true;
        _seen[key] = cost;
        return false;
    }

    private static void Change(int[] demand, int[] counts, Filling filling, int sign)
    {
        for (var i = 0; i < demand.Length; i++) demand[i] += sign * filling.Counts[i];
        counts[filling.Stock] += sign;
    }
}
