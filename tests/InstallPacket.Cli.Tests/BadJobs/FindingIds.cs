using System.Globalization;
using System.Text.RegularExpressions;

namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>The identifiers of findings: those that the source can emit and those that a printed text shows.</summary>
internal static partial class FindingIds
{
    // A method that takes the identifier as a parameter and hands it on; its callers are scanned instead.
    private const string HandedOn = "id";

    /// <summary>Every identifier that the source emits.</summary>
    public static IReadOnlyList<string> InSource { get; } = [.. SourceFiles().SelectMany(f => Emitted(File.ReadAllText(f))).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Places in the source that emit a finding whose identifier the scan cannot read.</summary>
    public static IReadOnlyList<string> Unreadable { get; } = [.. SourceFiles().SelectMany(f => Hidden(Path.GetFileName(f), File.ReadAllText(f)))];

    /// <summary>The identifiers in a printed text.</summary>
    public static IReadOnlyList<string> Shown(string printed) => [.. Printed().Matches(printed).Select(m => m.Groups["id"].Value)];

    /// <summary>The places in a printed text, in the order of the text.</summary>
    public static IReadOnlyList<(int Line, int Column)> Places(string printed) =>
        [.. Printed().Matches(printed).Where(m => m.Groups["line"].Success).Select(m => (Number(m, "line"), Number(m, "column")))];

    /// <summary>The identifiers that one file of source emits.</summary>
    internal static IEnumerable<string> Emitted(string source) =>
        Argument().Matches(source).Select(m => m.Groups["id"].Value)
            .Concat(Handed().Matches(source).Select(m => m.Groups["id"].Value))
            .SelectMany(argument => Literal().Matches(argument)).Select(m => m.Groups["id"].Value);

    /// <summary>The places of one file of source where the scan sees a finding but no identifier.</summary>
    internal static IEnumerable<string> Hidden(string file, string source) =>
        Argument().Matches(source).Select(m => m.Groups["id"].Value.Trim())
            .Where(a => !Literal().IsMatch(a) && !(a == HandedOn && (Handed().IsMatch(source) || source.Contains("class FindingList", StringComparison.Ordinal)))).Select(a => $"{file}: {a}");

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static IEnumerable<string> SourceFiles() =>
        Directory.GetFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(p => p is "obj" or "bin")).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"(?:\.Add|new Finding)\(\s*(?:Severity\.\w+|severity)\s*,(?<id>[^,;]*),", RegexOptions.ExplicitCapture)]
    private static partial Regex Argument();

    // Refuse("id", ...), Refuse(findings, "id", ...), Report(a, "id", ...), FileState.Absent => "id".
    [GeneratedRegex(@"(?:\b(?:Refuse|Report)\(\s*(?:\w+\s*,\s*)?|FileState\.\w+\s*=>\s*)(?<id>""[a-z0-9]+(?:-[a-z0-9]+)+"")", RegexOptions.ExplicitCapture)]
    private static partial Regex Handed();

    [GeneratedRegex(@"""(?<id>[a-z0-9]+(?:-[a-z0-9]+)+)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Literal();

    [GeneratedRegex(@"^\S+?(?:\((?<line>\d+),(?<column>\d+)\))?: (?:stop|caution|note) (?<id>[a-z0-9-]+): ", RegexOptions.ExplicitCapture | RegexOptions.Multiline)]
    private static partial Regex Printed();
}
