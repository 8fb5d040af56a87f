using YamlDotNet.Core;

namespace InstallPacket.Jobs.Text;

/// <summary>
/// Everything that must be refused before the keys are looked at. Depth, aliases and tags are bounded while the tree is built from
/// parser events: the parser keeps its own stack, so nothing recurses deeper than the bound.
/// </summary>
public static class YamlGate
{
    private const string Remedy = "check quotes, brackets and indentation here; text that contains `: ` or starts with a sign needs quotes";

    /// <summary>The map that the file holds; null when it was refused, with the reason among the findings.</summary>
    /// <param name="file">The file.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static YamlMap? Load(JobFile file, FindingList findings)
    {
        if (!HasNoTabs(file, findings)) return null;
        var builder = new YamlTreeBuilder(file, findings);
        try
        {
            return builder.Build();
        }
        catch (YamlException e)
        {
            Refuse(findings, "yaml-syntax", builder.Inside(e.Start), "this is not YAML: " + Plain(e.Message), "YAML 1.2", Remedy);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or OverflowException)
        {
            // The parser gives up on some broken texts without saying where; the last place it reached is the nearest.
            Refuse(findings, "yaml-syntax", builder.Reached, "this is not YAML: the text breaks off or a bracket does not fit", "YAML 1.2", Remedy);
        }
        return null;
    }

    private static bool HasNoTabs(JobFile file, FindingList findings)
    {
        var line = 0;
        foreach (var row in file.Text.Split('\n'))
        {
            line++;
            var indent = row.Length - row.TrimStart(' ', '\t').Length;
            var tab = row.AsSpan(0, indent).IndexOf('\t');
            if (tab >= 0 && row.Trim().Length > 0)
                return Refuse(findings, "tab-indent", new(file.Path, line, tab + 1), "a tab stands in the indentation",
                    "YAML indents with spaces", "replace the tab by spaces");
        }
        return true;
    }

    private static bool Refuse(FindingList findings, string id, SourceSpan at, string found, string limit, string remedy)
    {
        findings.Add(Severity.Stop, id, at, found, limit, remedy);
        return false;
    }

    private static string Plain(string message) => string.Join(' ', message.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
