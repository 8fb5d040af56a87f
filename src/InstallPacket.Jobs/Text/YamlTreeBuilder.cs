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
            return Refuse("file-empty", new(file.Path, 1, 1), "the file is empty", "a map of keys", "`installpacket new` writes a complete example");
        events.Consume<DocumentStart>();
        if (Node(events) is not { } root) return null;
        events.Consume<DocumentEnd>();
        if (events.Accept<DocumentStart>(out var second))
            return Refuse("yaml-documents", At(second!), "a second YAML document begins here", "one document a file",
                "keep one job a file; remove the line `---` or `...`");
        return root as YamlMap ?? Refuse("yaml-not-a-map", root.At, "the file is not a map of keys", "lines of the form `key: value`",
            "begin with `format: 1`; `installpacket new` writes a complete example");
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
            return Refuse("alias-used", At(alias!), $"an alias `*{alias!.Value}` is used", "a job says each thing in full, so that a reviewer sees it",
                "write the value out; quote the text if it only begins with `*`");
        if (events.Current is NodeEvent { Anchor.IsEmpty: false } anchored)
            return Refuse("alias-used", At(anchored), $"an anchor `&{anchored.Anchor.Value}` is used",
                "a job says each thing in full, so that a reviewer sees it", "remove the anchor and write the value out where it is needed; quote the text if it only begins with `&`");
        if (events.Current is NodeEvent { Tag.IsEmpty: false } tagged)
            return Refuse("tag-used", At(tagged), $"a tag `{Written(tagged.Tag.Value)}` is used", "plain YAML values only", "remove the tag");
        if (events.TryConsume<Scalar>(out var scalar)) return Scalar(scalar);
        if (_depth == FileBounds.Depth)
            return Refuse("nested-too-deep", At(events.Current!), $"the nesting is deeper than {FileBounds.Depth} levels",
                $"at most {FileBounds.Depth} levels (our bound)", "flatten the structure; a job needs no more than six levels");
        _depth++;
        YamlNode? inner = events.Accept<SequenceStart>(out _) ? List(events) : Map(events);
        _depth--;
        return inner;
    }

    private YamlScalar? Scalar(Scalar scalar)
    {
        if (scalar.Value.Length <= FileBounds.ScalarCharacters)
            return new(At(scalar), scalar.Value, scalar.Style is not ScalarStyle.Plain);
        Refuse("text-too-long", At(scalar), $"a value has {scalar.Value.Length} characters", $"at most {FileBounds.ScalarCharacters} characters (our bound)",
            "shorten it");
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
                Refuse("key-not-a-word", name.At, "a key is a list or a map", "a key is one word", "write `key: value`");
            else if (!lines.TryAdd(key.Value, key.At.Line))
                Refuse("duplicate-key", key.At, $"the key `{key.Value}` is written a second time (first on line {lines[key.Value]})",
                    "each key once a map", "keep one of the two");
            else entries.Add(new(key, value is YamlMap inner ? inner with { Named = key.At } : value));
        }
        return new(At(start), entries);
    }

    private YamlMap? Refuse(string id, SourceSpan at, string found, string limit, string remedy)
    {
        findings.Add(Severity.Stop, id, at, found, limit, remedy);
        return null;
    }

    private static string Written(string tag) => tag.StartsWith("tag:yaml.org,2002:", StringComparison.Ordinal) ? "!!" + tag["tag:yaml.org,2002:".Length..] : tag;

    private SourceSpan At(ParsingEvent e) => Inside(e.Start);
}
