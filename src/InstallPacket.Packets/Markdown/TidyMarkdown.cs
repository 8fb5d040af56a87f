namespace InstallPacket.Packets.Markdown;

/// <summary>Templates leave runs of blank lines and trailing blanks behind; a reader of the text and a reviewer of its diff want
/// none.</summary>
internal static class TidyMarkdown
{
    /// <summary>The same text with single blank lines, no trailing blanks, and one line feed at the end.</summary>
    public static string Of(string markdown)
    {
        var lines = new List<string>();
        foreach (var line in markdown.ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd()))
            if (line.Length > 0 || (lines.Count > 0 && lines[^1].Length > 0)) lines.Add(line);
        return string.Join('\n', lines).TrimEnd() + "\n";
    }
}
