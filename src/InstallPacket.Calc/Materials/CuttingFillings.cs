namespace InstallPacket.Calc.Materials;

/// <summary>One way to use a length of stock.</summary>
internal sealed record Filling(int Stock, int[] Counts, long Used);

/// <summary>Enumerates the fillings that some best plan may use: the longest open piece is in them, and no other filling is at least as
/// good.</summary>
internal sealed class CuttingFillings(CutInstance instance, int most)
{
    private readonly long[] _lengths = instance.Lengths;

    /// <summary>Whether the last call gave all of them.</summary>
    public bool Complete { get; private set; }

    /// <summary>Leaves visited by all calls.</summary>
    public int Steps { get; private set; }

    public List<Filling> Of(int stock, int[] demand, int first)
    {
        var room = instance.StockLengths[stock] - _lengths[first];
        var found = new List<Filling>();
        Complete = true;
        var counts = new int[_lengths.Length];
        counts[first] = 1;
        var rest = (int[])demand.Clone();
        rest[first]--;
        // What all kinds from here on add up to, so that fillings that leave room for a skipped piece are seen early.
        var suffix = new long[_lengths.Length + 1];
        for (var i = _lengths.Length - 1; i >= first; i--) suffix[i] = suffix[i + 1] + rest[i] * _lengths[i];
        var budget = most;
        void Choose(int i, long slack, long shortestSkipped)
        {
            if (slack - suffix[i] >= shortestSkipped) return;
            if (budget <= 0) { Complete = false; return; }
            if (i == _lengths.Length)
            {
                (budget, Steps) = (budget - 1, Steps + 1);
                if (!Dominated(counts, rest, slack, first)) found.Add(new(stock, (int[])counts.Clone(),
                    instance.StockLengths[stock] - slack));
                return;
            }
            var fits = (int)Math.Min(rest[i], slack / _lengths[i]);
            for (var n = fits; n >= 0; n--)
            {
                counts[i] += n;
                Choose(i + 1, slack - n * _lengths[i], n < rest[i] ? Math.Min(shortestSkipped, _lengths[i]) : shortestSkipped);
                counts[i] -= n;
                if (budget <= 0) { Complete &= n == 0; break; }
            }
        }
        Choose(first, room, long.MaxValue);
        return found;
    }

    // A filling is no better than another that has a longer open piece in place of one of its pieces, when that piece fits: the two can
    // change places.
    private bool Dominated(int[] counts, int[] rest, long slack, int first)
    {
        for (var longer = first; longer < _lengths.Length; longer++)
        {
            var open = rest[longer] - counts[longer] + (longer == first ? 1 : 0);
            if (open <= 0) continue;
            for (var shorter = longer + 1; shorter < _lengths.Length; shorter++)
                if (counts[shorter] > 0 && _lengths[longer] - _lengths[shorter] <= slack) return true;
        }
        return false;
    }
}
