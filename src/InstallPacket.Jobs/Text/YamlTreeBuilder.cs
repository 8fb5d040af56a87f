using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace InstallPacket.Jobs.Text;

/// <summary>
/// Builds the node tree from parser events. Our own tree, because it must report every duplicate key at its place
/// and go on, where the library's tree stops at the first.
/// </summary>
internal sealed class YamlTreeBuilder(JobFile file, FindingList findings)
{
    private readonly string[] _rows = file.Text.Split('\n');
    private int _depth;

    /// <summary>The last place that the parser reached.</summary>
    public SourceSpan Reached { get; private set; } = new(file.Path, 1, 1);

    /// <summary>Builds the tree, or reports and returns null.</summary>
    /// <exception cref="YamlException">The text is not YAML.</exception>
    public YamlMap? Build()
    {
        var events = new Parser(new StringReader(file.Text));
        events.Consume<StreamStart>();
        if (events.Accept<StreamEnd>(out _))
            return Refuse("file-empty", new(file.Path, 1, 1));
        events.Consume<DocumentStart>();
        if (Node(events) is not { } root) return null;
        events.Consume<DocumentEnd>();
        if (events.Accept<DocumentStart>(out var second))
            return Refuse("yaml-documents", At(second!));
        return root as YamlMap ?? Refuse("yaml-not-a-map", root.At);
    }

    /// <summary>A place of the parser as a place in the file: it counts one line too many when the text breaks off.</summary>
    public SourceSpan Inside(Mark mark)
    {
        var last = mark.Line > _rows.Length;
        var line = last ? _rows.Length : Math.Max(1, (int)mark.Line);
        var end = _rows[line - 1].Length + 1;
        return new(file.Path, line, last ? end : Math.Clamp((int)mark.Column, 1, end));
    }

    private YamlNode? Node(IParser events)
    {
        if (events.Current is { } reached) Reached = At(reached);
        if (events.Accept<AnchorAlias>(out var alias))
            return Refuse("alias-used", "alias", At(alias!), ("name", alias!.Value.Value));
        if (events.Current is NodeEvent { Anchor.IsEmpty: false } anchored)
            return Refuse("alias-used", "anchor", At(anchored), ("name", anchored.Anchor.Value));
        if (events.Current is NodeEvent { Tag.IsEmpty: false } tagged)
            return Refuse("tag-used", "", At(tagged), ("tag", Written(tagged.Tag.Value)));
        if (events.TryConsume<Scalar>(out var scalar)) return Scalar(scalar);
        if (_depth == FileBounds.Depth)
            return Refuse("nested-too-deep", "", At(events.Current!), ("most", FileBounds.Depth));
        _depth++;
        YamlNode? inner = events.Accept<SequenceStart>(out _) ? List(events) : Map(events);
        _depth--;
        return inner;
    }

    private YamlScalar? Scalar(Scalar scalar)
    {
        if (scalar.Value.Length <= FileBounds.ScalarCharacters)
            return new(At(scalar), scalar.Value, scalar.Style is not ScalarStyle.Plain) { Remark = scalar.Style is ScalarStyle.Plain ? Remark(scalar.End) : null };
        Refuse("text-too-long", "", At(scalar), ("characters", scalar.Value.Length), ("most", FileBounds.ScalarCharacters));
        return null;
    }

    private YamlList? List(IParser events)
    {
        var start = events.Consume<SequenceStart>();
        var items = new List<YamlNode>();
        while (!events.TryConsume<SequenceEnd>(out _))
        {
            if (Node(events) is not { } item) return null;
            items.Add(item);
        }
        return new(At(start), items);
    }

    private YamlMap? Map(IParser events)
    {
        var start = events.Consume<MappingStart>();
        var entries = new List<KeyValuePair<YamlScalar, YamlNode>>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        while (!events.TryConsume<MappingEnd>(out _))
        {
            if (Node(events) is not { } name || Node(events) is not { } value) return null;
            if (name is not YamlScalar key)
                Refuse("key-not-a-word", name.At);
            else if (!lines.TryAdd(key.Value, key.At.Line))
                Refuse("duplicate-key", "twice", key.At, ("key", key.Value), ("line", lines[key.Value]));
            else entries.Add(new(key, value is YamlMap inner ? inner with { Named = key.At } : value));
        }
        return new(At(start), entries) { InBraces = start.Style is MappingStyle.Flow };
    }

    private string? Remark(Mark end)
    {
        if (end.Line < 1 || end.Line > _rows.Length) return null;
        var row = _rows[(int)end.Line - 1];
        var rest = row[Math.Clamp((int)end.Column - 1, 0, row.Length)..];
        var mark = rest.TrimStart();
        return mark.StartsWith('#') && mark.Length < rest.Length ? mark : null;
    }

    private YamlMap? Refuse(string id, SourceSpan at) => Refuse(id, "", at);

    private YamlMap? Refuse(string id, string way, SourceSpan at, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        findings.Add(Severity.Stop, id, way, at, values);
        return null;
    }

    private static string Written(string tag) => tag.StartsWith("tag:yaml.org,2002:", StringComparison.Ordinal) ? "!!"
        + tag["tag:yaml.org,2002:".Length..] : tag;

    private SourceSpan At(ParsingEvent e) => Inside(e.Start);
}
