using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>Records each application of a formula while planners compute, so that the packet prints what really ran.</summary>
public sealed class WorkLog
{
    private readonly List<Worked> _entries = [];
    private readonly HashSet<(string, string)> _seen = [];

    /// <summary>All records in order.</summary>
    public IReadOnlyList<Worked> Entries => _entries;

    /// <summary>Records one application and returns its result. The same formula on the same subject is recorded once.</summary>
    /// <param name="formula">The equation.</param>
    /// <param name="subject">What it was applied to.</param>
    /// <param name="result">The result, in the unit of the formula.</param>
    /// <param name="inputs">The inputs, in the order and the units of the formula.</param>
    public double Record(Formula formula, string subject, double result, params double[] inputs)
    {
        if (inputs.Length != formula.Inputs.Count)
            throw new ArgumentException($"{formula.Id} takes {formula.Inputs.Count} inputs, {inputs.Length} were recorded.", nameof(inputs));
        if (_seen.Add((formula.Id, subject))) _entries.Add(new Worked(formula, subject, inputs, result));
        return result;
    }
}
