using System.Globalization;
using System.Text;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Checks;

/// <summary>The page that says how well the program meets published values.</summary>
public static class ValidationPage
{
    private static readonly Lazy<string> Generated = new(Build);

    public static string Text => Generated.Value;

    private static string Build()
    {
        var page = new StringBuilder();
        page.Append("# Validation\n\n");
        page.Append("Made by the tests from the reference sets; do not edit. Only the first two tables validate. The others are regression, not validation:\n");
        page.Append("they repeat arithmetic of our own notes and show that nothing has changed.\n\n");
        page.Append("*Worst* is the largest deviation met, beside the tolerance that applied there. Deviations below a tenth of the tolerance are printed as such,\n");
        page.Append("because their digits depend on the machine.\n");
        Section(page, "Against published values", Worth.Published);
        Section(page, "Against independent programs", Worth.Independent);
        Section(page, "Regression, not validation: derived values", Worth.Derived);
        Section(page, "Regression, not validation: recalled values", Worth.Recalled);
        Open(page);
        return page.ToString();
    }

    private static void Section(StringBuilder page, string title, Worth worth)
    {
        var sets = ReferenceSets.All.Where(s => s.Worth == worth).ToArray();
        if (sets.Length == 0) return;
        page.Append(CultureInfo.InvariantCulture, $"\n## {title}\n\n");
        page.Append("| what | source | rows | comparisons | worst | tolerance |\n|---|---|---|---|---|---|\n");
        foreach (var set in sets) page.Append(Line(set)).Append('\n');
    }

    private static string Line(ReferenceSet set)
    {
        var all = set.Run().SelectMany(r => r.Results).ToArray();
        var worst = all.MaxBy(c => c.Share)!;
        var leftOut = set.RowsLeftOut > 0 ? $" ({set.RowsLeftOut} left out: {set.LeftOutBecause})" : "";
        return $"| {set.Name}; `{set.File}`; {string.Join(", ", set.Formulas.Select(f => $"`{f}`"))} | {SourceRegister.Get(set.Source).Title} | {set.Rows}{leftOut} "
            + $"| {all.Length} | {Worst(worst)} | {set.Tolerance} |";
    }

    private static string Worst(Comparison c)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(c.Tolerance)) - 2);
        var allowed = Plain(c.Tolerance, step);
        var unit = c.Unit.Length > 0 ? " " + c.Unit : "";
        return c.Share < 0.1 ? $"below a tenth of {allowed}{unit}" : $"{Plain(c.Deviation, step)} of {allowed}{unit}";
    }

    // Steps of a hundredth of the tolerance's leading digit: fine enough to see a change, coarse enough for another machine's last bits.
    private static string Plain(double value, double step) => (Math.Round(value / step) * step).ToString("G3", CultureInfo.InvariantCulture);

    private static void Open(StringBuilder page)
    {
        page.Append("\n## Formulas without a reference row\n\n");
        if (FormulaList.WithoutRows.Count == 0) page.Append("None.\n");
        foreach (var (id, why) in FormulaList.WithoutRows) page.Append(CultureInfo.InvariantCulture, $"- `{id}`: {why}\n");
    }
}
