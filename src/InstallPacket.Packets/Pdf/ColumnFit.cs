namespace InstallPacket.Packets.Pdf;

/// <summary>What a column asks for in points.</summary>
/// <param name="Narrowest">So that no word is cut.</param>
/// <param name="Body">So that nothing below its head is broken.</param>
/// <param name="Natural">So that nothing is broken, not even its head.</param>
internal readonly record struct ColumnWish(double Narrowest, double Body, double Natural);

/// <summary>Shares the width of a table among its columns by what they hold.</summary>
internal static class ColumnFit
{
    /// <summary>A table that needs less than its line is widened by at most this, so that a row stays easy to follow.</summary>
    private const double LargestGrowth = 1.25;

    /// <summary>Widths of the columns; each step gives up a little more: heads in one line, short columns whole, words whole.</summary>
    /// <param name="wishes">What the columns ask for.</param>
    /// <param name="available">Width of the line.</param>
    public static double[] Widths(IReadOnlyList<ColumnWish> wishes, double available)
    {
        double natural = wishes.Sum(w => w.Natural), body = wishes.Sum(w => Math.Max(w.Body, w.Narrowest));
        if (natural <= available)
        {
            var growth = natural == 0 ? 1 : Math.Min(LargestGrowth, available / natural);
            return [.. wishes.Select(w => w.Natural * growth)];
        }
        if (body <= available)
        {
            // Heads give way, each by the same part of what it asks beyond its column.
            var share = (available - body) / (natural - body);
            return [.. wishes.Select(w => Math.Max(w.Body, w.Narrowest) is var least ? least + (w.Natural - least) * share : 0)];
        }
        var widths = Level([.. wishes.Select(w => Math.Max(w.Body, w.Narrowest))], [.. wishes.Select(w => w.Narrowest)], available);
        return widths.Sum() <= available + 0.01 ? widths : Level([.. wishes.Select(w => w.Narrowest)], new double[wishes.Count], available);
    }

    /// <summary>Short columns get all they want; the rest is levelled among the long ones, none below its least.</summary>
    private static double[] Level(double[] wanted, double[] least, double available)
    {
        var widths = (double[])wanted.Clone();
        var open = Enumerable.Range(0, wanted.Length).ToHashSet();
        var room = available;
        while (open.Count > 0)
        {
            var share = room / open.Count;
            var settled = open.Where(i => wanted[i] <= share || least[i] >= share).ToList();
            foreach (var i in settled)
            {
                widths[i] = wanted[i] <= share ? wanted[i] : least[i];
                room -= widths[i];
            }
            open.ExceptWith(settled);
            if (settled.Count > 0) continue;
            foreach (var i in open) widths[i] = share;
            break;
        }
        return widths;
    }
}
