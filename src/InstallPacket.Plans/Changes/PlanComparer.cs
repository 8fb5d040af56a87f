using InstallPacket.Calc.Quantities;
using System.Text.Json.Nodes;

namespace InstallPacket.Plans.Changes;

/// <summary>One difference between two plans.</summary>
/// <param name="Quantity">What it is about.</param>
/// <param name="Before">Before, or <c>absent</c>.</param>
/// <param name="After">After, or <c>absent</c>.</param>
/// <param name="Difference">The difference with its unit; empty for words.</param>
public sealed record PlanDifference(string Quantity, string Before, string After, string Difference);

/// <summary>What differs between two plans of one job.</summary>
/// <param name="Differences">Leaves of the plan that differ, appeared or went, in the order of the plan.</param>
/// <param name="Appeared">Findings that are new.</param>
/// <param name="Went">Findings that are gone.</param>
public sealed record PlanComparison(IReadOnlyList<PlanDifference> Differences, IReadOnlyList<Finding> Appeared, IReadOnlyList<Finding> Went)
{
    /// <summary>Whether nothing differs.</summary>
    public bool Same => Differences.Count + Appeared.Count + Went.Count == 0;
}

/// <summary>
/// Compares two plans leaf by leaf, so that nothing printed changes silently. Entries of lists are matched by what they are called, not by
/// where they stand.
/// </summary>
public static class PlanComparer
{
    /// <summary>Parts of the tree that are not compared leaf by leaf, and why.</summary>
    public static IReadOnlyDictionary<string, string> Apart { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["findings"] = "compared as findings; their line and column move with any remark above them",
        ["workings"] = "rows lead to numbers of the plan; rows that differ are counted",
    };

    /// <summary>What differs.</summary>
    public static PlanComparison Compare(Plan before, Plan after)
    {
        var (old, now) = (PlanJson.Tree(before), PlanJson.Tree(after));
        return new PlanComparison(
            [.. Differences(PlanLeaves.Of(old), PlanLeaves.Of(now)), .. Rows(old["workings"]!, now["workings"]!)],
            Missing(after.Findings, before.Findings), Missing(before.Findings, after.Findings));
    }

    private static IEnumerable<PlanDifference> Differences(IReadOnlyList<PlanLeaf> before, IReadOnlyList<PlanLeaf> after)
    {
        var old = before.ToDictionary(l => l.Path, StringComparer.Ordinal);
        var now = after.Select(l => l.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var leaf in after)
            if (LeafPrinter.Difference(old.GetValueOrDefault(leaf.Path), leaf) is { } difference) yield return difference;
        foreach (var leaf in before.Where(l => !now.Contains(l.Path)))
            if (LeafPrinter.Difference(leaf, null) is { } difference) yield return difference;
    }

    // A finding is the same when it says the same, wherever it stands in the file now.
    private static Finding[] Missing(IReadOnlyList<Finding> these, IReadOnlyList<Finding> those) =>
        [.. these.Where(f => !those.Any(g => g with { At = f.At } == f))];

    private static IEnumerable<PlanDifference> Rows(JsonNode before, JsonNode after)
    {
        var (old, now) = (Texts(before), Texts(after));
        var (gone, come) = (old.Except(now, StringComparer.Ordinal).Count(), now.Except(old, StringComparer.Ordinal).Count());
        if (gone + come > 0) yield return new("workings: rows that differ", UnitText.Number(gone, 0), UnitText.Number(come, 0), "");
    }

    // A row with all that is printed of its formula.
    private static string[] Texts(JsonNode workings) =>
        [.. workings.AsArray().SelectMany(f =>
            f!["rows"]!.AsArray().Select(r =>
            $"{f["id"]} {f["title"]} {f["equation"]} {f["source"]} {f["place"]} {f["result"]} {f["inputs"]} {r}"))];
}
