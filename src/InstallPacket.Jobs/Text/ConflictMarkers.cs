namespace InstallPacket.Jobs.Text;

/// <summary>Finds the marks that git leaves where two changes of a file meet.</summary>
internal static class ConflictMarkers
{
    private const string Start = "<<<<<<<";
    private const string End = ">>>>>>>";

    /// <summary>Whether the file has none; reports each place otherwise.</summary>
    /// <param name="file">The file.</param>
    /// <param name="findings">Receives the places.</param>
    public static bool None(JobFile file, FindingList findings)
    {
        var rows = file.Text.Split('\n');
        var (any, open) = (false, 0);
        for (var i = 0; i < rows.Length; i++)
        {
            if (!IsMark(rows[i])) continue;
            any = true;
            if (rows[i].StartsWith(Start, StringComparison.Ordinal)) open = Report(file, rows, i, findings);
            else if (open == 0) Report(file, rows, i, findings);
            if (rows[i].StartsWith(End, StringComparison.Ordinal)) open = 0;
        }
        return !any;
    }

    private static int Report(JobFile file, string[] rows, int i, FindingList findings)
    {
        var end = Array.FindIndex(rows, i, r => r.StartsWith(End, StringComparison.Ordinal));
        findings.Add(Severity.Stop, "merge-conflict", new(file.Path, i + 1, 1), ("line", i + 1), ("end", end <= i ? null : end + 1));
        return i + 1;
    }

    // In the first column no text of a map begins with seven such signs.
    private static bool IsMark(string row) => row.StartsWith(Start, StringComparison.Ordinal) || row.StartsWith(End, StringComparison.Ordinal)
        || row.StartsWith("||||||| ", StringComparison.Ordinal) || row == "=======";
}
