namespace InstallPacket.Jobs.Keys;

/// <summary>Finds the word that a writer most likely meant.</summary>
public static class NearestWord
{
    /// <summary>The word that is near, or null. One or two letters are near to nothing but themselves in the other case.</summary>
    public static string? Of(string written, IEnumerable<string> known)
    {
        var best = known.Select(k => (Word: k, Distance: Distance(written, k)))
            .OrderBy(p => p.Distance).ThenBy(p => p.Word, StringComparer.Ordinal).FirstOrDefault();
        return best.Word is not null && best.Distance <= (written.Length < 3 ? 0 : Math.Max(1, written.Length / 3)) ? best.Word : null;
    }

    // Edits (insert, drop, change, swap of neighbours) that turn one word into the other, ignoring case.
    private static int Distance(string a, string b)
    {
        if (a.Length > 60 || b.Length > 60) return 60;
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var same = Same(a[i - 1], b[j - 1]);
                d[i, j] = Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1])) d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2]
                    + 1);
            }
        }
        return d[a.Length, b.Length];
    }

    private static bool Same(char x, char y) => char.ToLowerInvariant(x) == char.ToLowerInvariant(y);
}
