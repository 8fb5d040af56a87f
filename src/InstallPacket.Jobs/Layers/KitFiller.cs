using System.Text.RegularExpressions;

namespace InstallPacket.Jobs.Layers;

/// <summary>Fills a kit with the values that a job gives it.</summary>
/// <param name="kit">The kit.</param>
/// <param name="use">The kit's name in the job.</param>
/// <param name="given">What the job says under that name.</param>
/// <param name="units">The units of the job; null when nobody says them.</param>
/// <param name="findings">Receives what does not fit.</param>
internal sealed partial class KitFiller(Kit kit, YamlScalar use, YamlMap given, UnitFamily? units, FindingList findings)
{
    private readonly Dictionary<string, YamlNode?> _values = new(StringComparer.Ordinal);

    /// <summary>The piece of the job, with the names of its elements, runs and points below the name of the kit.</summary>
    public YamlMap Piece()
    {
        Collect();
        var filled = (YamlMap)Filled(kit.Gives)!;
        string[] elements = Defined(filled, "cabling", "chain");
        string[] runs = Defined(filled, "routing", "runs");
        string[] points = [.. Defined(filled, "routing", "points"), .. Defined(filled, "routing", "wall-points"), .. Defined(filled, "routing", "places")];
        string Own(string[] names, string name) => names.Contains(name) ? $"{use.Value}-{name}" : name;
        return new KitNames(n => Own(elements, n), n => Own(runs, n), n => Own(points, n)).In(filled, KeyCatalogue.Job);
    }

    private void Collect()
    {
        string[] names = [.. kit.Takes.Select(t => t.Name)];
        foreach (var (key, _) in given.Entries.Where(e => e.Key.Value != KitUseKeys.Kit.Name && !names.Contains(e.Key.Value)))
            findings.Add(Severity.Stop, "kit-value-unknown", key.At, ("kit", kit.Name), ("value", key.Value), ("known", names),
                ("near", NearestWord.Of(key.Value, names)));
        foreach (var take in kit.Takes) _values[take.Name] = Value(take);
    }

    private YamlNode? Value(Entry<CheckedGroup> take)
    {
        var kind = KitValueKeys.KindOf(take.Value.Get(KitValueKeys.Holds));
        var path = $"kits.{use.Value}.{take.Name}";
        if (given.Entries.FirstOrDefault(e => e.Key.Value == take.Name).Value is { } written)
        {
            new NodeChecker(findings, units).Check(written, kind, path);
            return written;
        }
        if (take.Value.Maybe(KitValueKeys.Absent) is { } absent) return new YamlScalar(absent.At, absent.Value, false);
        if (take.Value.Get(KitValueKeys.Needed))
            findings.Add(Severity.Stop, "kit-value-missing", use.At, ("kit", kit.Name), ("path", path), ("value", take.Name),
                ("what", take.Value.Maybe(KitValueKeys.What)?.Value), ("expected", Expected.Of(kind, new UnitChoice(units))));
        return null;
    }

    // Null: the value that it asks for is not given and need not be.
    private YamlNode? Filled(YamlNode node) => node switch
    {
        YamlMap map => map with
        {
            Entries = [.. map.Entries.Select(e => (e.Key, Value: Filled(e.Value))).Where(e => e.Value is not null)
                .Select(e => new KeyValuePair<YamlScalar, YamlNode>(e.Key, e.Value is YamlMap m ? m with { Named = e.Key.At } : e.Value!))],
        },
        YamlList list => list with { Items = [.. list.Items.Select(Filled).OfType<YamlNode>()] },
        YamlScalar scalar => Filled(scalar),
        _ => node,
    };

    private YamlNode? Filled(YamlScalar scalar)
    {
        var blanks = Blank().Matches(scalar.Value);
        if (blanks.Count == 0) return scalar;
        foreach (var blank in blanks.Select(b => b.Groups[1].Value).Where(b => !_values.ContainsKey(b)))
        {
            findings.Add(Severity.Stop, "kit-blank-unknown", scalar.At, ("kit", kit.Name), ("asked", blank), ("known", _values.Keys),
                ("near", NearestWord.Of(blank, _values.Keys)));
            return scalar;
        }
        if (blanks.Count == 1 && blanks[0].Length == scalar.Value.Length) return _values[blanks[0].Groups[1].Value];
        if (blanks.Any(b => _values[b.Groups[1].Value] is null)) return null;
        return scalar with { Value = Blank().Replace(scalar.Value, b => (_values[b.Groups[1].Value] as YamlScalar)?.Value ?? b.Value) };
    }

    private static string[] Defined(YamlMap map, string section, string key) =>
        new TreeEditor(map).Find(section, key) is YamlMap names ? [.. names.Entries.Select(e => e.Key.Value)] : [];

    [GeneratedRegex("<([A-Za-z][A-Za-z0-9-]*)>")]
    private static partial Regex Blank();
}
