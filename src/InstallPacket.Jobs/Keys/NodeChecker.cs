namespace InstallPacket.Jobs.Keys;

/// <summary>Checks a node tree against the key catalogue and keeps what is sound. Collects every finding of the file.</summary>
/// <param name="findings">Receives what is wrong.</param>
/// <param name="units">The units of the job, for what findings suggest; null for a file of no job.</param>
internal sealed class NodeChecker(FindingList findings, UnitFamily? units = null)
{
    private readonly UnitChoice _choice = new(units);
    private readonly ScalarChecker _scalars = new(findings, units);

    /// <summary>Every reference met on the way, to be resolved when all definitions are known.</summary>
    public List<UseOfName> Uses { get; } = [];

    /// <summary>The names written into each map, by its key; also those whose value had a finding, so that a use of them is no second
    /// finding.</summary>
    public Dictionary<Key, string[]> Defined { get; } = [];

    /// <summary>Checks one node that is no part of a group.</summary>
    public void Check(YamlNode node, KeyKind kind, string path) => _ = kind is IMapKind named && node is YamlMap map
        ? Map(map, named, path, [.. map.Entries.Select(e => e.Key.Value)]) : Value(node, kind, path);

    public CheckedGroup Group(YamlMap map, GroupKind kind, string path)
    {
        var written = map.Entries.ToDictionary(e => e.Key.Value, e => e.Value, StringComparer.Ordinal);
        kind = kind.For(key => written.GetValueOrDefault(key.Name) is YamlScalar word ? word.Value : null);
        var group = new CheckedGroup(map.Named);
        var meant = Strange(map, kind, path);
        foreach (var key in kind.Keys)
        {
            if (written.TryGetValue(key.Name, out var node))
            {
                group.Write(key);
                if (Value(node, key, Join(path, key.Name)) is { } value) group.Set(key, value, node is YamlMap inner ? inner.Named
                    : node.At);
            }
            else if (key.Default is not null)
            {
                var given = new YamlScalar(map.At, key.Default, false);
                if (Value(given, key, Join(path, key.Name)) is { } value) group.Set(key, value, map.At);
            }
            else if (key.Required)
            {
                group.Lack();
                if (!meant.Contains(key.Name)) ReportMissing(map, key, path);
            }
            else if (key.Kind is GroupKind optional && !optional.Keys.Any(k => k.Required))
                group.Set(key, Group(new YamlMap(map.At, []), optional, Join(path, key.Name)), map.At); // so that its defaults exist
        }
        return group;
    }

    // Reports what is no key here; gives the keys that were meant.
    private HashSet<string> Strange(YamlMap map, GroupKind kind, string path)
    {
        var meant = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < map.Entries.Count; i++)
        {
            var entry = map.Entries[i];
            if (kind.Keys.Any(k => k.Name == entry.Key.Value) || ReportCutText(map, i, path)) continue;
            if (kind.Elsewhere(entry.Key.Value) is { Count: > 0 } others) ReportForeign(entry.Key, others, path);
            else if (ReportUnknown(entry, kind, path) is { } key) meant.Add(key);
        }
        return meant;
    }

    private object? Value(YamlNode node, Key key, string path) => key.Kind is IMapKind named && node is YamlMap map
        ? Map(map, named, path, Defined[key] = [.. map.Entries.Select(e => e.Key.Value)]) : Value(node, key.Kind, path);

    private object? Value(YamlNode node, KeyKind kind, string path) => kind switch
    {
        IShortKind spelled => Value(node, spelled.Full, path),
        TreeKind => node as YamlMap ?? WrongShape(node, path, Expected.Of(kind, _choice)),
        GroupKind group => node is YamlMap map ? Group(map, group, path) : WrongShape(node, path, Expected.Of(kind, _choice)),
        IMapKind named => WrongShape(node, path, Expected.Of(kind, _choice)),
        IListKind list => node is YamlList items ? List(items, list, path) : WrongShape(node, path, Expected.List),
        CurveKind curve => node is YamlMap map ? _scalars.Curve(map, curve, path) : Scalar(node, kind, path),
        PositionKind position => Position(node, position, path),
        _ => Scalar(node, kind, path),
    };

    private object? Scalar(YamlNode node, KeyKind kind, string path)
    {
        if (node is not YamlScalar scalar) return WrongShape(node, path, Expected.Of(kind, _choice));
        var value = _scalars.Read(scalar, kind, path);
        if (value is string name && kind is ReferenceKind reference) Uses.Add(new(reference, name, path, scalar.At));
        return value;
    }

    private object Map(YamlMap map, IMapKind kind, string path, string[] names)
    {
        var entries = new List<Entry<object>>();
        foreach (var (key, node) in map.Entries)
        {
            if (!IsName(key.Value))
                findings.Add(Severity.Stop, "name-unfit", key.At, ("name", key.Value), ("path", path));
            else if (Value(node, kind.Item, Join(path, key.Value)) is { } value) entries.Add(new(key.Value, value, key.At));
        }
        CheckCount(map, path, names.Length, kind.Min, kind.Max);
        return kind.Bind(entries);
    }

    private object List(YamlList list, IListKind kind, string path)
    {
        var items = new List<Sourced<object>>();
        for (var i = 0; i < list.Items.Count; i++)
            if (Value(list.Items[i], kind.Item, $"{path}[{i + 1}]") is { } value) items.Add(new(value, list.Items[i].At));
        CheckCount(list, path, list.Items.Count, kind.Min, kind.Max);
        return kind.Bind(items);
    }

    private double[]? Position(YamlNode node, PositionKind kind, string path)
    {
        if (node is not YamlList list || list.Items.Count != kind.Axes.Length)
        {
            WrongShape(node, path, Expected.Of(kind, _choice));
            return null;
        }
        var values = list.Items.Select((item, i) => Scalar(item, PositionKind.Length, $"{path}[{kind.Axes[i]}]")).ToArray();
        return values.All(v => v is double) ? [.. values.Cast<double>()] : null;
    }

    private object? WrongShape(YamlNode node, string path, FindingValues expected)
    {
        var holds = node switch { YamlMap => "map", YamlList => "list", YamlScalar => "text", _ => "nothing" };
        findings.Add(Severity.Stop, "wrong-type", "shape", node.At, ("path", path), ("key", KeyPath.Plain(path)), ("holds", holds),
            ("written", (node as YamlScalar)?.Value), ("count", (node as YamlList)?.Items.Count), ("expected", expected));
        return null;
    }

    private void CheckCount(YamlNode node, string path, int count, int min, int max)
    {
        if (count < min || count > max)
            findings.Add(Severity.Stop, "wrong-count", node.At, ("path", path), ("count", count), ("min", min), ("max", max));
    }

    private void ReportForeign(YamlScalar key, IReadOnlyList<string> others, string path) =>
        findings.Add(Severity.Caution, "key-of-other-kind", key.At, ("path", Join(path, key.Value)), ("key", key.Value), ("kinds", others));

    // Gives the key that was meant, if one is near: then it is not missing as well.
    private string? ReportUnknown(KeyValuePair<YamlScalar, YamlNode> entry, GroupKind kind, string path)
    {
        var key = entry.Key;
        var names = kind.Keys.Select(k => k.Name).ToArray();
        findings.Add(Severity.Stop, "unknown-key", key.At, ("path", Join(path, key.Value)), ("keys", names),
            ("near", NearestWord.Of(key.Value, names)));
        return NearestWord.Of(key.Value, names);
    }

    // "{ into: studs, sound wood }" reads as a key "sound wood" without value. Several commas in one text are one mistake.
    private bool ReportCutText(YamlMap map, int at, string path)
    {
        if (!map.InBraces || !IsRest(map.Entries[at])) return false;
        if (at > 0 && IsRest(map.Entries[at - 1]) && at > 1) return true;
        string[] rest = [.. map.Entries.Skip(at).TakeWhile(IsRest).Select(e => e.Key.Value)];
        var cut = at > 0 && map.Entries[at - 1].Value is YamlScalar { Quoted: false, Value.Length: > 0 } ? map.Entries[at - 1] : default;
        findings.Add(Severity.Stop, "unknown-key", "cut-text", map.Entries[at].Key.At, ("path", Join(path, map.Entries[at].Key.Value)),
            ("key", cut.Key?.Value), ("whole", cut.Value is YamlScalar text ? string.Join(", ", [text.Value, .. rest]) : null));
        return true;
    }

    private static bool IsRest(KeyValuePair<YamlScalar, YamlNode> entry) => entry.Value is YamlScalar { Value: "", Quoted: false };

    private void ReportMissing(YamlMap map, Key key, string path) =>
        findings.Add(Severity.Stop, "missing-key", "key", map.Named, ("path", Join(path, key.Name)), ("key", key.Name),
            ("meaning", key.Meaning),
            ("expected", Expected.Of(key.Kind, _choice)));

    private static bool IsName(string name) =>
        name.Length is > 0 and <= 40 && char.IsAsciiLetterOrDigit(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');

    private static string Join(string path, string key) => path.Length == 0 ? key : path + "." + key;
}
