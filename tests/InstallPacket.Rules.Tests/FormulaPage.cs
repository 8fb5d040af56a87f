using System.Reflection;
using System.Text;
using InstallPacket.Calc.Sources;
using InstallPacket.Plans;

namespace InstallPacket.Rules.Tests;

/// <summary>The page of all equations, written from the formulas that stand beside the code.</summary>
internal static class FormulaPage
{
    public static string Text()
    {
        var page = new StringBuilder("""
            # Equations

            This page is written from the formulas that stand beside the code; a test keeps it true. How well each agrees with published or
            derived values is on the [validation page](validation.md). *read*: seen in the named document. *derived*: arithmetic from other
            values. *memory*: recalled, printed with "verify". *common practice*: a habit of the trade.


            """);
        foreach (var group in All().GroupBy(f => f.Area).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            page.Append("## ").Append(group.Key).Append("\n\n");
            foreach (var (_, f) in group.OrderBy(f => f.Formula.Id, StringComparer.Ordinal)) Append(page, f);
        }
        return page.ToString().ReplaceLineEndings("\n").TrimEnd() + "\n";
    }

    private static void Append(StringBuilder page, Formula f)
    {
        page.Append("### ").Append(f.Title).Append("\n\n`").Append(f.Equation.Replace('`', '\'')).Append("`\n\n");
        page.Append(Symbol(f.Result)).Append(". ");
        if (f.Inputs.Count > 0) page.Append("With ").AppendJoin("; ", f.Inputs.Select(Symbol)).Append(". ");
        page.Append("Source: ").Append(SourceRegister.Get(f.Source).Title).Append("; ").Append(f.Place).Append(" (").Append(ProvenanceWord.Of(f.Provenance)).Append("). Identifier `").Append(f.Id).Append("`.\n\n");
    }

    private static string Symbol(Symbol s) => $"*{s.Sign.Replace("*", "\\*")}*{(s.Unit.Length > 0 ? $" [{s.Unit}]" : "")}: {s.Meaning}";

    // The same formula may be named by several fields; its identifier makes it one.
    private static IEnumerable<(string Area, Formula Formula)> All() =>
        new[] { typeof(Formula).Assembly, typeof(PlanFormulas).Assembly }.SelectMany(a => a.GetTypes())
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic).Where(f => f.FieldType.IsAssignableTo(typeof(Formula)))
                .Select(f => (Area: Area(t), Formula: (Formula)f.GetValue(null)!)))
            .DistinctBy(f => f.Formula.Id);

    private static string Area(Type type) => type.Assembly == typeof(PlanFormulas).Assembly ? "Sums of the planners" : type.Namespace!.Split('.')[^1];
}
