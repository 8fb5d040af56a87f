using YamlDotNet.Core;

namespace InstallPacket.Jobs.Text;

/// <summary>
/// Everything that must be refused before the keys are looked at. Depth, aliases and tags are bounded while the tree is built from
/// parser events: the parser keeps its own stack, so nothing recurses deeper than the bound.
/// </summary>
public static class YamlGate
{
    /// <summary>The map that the file holds; null when it was refused, with the reason among the findings.</summary>
    /// <param name="file">The file.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static YamlMap? Load(JobFile file, FindingList findings)
    {
        if (!ConflictMarkers.None(file, findings) || !HasNoTabs(file, findings)) return null;
        var builder = new YamlTreeBuilder(file, findings);
        try
        {
            return builder.Build();
        }
        catch (YamlException e)
        {
            if (!CutByRemark(file, (int)e.End.Line, findings))
                Refuse(findings, "yaml-syntax", "parser", builder.Inside(e.Start), ("problem", Plain(e.Message)));
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or OverflowException)
        {
            // The parser gives up on some broken texts without saying where; the last place it reached is the nearest.
            if (!CutByRemark(file, int.MaxValue, findings)) Refuse(findings, "yaml-syntax", "broken", builder.Reached);
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
                return Refuse(findings, "tab-indent", "", new(file.Path, line, tab + 1));
        }
        return true;
    }

    private static bool CutByRemark(JobFile file, int upTo, FindingList findings)
    {
        if (RemarkInBrackets.In(file, upTo) is not { } cut) return false;
        Refuse(findings, "yaml-syntax", "remark", cut.At, ("lost", cut.Lost));
        return true;
    }

    private static bool Refuse(FindingList findings, string id, string way, SourceSpan at,
        params ReadOnlySpan<(string Name, object? Value)> values)
    {
        findings.Add(Severity.Stop, id, way, at, values);
        return false;
    }

    private static string Plain(string message) =>
        string.Join(' ', message.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
