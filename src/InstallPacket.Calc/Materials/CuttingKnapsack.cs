namespace InstallPacket.Calc.Materials;

/// <summary>The most valuable filling of one length of stock, no kind of piece more often than it is wanted.</summary>
internal static class CuttingKnapsack
{
    private const int MostSteps = 200_000;

    /// <summary>Finds it.</summary>
    /// <param name="instance">The problem.</param>
    /// <param name="room">Length of the stock.</param>
    /// <param name="values">Value of each kind of piece, not negative.</param>
    /// <returns>The filling, its value, and a value that no filling exceeds: the same unless the search was cut short.</returns>
    public static (int[] Counts, double Value, double Ceiling) Best(CutInstance instance, long room, double[] values)
    {
        var order = Enumerable.Range(0, values.Length).Where(i => values[i] > 0 && instance.Lengths[i] <= room)
            .OrderByDescending(i => values[i] / instance.Lengths[i]).ThenBy(i => i).ToArray();
        var counts = new int[values.Length];
        var best = new int[values.Length];
        double bestValue = 0;
        var steps = 0;
        void Choose(int at, long open, double value)
        {
            if (value > bestValue) (bestValue, best) = (value, (int[])counts.Clone());
            if (at == order.Length || ++steps > MostSteps) return;
            var i = order[at];
            if (value + open * (values[i] / instance.Lengths[i]) <= bestValue) return;
            for (var n = (int)Math.Min(instance.Demand[i], open / instance.Lengths[i]); n >= 0; n--)
            {
                counts[i] = n;
                Choose(at + 1, open - n * instance.Lengths[i], value + n * values[i]);
            }
            counts[i] = 0;
        }
        Choose(0, room, 0);
        var ceiling = steps > MostSteps ? room * (values[order[0]] / instance.Lengths[order[0]]) : bestValue;
        return (best, bestValue, ceiling);
    }
}
