using System.Text.Json.Nodes;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Work;

namespace InstallPacket.Packets.Language;

/// <summary>
/// The workings of a plan in the language of its pages. <c>plan.json</c> keeps the texts by which formulas and rows are told apart.
/// Each row gets a place in the page.
/// </summary>
internal static class SpokenWorkings
{
    /// <summary>Puts the words of the language in place of those of the plan.</summary>
    /// <param name="model">The tree that templates see.</param>
    /// <param name="workings">The rows that it was made of.</param>
    /// <param name="ids">Their places in the page.</param>
    /// <param name="words">The language.</param>
    public static void Into(JsonObject model, IReadOnlyList<Row> workings, RowIds ids, JobWords words)
    {
        var groups = workings.GroupBy(w => w.Formula.Id, StringComparer.Ordinal);
        foreach (var (rows, node) in groups.Zip(model["workings"]!.AsArray()))
        {
            Formula(rows.First().Formula, node!.AsObject(), words.Words);
            foreach (var (row, entry) in rows.Zip(node["rows"]!.AsArray())) Speak(row, entry!.AsObject(), ids, words);
        }
    }

    private static void Speak(Row row, JsonObject entry, RowIds ids, JobWords words)
    {
        entry["subject"] = SubjectWords.Say(row.About, words);
        entry["row_id"] = ids.Of(row);
    }

    private static void Formula(Formula formula, JsonObject node, Words words)
    {
        Set(node, "title", FormulaWords.Title(formula), words);
        Set(node, "place", FormulaWords.Place(formula), words);
        Set(node["result"]!.AsObject(), "meaning", FormulaWords.Result(formula), words);
        var inputs = node["inputs"]!.AsArray();
        for (var i = 0; i < inputs.Count; i++) Set(inputs[i]!.AsObject(), "meaning", FormulaWords.Input(formula, i), words);
    }

    private static void Set(JsonObject node, string key, string id, Words words)
    {
        if (words.Has(id)) node[key] = words.Plain(id);
    }
}
