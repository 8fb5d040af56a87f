using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>Reads single values: our own grammar, so that YAML's old number forms (<c>017</c>, <c>1:30</c>, <c>yes</c>) cannot
/// surprise.</summary>
/// <param name="findings">Receives what does not read.</param>
/// <param name="family">The units of the job, for what findings suggest; null for a file of no job.</param>
internal sealed partial class ScalarChecker(FindingList findings, UnitFamily? family = null)
{
    private readonly UnitChoice _choice = new(family);

    /// <summary>The value, or null after a finding.</summary>
    public object? Read(YamlScalar scalar, KeyKind kind, string path) => kind switch
    {
        TextKind text => Text(scalar, text, path),
        IWordKind word => Read(scalar, word, path),
        IntegerKind whole => Number(scalar, whole.Min, whole.Max, true, path) is { } n ? (int)n : null,
        NumberKind number => Number(scalar, number.Min, number.Max, false, path),
        QuantityKind quantity => Quantity(scalar, quantity.Dimension, quantity.Min, quantity.Max, quantity.RangeUnit, path),
        CurveKind curve => Quantity(scalar, curve.Dimension, curve.Min, curve.Max, curve.RangeUnit, path) is { } v
            ? FrequencyCurve.Constant(v) : null,
        DateKind => Date(scalar, path),
        CoordinateKind coordinate => Direction.Coordinate(scalar.Value, coordinate.Latitude)
            ?? Wrong(scalar, kind, path, t => Direction.Coordinate(t, coordinate.Latitude) is not null),
        BearingKind => Direction.Bearing(scalar.Value) ?? Wrong(scalar, kind, path, t => Direction.Bearing(t) is not null),
        WishKind => Text(scalar, new TextKind(100), path),
        ReferenceKind or PathKind => scalar.Value.Length is > 0 and <= 100 ? scalar.Value : Wrong(scalar, kind, path),
        _ => throw new InvalidOperationException($"{kind.GetType().Name} is not a single value."),
    };

    /// <summary>A map from frequency to value.</summary>
    public FrequencyCurve? Curve(YamlMap map, CurveKind kind, string path)
    {
        var points = new List<(double, double)>();
        foreach (var (key, node) in map.Entries)
        {
            var at = Quantity(key, Dimension.Frequency, 1, 5000, "MHz", $"{path} frequency");
            if (node is not YamlScalar scalar) { Wrong(new(node.At, "a list or a map", false), kind, path); continue; }
            if (at is not { } f
                || Quantity(scalar, kind.Dimension, kind.Min, kind.Max, kind.RangeUnit, $"{path}.{key.Value}") is not { } v) continue;
            if (points.TrueForAll(p => p.Item1 != f)) points.Add((f, v));
            else findings.Add(Severity.Stop, "duplicate-key", "frequency", key.At, ("path", path), ("key", key.Value));
        }
        return points.Count == map.Entries.Count && points.Count > 0 ? new FrequencyCurve(points) : null;
    }

    /// <summary>What a key holds, as a phrase.</summary>
    public static string Expectation(KeyKind kind) => kind switch
    {
        TextKind t => $"text of at most {t.MaxCharacters} characters",
        IWordKind w => Words(w),
        IntegerKind i when i.Min == i.Max => $"the number {i.Min}",
        IntegerKind i => $"a whole number from {i.Min} to {i.Max}",
        NumberKind n => string.Create(CultureInfo.InvariantCulture, $"a number from {n.Min} to {n.Max}"),
        QuantityKind q =>
            string.Create(CultureInfo.InvariantCulture,
            $"a value from {q.Min} to {q.Max} {q.RangeUnit}, in {UnitTable.Names(q.Dimension)}"),
        CurveKind c => string.Create(CultureInfo.InvariantCulture,
            $"a value from {c.Min} to {c.Max} {c.RangeUnit} in {UnitTable.Names(c.Dimension)}, or a map from frequencies to such values"),
        WishKind => "the id of a station, the name or number that the set shows, a site, or `all within` a distance",
        DateKind => "a day as YYYY-MM-DD",
        CoordinateKind c => c.Latitude ? "decimal degrees with N or S, for example `44.9512 N`; or degrees, minutes and seconds"
            : "decimal degrees with E or W, for example `93.1204 W`; or degrees, minutes and seconds",
        BearingKind => "a bearing with its north, for example `214 deg true`",
        ReferenceKind r => r.Target == ReferenceTarget.Element ? "the name of an element" : "the name of a "
            + r.Target.ToString().ToLowerInvariant(),
        PathKind => "a file name in the job's own folder or in _shared/stations",
        PositionKind p => "lengths in brackets: [" + string.Join(", ", p.Axes) + "], each " + Expectation(PositionKind.Length),
        IListKind l => "a list; each item is " + Expectation(l.Item),
        IMapKind m => $"a map of {m.What} names",
        GroupKind or TreeKind => "a group of keys",
        IShortKind { Full: IListKind { Item: var item } } s when item.Equals(s.Other) => Expectation(item) + "; several as a list",
        IShortKind s => Expectation(s.Full) + ", or " + Expectation(s.Other),
        _ => throw new InvalidOperationException(kind.GetType().Name),
    };

    private string? Text(YamlScalar scalar, TextKind kind, string path)
    {
        var value = scalar.Value.Trim();
        if (scalar.Remark is { } remark && Lost().IsMatch(remark))
            findings.Add(Severity.Caution, "text-cut", scalar.At, ("path", path), ("kept", value), ("lost", remark));
        if (value.Length > 0 && value.Length <= kind.MaxCharacters && (scalar.Quoted || value is not ("~" or "null"))) return value;
        var way = value.Length > kind.MaxCharacters ? "text-long" : value.Length == 0 ? "text-empty" : "text-null";
        findings.Add(Severity.Stop, "wrong-type", way, scalar.At, ("path", path), ("written", value), ("characters", value.Length),
            ("expected", Expected.Of(kind, _choice)));
        return null;
    }

    private static string Words(IWordKind kind) => "one of: " + string.Join(", ", kind.Words);

    private object? Read(YamlScalar scalar, IWordKind kind, string path)
    {
        if (kind.Read(scalar.Value) is { } value) return value;
        findings.Add(Severity.Stop, "unknown-word", scalar.At, ("path", path), ("written", scalar.Value), ("words", kind.Words),
            ("near", NearestWord.Of(scalar.Value, kind.Words)));
        return null;
    }

    private double? Number(YamlScalar scalar, double min, double max, bool whole, string path)
    {
        var expected = whole ? Expected.Of(new IntegerKind((int)min, (int)max)) : Expected.Number(min, max);
        if (!Direction.PlainNumber(scalar.Value, out var value) || (whole && value != Math.Floor(value)))
        {
            if (scalar.Value.Contains(',') && Comma(scalar, path, expected, t => Direction.PlainNumber(t, out var n) && (!whole || n == Math.Floor(n)))) return null;
            findings.Add(Severity.Stop, "wrong-type", whole ? "whole" : "number", scalar.At, ("path", path), ("written", scalar.Value),
                ("expected", expected));
            return null;
        }
        if (value >= min && value <= max) return value;
        findings.Add(Severity.Stop, "out-of-range", "number", scalar.At, ("path", path), ("written", scalar.Value), ("expected", expected));
        return null;
    }

    private double? Quantity(YamlScalar scalar, Dimension dimension, double min, double max, string rangeUnit, string path)
    {
        var units = _choice.Names(dimension);
        var meant = _choice.For(dimension, min, max, rangeUnit);
        var reading = UnitText.Read(scalar.Value, dimension);
        switch (reading.Problem)
        {
            case UnitProblem.UnitMissing:
                findings.Add(Severity.Stop, "unit-missing", scalar.At, ("path", path), ("written", scalar.Value), ("unit", meant.Name),
                    ("units", units));
                return null;
            case UnitProblem.UnitUnknown:
                findings.Add(Severity.Stop, "unit-unknown", scalar.At, ("path", path), ("written", scalar.Value), ("unit", reading.Unit),
                    ("units", units),
                    ("near", NearestWord.Of(reading.Unit, units)));
                return null;
            case UnitProblem.NotANumber:
                bool Reads(string text) => UnitText.Read(text, dimension).Problem == UnitProblem.None;
                if (scalar.Value.Contains(',')
                    && Comma(scalar, path, Expected.Of(new QuantityKind(dimension, min, max, rangeUnit), _choice), Reads)) return null;
                findings.Add(Severity.Stop, "wrong-type", dimension == Dimension.Length ? "length" : "quantity", scalar.At,
                    ("path", path), ("written", scalar.Value), ("units", units), ("example", Math.Min(10, Math.Floor(_choice.Range(dimension, min, max, rangeUnit).Max))),
                    ("unit", meant.Name), ("us", family == UnitFamily.Us));
                return null;
        }
        var unit = UnitTable.For(dimension).First(u => u.Name == rangeUnit);
        const double slack = 1e-9;
        if (reading.Value >= (min * unit.Factor) + unit.Offset - slack && reading.Value <= (max * unit.Factor) + unit.Offset
            + slack) return reading.Value;
        var range = _choice.Range(dimension, min, max, rangeUnit);
        findings.Add(Severity.Stop, "out-of-range", "quantity", scalar.At, ("path", path), ("written", scalar.Value), ("min", range.Min),
            ("max", range.Max), ("unit", range.Unit.Name));
        return null;
    }

    private DateOnly? Date(YamlScalar scalar, string path)
    {
        if (DateOnly.TryParseExact(scalar.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        Wrong(scalar, new DateKind(), path);
        return null;
    }

    // Says what would read in place of a number with a comma; false when nothing would.
    private bool Comma(YamlScalar scalar, string path, FindingValues expected, Func<string, bool> reads)
    {
        var (dotted, whole) = (DecimalComma.Dotted(scalar.Value, reads), DecimalComma.Grouped(scalar.Value, reads));
        if (dotted is null && whole is null) return false;
        findings.Add(Severity.Stop, "wrong-type", "comma", scalar.At, ("path", path), ("written", scalar.Value), ("expected", expected),
            ("dotted", dotted), ("whole", whole));
        return true;
    }

    // A remark is set off by a space behind its mark; "#8" and "# 8" are numbers of things.
    [GeneratedRegex("^#(?:[^ #!]| ?[0-9])")]
    private static partial Regex Lost();

    private object? Wrong(YamlScalar scalar, KeyKind kind, string path, Func<string, bool>? reads = null)
    {
        if (reads is not null && scalar.Value.Contains(',') && Comma(scalar, path, Expected.Of(kind, _choice), reads)) return null;
        findings.Add(Severity.Stop, "wrong-type", "form", scalar.At, ("path", path), ("written", scalar.Value),
            ("expected", Expected.Of(kind, _choice)));
        return null;
    }
}
