using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

/// <summary>
/// One set of columns for both channels. When they come from two antennas each has a way of its own up to the combiner: the ways
/// stand side by side, and a channel goes level through the columns of the other.
/// </summary>
internal sealed class LadderColumns
{
    private readonly bool[][] _passes;

    private LadderColumns(LadderPlan ladder, string[] names, bool[][] passes) => (Ladder, Names, _passes) = (ladder, names, passes);

    /// <summary>The ladder with a step for every column in each line.</summary>
    public LadderPlan Ladder { get; }

    /// <summary>Names of the columns.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Whether a line goes through the step of a column.</summary>
    public bool Passes(int line, int column) => _passes[line][column];

    /// <summary>Finds the columns.</summary>
    /// <param name="ladder">One or two lines, each with at least the antenna.</param>
    public static LadderColumns Of(LadderPlan ladder)
    {
        var shared = Shared(ladder.Lines[0].Steps, ladder.Lines[^1].Steps);
        var ways = ladder.Lines.Select(l => l.Steps.Skip(1).SkipLast(shared).ToArray()).ToArray();
        var own = ways.SelectMany((way, line) => way.Select(step => (Line: line, step.Label))).ToArray();
        string[] names = [ladder.Lines[0].Steps[0].Label, .. own.Select(o => o.Label),
            .. ladder.Lines[0].Steps.TakeLast(shared).Select(s => s.Label)];
        var passes = ladder.Lines.Select((_, line) =>
            names.Select((_, i) => i == 0 || i > own.Length || own[i - 1].Line == line).ToArray()).ToArray();
        return new(ladder with { Lines = [.. ladder.Lines.Select((l, i) => l with { Steps = Filled(l.Steps, passes[i]) })] }, names,
            passes);
    }

    // Steps that both have, counted from the receiver; the antenna always stands first.
    private static int Shared(IReadOnlyList<LadderStep> a, IReadOnlyList<LadderStep> b)
    {
        var shared = 0;
        while (shared < Math.Min(a.Count, b.Count) - 1 && a[^(shared + 1)].Label == b[^(shared + 1)].Label) shared++;
        return shared;
    }

    private static LadderStep[] Filled(IReadOnlyList<LadderStep> steps, bool[] passes)
    {
        var filled = new List<LadderStep>();
        var next = 0;
        foreach (var passed in passes) filled.Add(passed ? steps[next++] : filled[^1] with { GainDb = 0, CeilingDbm = null });
        return [.. filled];
    }
}
