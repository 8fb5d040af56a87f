namespace InstallPacket.Cli.Console;

/// <summary>
/// Prints findings so that an editor can jump to them: place, severity and identifier first, then the line itself with a mark, the limit
/// and the remedy, in English and in the units of the job.
/// </summary>
/// <param name="files">For the line itself.</param>
/// <param name="prefix">Path of the jobs folder as the user wrote it.</param>
internal sealed class FindingPrinter(IJobFiles files, string prefix)
{
    private const int MostCharacters = 120;
    private readonly Dictionary<string, string[]> _lines = new(StringComparer.Ordinal);

    /// <summary>Prints findings of files that belong to no job.</summary>
    public void Print(TextWriter to, IEnumerable<Finding> findings) => Print(to, findings, JobUnits.Unknown);

    /// <summary>Prints findings of a job.</summary>
    public void Print(TextWriter to, IEnumerable<Finding> findings, JobUnits units)
    {
        foreach (var f in findings)
        {
            var text = ConsoleWords.Spoken(f, units);
            to.WriteLine($"{prefix}{Safe(f.At.ToString())}: {Word(f.Severity)} {f.Id}: {Safe(text.Found)}");
            if (f.At.Line > 0 && Line(f.At) is { } line) PrintLine(to, f.At, line);
            if (text.Limit.Length > 0) to.WriteLine($"       limit: {Safe(text.Limit)}");
            to.WriteLine($"       do: {Safe(text.Remedy)}");
        }
    }

    public static string Word(Severity severity) => severity switch { Severity.Stop => "stop", Severity.Caution => "caution", _ => "note" };

    // Of a long line, the part around the place is shown.
    private static void PrintLine(TextWriter to, SourceSpan at, string line)
    {
        var column = Math.Clamp(at.Column - 1, 0, line.Length);
        var from = column < MostCharacters ? 0 : column - MostCharacters / 2;
        var lead = from > 0 ? "... " : "";
        to.WriteLine($"{at.Line,6} | {lead}{line.Substring(from, Math.Min(MostCharacters, line.Length - from))}");
        to.WriteLine($"       | {new string(' ', lead.Length + column - from)}^");
    }

    private string? Line(SourceSpan at)
    {
        if (!_lines.TryGetValue(at.File, out var lines))
            _lines[at.File] = lines = files.Read(at.File, 16 * 1024 * 1024).Text.Split('\n');
        if (at.Line > lines.Length) return null;
        return Safe(lines[at.Line - 1]);
    }

    /// <summary>A text of the author without control characters: those of a hostile file must not reach the terminal.</summary>
    public static string Safe(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)).Replace('\u00A0', ' ');
}
