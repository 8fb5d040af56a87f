using System.Globalization;
using System.Text;

namespace InstallPacket.Jobs.Layers;

/// <summary>
/// Prints a job in full: what the firm, the kits, the short forms and the program's own defaults add to it stands where it would be written, and
/// behind every value stands who said it. The text builds the same packet.
/// </summary>
public sealed class JobInFull
{
    private readonly StringBuilder _text = new();
    private readonly string _own;

    private JobInFull(string own) => _own = own;

    /// <summary>The job as YAML; null when it cannot be read, and then the findings say why.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="id">The job.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static string? Of(IJobFiles files, string id, FindingList findings)
    {
        var path = id + "/job.yaml";
        var parts = PartLibraryReader.Read(files, new FindingList());
        if (new JobLayers(files, findings, part => parts.Find(part) is not null).Load(path) is not { } root) return null;
        var page = new JobInFull(path);
        page.Map(root, KeyCatalogue.Job, 0, "");
        return page._text.ToString();
    }

    private void Map(YamlMap map, GroupKind kind, int indent, string first)
    {
        var lead = first;
        void Entry(string name, YamlNode node, KeyKind? of, string? said)
        {
            _text.Append(lead.Length > 0 ? lead : new string(' ', indent)).Append(name).Append(':');
            lead = "";
            Value(node, of, indent, said);
        }
        kind = kind.For(key => TreeEditor.Below(map, key.Name) is YamlScalar word ? word.Value : null);
        foreach (var (key, node) in map.Entries) Entry(key.Value, node, kind.Keys.FirstOrDefault(k => k.Name == key.Value)?.Kind, null);
        foreach (var key in kind.Keys.Where(k => k.Default is not null && TreeEditor.Below(map, k.Name) is null))
            Entry(key.Name, new YamlScalar(default, key.Default!, false), key.Kind, "built in");
        foreach (var key in kind.Keys.Where(k => k is { Required: false, Kind: GroupKind { Keys: var inner } } && !inner.Any(i => i.Required)
            && inner.Any(i => i.Default is not null) && TreeEditor.Below(map, k.Name) is null))
            Entry(key.Name, new YamlMap(map.At, []), key.Kind, null);
    }

    private void Value(YamlNode node, KeyKind? kind, int indent, string? said)
    {
        var inner = kind is IShortKind { Full: GroupKind full } ? full : kind;
        switch (node)
        {
            case YamlScalar scalar:
                _text.Append(' ').Append(Scalar(scalar)).Append("  # ").Append(said ?? Origin(scalar.At)).Append('\n');
                break;
            case YamlMap map when inner is GroupKind group && (map.Entries.Count > 0 || group.Keys.Any(k => k.Default is not null)):
                _text.Append('\n');
                Map(map, group, indent + 2, "");
                break;
            case YamlMap { Entries.Count: > 0 } map:
                _text.Append('\n');
                foreach (var (key, value) in map.Entries)
                {
                    _text.Append(' ', indent + 2).Append(Scalar(key)).Append(':');
                    Value(value, (inner as IMapKind)?.Item, indent + 2, null);
                }
                break;
            case YamlList { Items.Count: > 0 } list when list.Items[0] is YamlMap:
                _text.Append('\n');
                foreach (var item in list.Items.OfType<YamlMap>())
                    Map(item, (inner as IListKind)?.Item as GroupKind ?? new GroupKind([]), indent + 4, new string(' ', indent + 2) + "- ");
                break;
            default:
                _text.Append(' ').Append(Flow(node)).Append("  # ").Append(Origin(node.At)).Append('\n');
                break;
        }
    }

    private string Origin(SourceSpan at) => at.Line == 0 ? at.File : string.Create(CultureInfo.InvariantCulture,
        $"{(at.File == _own ? "" : at.File + ", ")}line {at.Line}");

    private static string Flow(YamlNode node) => node switch
    {
        YamlScalar scalar => Scalar(scalar),
        YamlList list => "[" + string.Join(", ", list.Items.Select(Flow)) + "]",
        YamlMap map => "{" + string.Join(", ", map.Entries.Select(e => Scalar(e.Key) + ": " + Flow(e.Value))) + "}",
        _ => "",
    };

    private static string Scalar(YamlScalar scalar)
    {
        var value = scalar.Value;
        if (value.Length > 0 && !scalar.Quoted && value.All(IsPlain) && !"-'? ".Contains(value[0]) && value[^1] != ' ') return value;
        var text = new StringBuilder("\"");
        foreach (var c in value)
        {
            if (c is '"' or '\\') text.Append('\\').Append(c);
            else if (char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF') text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}");
            else text.Append(c);
        }
        return text.Append('"').ToString();
    }

    private static bool IsPlain(char c) => char.IsLetterOrDigit(c) || " .-/%+()'°_".Contains(c);
}
