using YamlDotNet.Core;

namespace InstallPacket.Jobs.Reading;

/// <summary>
/// Everything that must be refused before a node tree is built. Deep nesting overflows the stack of a recursive reader and
/// cannot be caught, so depth is bounded on the raw text first.
/// </summary>
internal static class YamlGate
{
    public static YamlMap? Load(JobFile file, FindingList findings)
    {
        if (!IsPlainEnough(file, findings)) return null;
        try
        {
            return new YamlTreeBuilder(file.Path, findings).Build(file.Text);
        }
        catch (YamlException e)
        {
            Refuse(findings, "yaml-syntax", new(file.Path, (int)e.Start.Line, (int)e.Start.Column), "this is not YAML: " + Plain(e.Message),
                "YAML 1.2", "check quotes, brackets and indentation here; text that contains `: ` or starts with a sign needs quotes");
            return null;
        }
    }

    private static bool IsPlainEnough(JobFile file, FindingList findings)
    {
        var line = 0;
        var depth = 0;
        foreach (var row in file.Text.Split('\n'))
        {
            line++;
            var indent = row.Length - row.TrimStart(' ', '\t').Length;
            var tab = row.AsSpan(0, indent).IndexOf('\t');
            if (tab >= 0 && row.Trim().Length > 0)
                return Refuse(findings, "tab-indent", new(file.Path, line, tab + 1), "a tab stands in the indentation",
                    "YAML indents with spaces", "replace the tab by spaces");
            if (indent > 4 * FileBounds.Depth || LeadingMarks(row) > FileBounds.Depth || (depth = FlowDepth(row, depth)) > FileBounds.Depth)
                return Refuse(findings, "nested-too-deep", new(file.Path, line, 1), $"the nesting is deeper than {FileBounds.Depth} levels",
                    $"at most {FileBounds.Depth} levels", "flatten the structure; a job needs no more than six levels");
        }
        return true;
    }

    // Counts "- - - ? :" marks at the start of a row, each of which opens a level on the same line.
    private static int LeadingMarks(string row)
    {
        var marks = 0;
        for (var i = 0; i + 1 < row.Length; i++)
        {
            if (row[i] == ' ') continue;
            if (row[i] is not ('-' or '?' or ':') || row[i + 1] != ' ') break;
            marks++;
        }
        return marks;
    }

    private static int FlowDepth(string row, int depth)
    {
        foreach (var c in row)
        {
            if (c is '[' or '{' && ++depth > FileBounds.Depth) return depth;
            if (c is ']' or '}') depth = Math.Max(0, depth - 1);
        }
        return depth;
    }

    private static bool Refuse(FindingList findings, string id, SourceSpan at, string found, string limit, string remedy)
    {
        findings.Add(Severity.Stop, id, at, found, limit, remedy);
        return false;
    }

    private static string Plain(string message) => message.ReplaceLineEndings(" ").TrimEnd('.');
}
