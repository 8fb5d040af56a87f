using System.Globalization;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A part as a parts file writes it, for those who look for one.</summary>
/// <param name="Id">Its name in the library.</param>
/// <param name="Kind">What it is; null when its file does not say so.</param>
/// <param name="Name">What to ask for in a shop.</param>
/// <param name="Figures">Its figures, each with its key and unit.</param>
/// <param name="At">Where it is written.</param>
public sealed record ListedPart(string Id, PartKind? Kind, string Name, IReadOnlyList<string> Figures, SourceSpan At);

/// <summary>Lists the parts that jobs may name, with their figures as they are written or in the units of a family.</summary>
/// <param name="files">The author's files.</param>
/// <param name="units">The units of the figures; null for those that are written.</param>
public sealed class PartListing(IJobFiles files, UnitFamily? units)
{
    private readonly UnitChoice _choice = new(units);

    /// <summary>All parts by name; of several with one name the one that jobs get.</summary>
    public IReadOnlyList<ListedPart> All()
    {
        var all = new SortedDictionary<string, ListedPart>(StringComparer.Ordinal);
        foreach (var path in SharedFolder.Parts(files))
        {
            var file = files.Read(path, FileBounds.PartsBytes);
            if (file.State != FileState.Present || YamlGate.Load(file, new FindingList()) is not { } root
                || TreeEditor.Below(root, PartCatalogue.Parts.Name) is not YamlMap parts) continue;
            foreach (var (id, node) in parts.Entries)
                if (node is YamlMap part) all.TryAdd(id.Value, Listed(id, part));
        }
        return [.. all.Values];
    }

    /// <summary>Whether a part fits what somebody looks for: every word stands in its name, its id or its kind.</summary>
    /// <param name="part">The part.</param>
    /// <param name="words">The words.</param>
    public static bool Fits(ListedPart part, IEnumerable<string> words)
    {
        var text = $"{part.Id} {part.Name} {(part.Kind is { } kind ? Word.Of(kind) : "")}";
        return words.All(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
    }

    private ListedPart Listed(YamlScalar id, YamlMap part)
    {
        var kind = Word.Read<PartKind>(Text(part, PartKeys.Kind.Name));
        string[] figures = kind is not { } known ? []
            : [.. PartCatalogue.KeysOf(known).Keys.Select(k => (k, Node: TreeEditor.Below(part, k.Name))).Where(f => f.Node is not null)
                .Select(f => Figure(f.k, f.Node!)).OfType<string>()];
        return new(id.Value, kind, Text(part, PartKeys.Name.Name), figures, id.At);
    }

    private string? Figure(Key key, YamlNode node) => (key.Kind, node) switch
    {
        (QuantityKind q, YamlScalar value) => $"{key.Name} {Value(value, q.Dimension, q.Min, q.Max, q.RangeUnit)}",
        (CurveKind c, YamlScalar value) => $"{key.Name} {Value(value, c.Dimension, c.Min, c.Max, c.RangeUnit)}",
        (CurveKind c, YamlMap { Entries: [var first, .., var last] }) when first.Value is YamlScalar low && last.Value is YamlScalar high =>
            $"{key.Name} {Value(low, c.Dimension, c.Min, c.Max, c.RangeUnit)} at {first.Key.Value} to {Value(high, c.Dimension, c.Min, c.Max, c.RangeUnit)} at {last.Key.Value}",
        (IntegerKind or NumberKind, YamlScalar value) when key != PartKeys.Price => $"{key.Name} {value.Value}",
        (IListKind { Item: QuantityKind q }, YamlList list) => Figures(key, list, v => Value(v, q.Dimension, q.Min, q.Max, q.RangeUnit)),
        (IListKind { Item: CurveKind c }, YamlList list) => Figures(key, list, v => Value(v, c.Dimension, c.Min, c.Max, c.RangeUnit)),
        (YesNoKind, YamlScalar value) => $"{key.Name}: {value.Value}",
        _ => null,
    };

    private static string Figures(Key key, YamlList list, Func<YamlScalar, string> value) =>
        $"{key.Name} {string.Join(", ", list.Items.Select(i => i is YamlScalar s ? value(s) : "by frequency"))}";

    private string Value(YamlScalar written, Dimension dimension, double min, double max, string rangeUnit)
    {
        if (units is null) return written.Value;
        var reading = UnitText.Read(written.Value, dimension);
        if (reading.Problem != UnitProblem.None || _choice.Names(dimension).Contains(reading.Unit)) return written.Value;
        var unit = _choice.For(dimension, min, max, rangeUnit);
        if (unit.Name == "ft" && Math.Abs(reading.Value) < unit.Factor) unit = UnitTable.For(dimension).First(u => u.Name == "in");
        var value = (reading.Value - unit.Offset) / unit.Factor;
        var decimals = value == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Round(value, decimals):0.######} {unit.Name}");
    }

    private static string Text(YamlMap part, string key) => (TreeEditor.Below(part, key) as YamlScalar)?.Value ?? "";
}
