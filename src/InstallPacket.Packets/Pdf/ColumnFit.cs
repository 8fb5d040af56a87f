namespace InstallPacket.Packets;

/// <summary>Shares the width of a table among its columns by what they hold.</summary>
internal static class ColumnFit
{
    /// <summary>A table that needs less than its line is widened by at most this, so that a row stays easy to follow.</summary>
    private const double LargestGrowth = 1.25;

    /// <summary>Widths of the columns.</summary>
    /// <param name="narrowest">What each column needs so that no word is cut.</param>
    /// <param name="natural">What each needs so that nothing is broken.</param>
    /// <param name="available">Width of the line.</param>
    public static double[] Widths(IReadOnlyList<double> narrowest, IReadOnlyList<double> natural, double available)
    {
        double least = narrowest.Sum(), most = natural.Sum();
        if (most <= available)
        {
            var growth = most == 0 ? 1 : Math.Min(LargestGrowth, available / most);
            return [.. natural.Select(w => w * growth)];
        }
        if (least <= available)
        {
            var share = most == least ? 0 : (available - least) / (most - least);
            return [.. narrowest.Zip(natural, (few, all) => few + (all - few) * share)];
        }
        return CutWords(narrowest, available);
    }

    // Too many long words: the narrow columns keep theirs whole, the wide ones are cut to an even share of the rest.
    private static double[] CutWords(IReadOnlyList<double> narrowest, double available)
    {
        var widths = narrowest.ToArray();
        var open = Enumerable.Range(0, widths.Length).ToHashSet();
        var room = available;
        while (open.Count > 0)
        {
            var share = room / open.Count;
            var small = open.Where(i => narrowest[i] <= share).ToList();
            if (small.Count == 0)
            {
                foreach (var i in open) widths[i] = share;
                break;
            }
            foreach (var i in small) room -= narrowest[i];
            open.ExceptWith(small);
        }
        return widths;
    }
}
