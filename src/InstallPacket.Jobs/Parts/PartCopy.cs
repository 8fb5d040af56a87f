using System.Globalization;
using System.Text;

namespace InstallPacket.Jobs.Parts;

/// <summary>Copies a generic part into the firm's own parts file, line by line, so that its figures can be changed.</summary>
/// <param name="files">The author's files.</param>
public sealed class PartCopy(IJobFiles files)
{
    /// <summary>The file that copies are written to.</summary>
    public const string Target = "_shared/parts/own.yaml";

    /// <summary>The lines of the first file, before any part.</summary>
    public static readonly string Head = "# Parts of our own. Put in the figures of the maker's sheet and say under provenance that you read them.\nparts:\n";

    /// <summary>The lines of one part, with where they come from above them; null when its file does not write it in lines of its own.</summary>
    /// <param name="part">The part.</param>
    /// <param name="called">The name of the copy.</param>
    public string? Lines(ListedPart part, string called)
    {
        var rows = files.Read(part.At.File, FileBounds.PartsBytes).Text.Split('\n');
        var indent = part.At.Column - 1;
        var first = rows[part.At.Line - 1];
        var head = first.TrimStart();
        if (first.Length - head.Length != indent || !head.StartsWith(part.Id + ":", StringComparison.Ordinal)) return null;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"  # from {part.At.File}, line {part.At.Line}\n");
        text.Append("  ").Append(called).Append(head.AsSpan(part.Id.Length)).Append('\n');
        foreach (var row in rows.Skip(part.At.Line).TakeWhile(r => r.Trim().Length > 0 && r.Length - r.TrimStart().Length > indent))
            text.Append("  ").Append(row.AsSpan(indent)).Append('\n');
        return text.ToString();
    }

    /// <summary>The target file with the lines at its end; null when it is written in a form to which lines cannot be added.</summary>
    /// <param name="lines">The lines of a part.</param>
    /// <param name="called">Its name.</param>
    public string? With(string lines, string called)
    {
        var file = files.Read(Target, FileBounds.PartsBytes);
        if (file.State == FileState.Absent) return Head + lines;
        if (file.State != FileState.Present) return null;
        var before = Names(file);
        var text = file.Text.TrimEnd('\n') + "\n" + lines;
        var after = Names(new(Target, FileState.Present, text));
        return before is not null && after is not null && after.SequenceEqual([.. before, called]) ? text : null;
    }

    private static string[]? Names(JobFile file)
    {
        var findings = new FindingList();
        if (YamlGate.Load(file, findings) is not { } root || findings.AnyStop) return null;
        return TreeEditor.Below(root, PartCatalogue.Parts.Name) is YamlMap parts ? [.. parts.Entries.Select(e => e.Key.Value)] : null;
    }
}
