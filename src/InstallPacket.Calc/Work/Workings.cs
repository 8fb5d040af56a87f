using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Work;

/// <summary>
/// The workings of one planner: it applies formulas to terms and keeps each application as a row. Nobody else sees them until the planner
/// hands them over, so that a trial leaves no trace.
/// </summary>
/// <param name="kept">Whether rows are kept; a trial of which only the result is asked has no use for them.</param>
public sealed class Workings(bool kept = true)
{
    private readonly List<Row> _rows = [];
    private readonly Dictionary<(string Formula, string Subject), Row> _byKey = [];

    /// <summary>All rows in the order of computation.</summary>
    public IReadOnlyList<Row> Rows => _rows;

    /// <summary>Applies a formula.</summary>
    /// <param name="formula">The formula; it owns its method.</param>
    /// <param name="subject">What it is applied to; one formula has one row a subject.</param>
    /// <param name="inputs">The inputs, in the order and the units of the formula.</param>
    /// <returns>The row, which is the result too.</returns>
    /// <exception cref="InvalidOperationException">The same formula was applied to the same subject with other inputs: a bug of the
    /// planner.</exception>
    public Row Apply(Formula formula, Subject subject, params Term[] inputs)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var method = formula.Method ?? throw new InvalidOperationException($"The formula {formula.Id} has no method of its own.");
        return Before(formula, subject, inputs) ?? Add(new(formula, subject, inputs, method(Numbers(formula, inputs))));
    }

    /// <summary>Applies a formula whose method needs more than its listed inputs: a profile, a table, a tree of forces.</summary>
    /// <typeparam name="TCase">What it needs.</typeparam>
    /// <param name="formula">The formula; it owns its method.</param>
    /// <param name="data">What the method needs.</param>
    /// <param name="subject">What it is applied to.</param>
    /// <param name="inputs">The inputs, in the order and the units of the formula.</param>
    /// <returns>The row, which is the result too.</returns>
    /// <exception cref="InvalidOperationException">The same formula was applied to the same subject with other inputs: a bug of the
    /// planner.</exception>
    public Row Apply<TCase>(Formula<TCase> formula, TCase data, Subject subject, params Term[] inputs)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return Before(formula, subject, inputs) ?? Add(new(formula, subject, inputs, formula.MethodOf(data, Numbers(formula, inputs))));
    }

    /// <summary>Takes over the rows of another planner.</summary>
    /// <param name="other">Its workings.</param>
    /// <exception cref="InvalidOperationException">Both applied a formula to the same subject with different inputs.</exception>
    public void Take(Workings other)
    {
        ArgumentNullException.ThrowIfNull(other);
        foreach (var row in other._rows)
            if (Before(row.Formula, row.About, row.Inputs) is null) Add(row);
    }

    private Row? Before(Formula formula, Subject subject, IReadOnlyList<Term> inputs)
    {
        if (!kept || !_byKey.TryGetValue((formula.Id, subject.ToString()), out var before)) return null;
        for (var i = 0; i < inputs.Count; i++)
        {
            if (!before.Inputs[i].Number.Equals(inputs[i].Number))
                throw new InvalidOperationException(FormattableString.Invariant(
                    $"{formula.Id} was applied to '{subject}' with {formula.Inputs[i].Sign} = {before.Inputs[i].Number} and {inputs[i].Number}."));
        }
        return before;
    }

    private Row Add(Row row)
    {
        if (!kept) return row;
        _rows.Add(row);
        _byKey.Add((row.Formula.Id, row.Subject), row);
        return row;
    }

    private static double[] Numbers(Formula formula, Term[] inputs)
    {
        if (inputs.Length != formula.Inputs.Count)
            throw new ArgumentException($"{formula.Id} takes {formula.Inputs.Count} inputs, {inputs.Length} were given.", nameof(inputs));
        return Array.ConvertAll(inputs, t => t.Number);
    }
}
