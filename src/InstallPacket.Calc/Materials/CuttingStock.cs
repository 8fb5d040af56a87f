using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Materials;

/// <summary>
/// One-dimensional cutting: pieces from lengths of stock at the least cost. Exact where the search ends by itself or meets its bound;
/// otherwise it gives the best plan found and a bound that no plan can beat.
/// </summary>
public static class CuttingStock
{
    /// <summary>Nodes after which a search stops, unless the caller says otherwise.</summary>
    public const int MostNodes = 60_000;

    private const int MostReleases = 4;

    /// <summary>The least cost.</summary>
    public static readonly Formula<double> LeastFormula = new Formula(
        "cutting-least-cost",
        "Least cost of the stock that is opened",
        "C = min sum c x, over plans in which each piece is cut once and sum (l + k) <= L + k on each stock",
        new("C", "", "cost: metres of stock opened, or the price"),
            [new("n", "", "pieces"), new("sum l", "m", "pieces together"), new("B", "", "bound: no plan costs less")],
        "cutting-notes", "bin completion with bounds; column generation for repeated pieces", Provenance.Derived)
        .By<double>((least, _) => least);

    /// <summary>What is thrown away.</summary>
    public static readonly Formula WasteFormula = new(
        "cutting-waste", "Share of the opened stock that is not used", "w = 100 (1 - sum l / sum L)", new("w", "%", "share"),
        [new("sum l", "m", "pieces together"), new("sum L", "m", "stock opened")], "cutting-notes", "definition", Provenance.Derived)
    {
        Method = v => WastePct(v[0], v[1]),
    };

    /// <summary>Share of the opened stock that is not used [%].</summary>
    /// <param name="piecesM">Pieces together.</param>
    /// <param name="openedM">Stock opened, above 0; outside throws.</param>
    public static double WastePct(double piecesM, double openedM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(openedM);
        return 100 * (1 - piecesM / openedM);
    }

    /// <summary>Finds the plan of least cost.</summary>
    /// <param name="problem">What to cut from what; a length that is not above 0 throws.</param>
    /// <param name="mostNodes">Nodes after which a search stops.</param>
    /// <returns>The plan. The same problem always gives the same one.</returns>
    public static CutResult Solve(CuttingProblem problem, int mostNodes = MostNodes)
    {
        foreach (var length in problem.Pieces.Concat(problem.Stock.Select(s =>
            s.Length))) ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        if (problem.Pieces.Count == 0) return new([], true, 0, 0, true);
        if (problem.Stock.Count == 0) return new([], false, 0, 0, true);
        var instance = CutInstance.Of(problem);
        var bound = CuttingBounds.Quick(instance, instance.Demand, instance.Counts);
        if (bound == long.MaxValue) return new([], false, 0, 0, true);
        var search = new CuttingSearch(instance, mostNodes);
        search.Run(instance.Demand, instance.Counts, bound);
        var best = search.Best;
        if (!search.Complete && search.BestCost > bound) (best, bound) = ByProgram(instance, best, bound, mostNodes);
        var cost = best?.Sum(f => instance.Costs[f.Stock]) ?? 0;
        var proved = search.Complete || (best is not null && cost <= bound);
        var lowest = proved && best is not null ? cost : bound;
        return new(Assign(problem, best ?? []), best is not null, cost * instance.CostMeasure, lowest * instance.CostMeasure, proved);
    }

    // Whole parts of the program's fillings first; what is left is small and is searched. If that fails, one filling of each kind is taken
    // back.
    private static (IReadOnlyList<Filling>? Best, long Bound) ByProgram(CutInstance instance, IReadOnlyList<Filling>? best, long bound,
        int mostNodes)
    {
        var program = new CuttingProgram(instance);
        program.Solve();
        bound = Math.Max(bound, program.Bound);
        for (var release = 0; release < MostReleases; release++)
        {
            if (Cost(instance, best) <= bound) break;
            var (fixedPart, demand, counts) = WholePart(instance, program.Used, release);
            var paid = fixedPart.Sum(f => instance.Costs[f.Stock]);
            var search = new CuttingSearch(instance, mostNodes);
            search.Run(demand, counts, bound - paid, best is null ? long.MaxValue : Cost(instance, best) - paid);
            if (search.Best is { } rest) best = [.. fixedPart, .. rest];
        }
        return (best, bound);
    }

    private static (List<Filling> Fixed, int[] Demand, int[] Counts) WholePart(CutInstance instance,
        IReadOnlyList<(Filling Filling, double Times)> used, int release)
    {
        var (demand, counts) = ((int[])instance.Demand.Clone(), (int[])instance.Counts.Clone());
        var plan = new List<Filling>();
        foreach (var (filling, times) in used)
        {
            for (var n = (int)Math.Floor(times + 1e-6) - release; n > 0 && counts[filling.Stock] > 0; n--)
            {
                int[] taken = [.. filling.Counts.Select((c, i) => Math.Min(c, demand[i]))];
                for (var i = 0; i < taken.Length; i++) demand[i] -= taken[i];
                counts[filling.Stock]--;
                plan.Add(filling with { Counts = taken });
            }
        }
        return (plan, demand, counts);
    }

    private static long Cost(CutInstance instance, IReadOnlyList<Filling>? plan) => plan?.Sum(f => instance.Costs[f.Stock])
        ?? long.MaxValue;

    // Kinds of piece back to the pieces themselves, in the order of the problem.
    private static CutStrip[] Assign(CuttingProblem problem, IReadOnlyList<Filling> plan)
    {
        var open = problem.Pieces.Select((l, i) => (Length: l, At: i)).GroupBy(p => p.Length).OrderByDescending(g => g.Key)
            .Select(g => new Queue<int>(g.Select(p => p.At))).ToArray();
        return [.. plan.Select(f =>
            new CutStrip(f.Stock, [.. f.Counts.SelectMany((c, i) => Enumerable.Range(0, c).Select(_ => open[i].Dequeue()))]))];
    }
}
