using System.Collections;
using System.Globalization;

namespace InstallPacket.Jobs.Findings;

/// <summary>
/// The named values of a finding: texts, numbers in SI with the unit in the name, truth values, lists of texts, a group of such values, or
/// a list of groups. Two with
/// the same names and values are equal.
/// </summary>
public sealed class FindingValues : IReadOnlyList<(string Name, object? Value)>, IEquatable<FindingValues>
{
    private readonly (string Name, object? Value)[] _all;
    private readonly string _text;

    /// <summary>Takes the values.</summary>
    /// <param name="values">Name and value; a number that is not finite counts as not known.</param>
    /// <exception cref="ArgumentException">A value is of another kind, or a name stands twice.</exception>
    public FindingValues(params ReadOnlySpan<(string Name, object? Value)> values)
    {
        _all = new (string, object?)[values.Length];
        for (var i = 0; i < values.Length; i++) _all[i] = (values[i].Name, Sound(values[i].Name, values[i].Value));
        if (_all.DistinctBy(v => v.Name, StringComparer.Ordinal).Count() < _all.Length)
            throw new ArgumentException("A name stands twice: " + string.Join(", ", _all.Select(v => v.Name)), nameof(values));
        _text = string.Join(", ", _all.Select(v => $"{v.Name}: {Written(v.Value)}"));
    }

    /// <inheritdoc/>
    public int Count => _all.Length;

    /// <inheritdoc/>
    public (string Name, object? Value) this[int index] => _all[index];

    /// <summary>The value of this name.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public object? this[string name] => Array.FindIndex(_all, v => v.Name == name) is >= 0 and var at ? _all[at].Value
        : throw new KeyNotFoundException($"no value '{name}' among {_text}");

    /// <inheritdoc/>
    public IEnumerator<(string Name, object? Value)> GetEnumerator() => _all.AsEnumerable().GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(FindingValues? other) => other is not null && _all.Length == other._all.Length
        && _all.Zip(other._all).All(p => p.First.Name == p.Second.Name && Same(p.First.Value, p.Second.Value));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FindingValues);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(_text);

    /// <summary>Names and values in one line, for comparing and for messages about the program's own files.</summary>
    public override string ToString() => _text;

    private static object? Sound(string name, object? value) => value switch
    {
        null or string or bool or int or FindingValues => value,
        double d => double.IsFinite(d) ? d : null,
        Calc.Work.Term term => Sound(name, term.Number),
        IEnumerable<string> list => list.ToArray(),
        IEnumerable<FindingValues> groups => groups.ToArray(),
        _ => throw new ArgumentException($"A finding cannot hold a {value.GetType().Name} as '{name}'.", nameof(value)),
    };

    private static bool Same(object? a, object? b) => (a, b) switch
    {
        (string[] one, string[] other) => one.SequenceEqual(other, StringComparer.Ordinal),
        (FindingValues[] one, FindingValues[] other) => one.SequenceEqual(other),
        _ => Equals(a, b),
    };

    private static string Written(object? value) => value switch
    {
        null => "not known",
        string[] list => $"[{string.Join("; ", list)}]",
        FindingValues[] groups => $"[{string.Join("; ", groups.Select(g => $"{{{g}}}"))}]",
        FindingValues group => $"{{{group}}}",
        double d => d.ToString("R", CultureInfo.InvariantCulture),
        int i => i.ToString(CultureInfo.InvariantCulture),
        bool b => b ? "yes" : "no",
        _ => value.ToString()!,
    };
}
