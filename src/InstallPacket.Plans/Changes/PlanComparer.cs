using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Changes;

/// <summary>One difference between two plans.</summary>
/// <param name="Quantity">What it is about.</param>
/// <param name="Before">Before, or <c>none</c>.</param>
/// <param name="After">After, or <c>none</c>.</param>
/// <param name="Difference">The difference with its unit; empty for words.</param>
public sealed record PlanDifference(string Quantity, string Before, string After, string Difference);

/// <summary>What differs between two plans of one job.</summary>
/// <param name="Differences">Quantities that differ, appeared or went.</param>
/// <param name="Appeared">Findings that are new.</param>
/// <param name="Went">Findings that are gone.</param>
/// <param name="PiecesAdded">Pieces of cable that are new.</param>
/// <param name="PiecesDropped">Pieces of cable that are gone.</param>
public sealed record PlanComparison(
    IReadOnlyList<PlanDifference> Differences, IReadOnlyList<Finding> Appeared, IReadOnlyList<Finding> Went,
    IReadOnlyList<PiecePlan> PiecesAdded, IReadOnlyList<PiecePlan> PiecesDropped)
{
    /// <summary>Whether nothing differs.</summary>
    public bool Same => Differences.Count + Appeared.Count + Went.Count + PiecesAdded.Count + PiecesDropped.Count == 0;
}

/// <summary>Compares two plans by meaning: facts are joined by what they are about, not by where they stand.</summary>
public static class PlanComparer
{
    /// <summary>What differs.</summary>
    public static PlanComparison Compare(Plan before, Plan after)
    {
        var old = PlanQuantities.Of(before).ToDictionary(Key);
        var now = PlanQuantities.Of(after).ToDictionary(Key);
        var keys = now.Keys.Concat(old.Keys.Where(k => !now.ContainsKey(k)));
        return new PlanComparison(
            [.. keys.Select(k => Difference(old.GetValueOrDefault(k), now.GetValueOrDefault(k))).OfType<PlanDifference>()],
            Missing(after.Findings, before.Findings), Missing(before.Findings, after.Findings),
            [.. after.Materials.Pieces.Where(p => before.Materials.Pieces.All(q => q.Run != p.Run))],
            [.. before.Materials.Pieces.Where(p => after.Materials.Pieces.All(q => q.Run != p.Run))]);
    }

    private static (string, string) Key(PlanQuantity q) => (q.Subject, q.Name);

    // A finding is the same when it says the same, wherever it stands in the file now.
    private static Finding[] Missing(IReadOnlyList<Finding> these, IReadOnlyList<Finding> those) =>
        [.. these.Where(f => !those.Any(g => g.Id == f.Id && g.Found == f.Found && g.Severity == f.Severity))];

    private static PlanDifference? Difference(PlanQuantity? before, PlanQuantity? after)
    {
        var any = (after ?? before)!;
        var name = $"{any.Subject}: {any.Name}";
        var (b, a) = (Print(before), Print(after));
        if (b == a) return null;
        var difference = before?.Number is { } x && after?.Number is { } y ? Signed(y - x, any) : "";
        return new PlanDifference(name, b, a, difference);
    }

    private static string Print(PlanQuantity? q) => q is null ? "none" : q.Number is { } n ? UnitText.Write(n, q.Decimals, q.Unit) : q.Text;

    private static string Signed(double difference, PlanQuantity q)
    {
        var text = UnitText.Write(difference, q.Decimals, q.Unit);
        return text[0] == '\u2212' ? text : "+" + text;
    }
}
