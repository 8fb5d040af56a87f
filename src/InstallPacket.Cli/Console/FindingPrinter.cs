using InstallPacket.Jobs;

namespace InstallPacket.Cli;

/// <summary>
/// Prints findings so that an editor can jump to them: place, severity and identifier first, then the line itself with a mark, the limit
/// and the remedy.
/// </summary>
/// <param name="files">For the line itself.</param>
/// <param name="prefix">Path of the jobs folder as the user wrote it.</param>
internal sealed class FindingPrinter(IJobFiles files, string prefix)
{
    private const int MostCharacters = 120;
    private readonly Dictionary<string, string[]> _lines = new(StringComparer.Ordinal);

    public void Print(TextWriter to, IEnumerable<Finding> findings)
    {
        foreach (var f in findings)
        {
            to.WriteLine($"{prefix}{f.At}: {Word(f.Severity)} {f.Id}: {Safe(f.Found)}");
            if (f.At.Line > 0 && Line(f.At) is { } line)
            {
                to.WriteLine($"{f.At.Line,6} | {line}");
                to.WriteLine($"       | {new string(' ', Math.Clamp(f.At.Column - 1, 0, MostCharacters))}^");
            }
            if (f.Limit.Length > 0) to.WriteLine($"       limit: {Safe(f.Limit)}");
            to.WriteLine($"       do: {Safe(f.Remedy)}");
        }
    }

    public static string Word(Severity severity) => severity switch { Severity.Stop => "stop", Severity.Caution => "caution", _ => "note" };

    private string? Line(SourceSpan at)
    {
        if (!_lines.TryGetValue(at.File, out var lines))
            _lines[at.File] = lines = files.Read(at.File, 16 * 1024 * 1024).Text.Split('\n');
        if (at.Line > lines.Length) return null;
        var line = Safe(lines[at.Line - 1]);
        return line.Length > MostCharacters ? line[..MostCharacters] : line;
    }

    // Control characters of a hostile file must not reach the terminal.
    private static string Safe(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)).Replace('\u00A0', ' ');
}
