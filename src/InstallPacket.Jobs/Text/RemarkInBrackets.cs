namespace InstallPacket.Jobs.Text;

/// <summary>A <c>#</c> after a space begins a remark, also between brackets: what was to close them is lost.</summary>
internal static class RemarkInBrackets
{
    /// <summary>The place and the lost text of the first line up to another whose brackets a remark leaves open; null without one.</summary>
    /// <param name="file">The file.</param>
    /// <param name="upTo">The last line to look at, the first is 1.</param>
    public static (SourceSpan At, string Lost)? In(JobFile file, int upTo)
    {
        var line = 0;
        foreach (var row in file.Text.Split('\n').Take(upTo))
        {
            line++;
            if (Remark(row) is { } at && row.AsSpan(at).IndexOfAny('}', ']') > 0) return (new(file.Path, line, at + 1), row[at..].TrimEnd());
        }
        return null;
    }

    // Where a remark begins while a bracket of the line is open.
    private static int? Remark(string row)
    {
        var (depth, quote) = (0, '\0');
        for (var i = 0; i < row.Length; i++)
        {
            var c = row[i];
            if (quote != '\0') quote = c == quote ? '\0' : quote;
            else if (c is '"' or '\'' && (i == 0 || row[i - 1] is ' ' or '{' or '[' or ',')) quote = c;
            else if (c is '{' or '[') depth++;
            else if (c is '}' or ']') depth--;
            else if (c == '#' && i > 0 && row[i - 1] == ' ') return depth > 0 ? i : null;
        }
        return null;
    }
}
