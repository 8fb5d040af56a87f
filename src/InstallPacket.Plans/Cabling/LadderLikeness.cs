namespace InstallPacket.Plans.Cabling;

/// <summary>Says which figure shows the ladder of each outlet: outlets that nobody could tell apart on paper share one.</summary>
internal static class LadderLikeness
{
    /// <summary>Name of the figure of the outlet with the smallest margin; those of the others begin with it.</summary>
    public const string Figure = "level-ladder";

    // Half a decibel is half a millimetre on the sheet, and less than any meter tells.
    private const double SameDb = 0.5;

    /// <summary>The same ladders, each with its figure.</summary>
    public static IReadOnlyList<LadderPlan> Grouped(IReadOnlyList<LadderPlan> ladders)
    {
        var drawn = new List<LadderPlan>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        return [.. ladders.Select(Name)];

        LadderPlan Name(LadderPlan ladder)
        {
            if (drawn.Find(d => Alike(d, ladder)) is { } like) return ladder with { Figure = like.Figure, SameAs = like.Outlet };
            var name = drawn.Count == 0 ? Figure : $"{Figure}-{ladder.Outlet.ToLowerInvariant()}";
            // Names of outlets may differ in capitals alone.
            while (!names.Add(name)) name += "-2";
            drawn.Add(ladder with { Figure = name });
            return drawn[^1];
        }
    }

    private static bool Alike(LadderPlan a, LadderPlan b) => a.Lines.Count == b.Lines.Count
        && a.Lines.Zip(b.Lines).All(p => Alike(p.First, p.Second));

    private static bool Alike(LadderLine a, LadderLine b) =>
        a.Station == b.Station && a.Role == b.Role && Math.Abs(a.MarginDb - b.MarginDb) <= SameDb && a.Steps.Count == b.Steps.Count
        && a.Steps.Zip(b.Steps).All(p => Kind(p.First.Label) == Kind(p.Second.Label)
            && Math.Abs(p.First.LevelDbm - p.Second.LevelDbm) <= SameDb);

    // Every outlet and its run have names of their own; what the step is counts.
    private static string Kind(string label) => label.StartsWith("run ", StringComparison.Ordinal) ? "run"
        : label[(label.IndexOf(' ', StringComparison.Ordinal) + 1)..];
}
