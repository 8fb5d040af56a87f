using System.Globalization;
using InstallPacket.Calc.Materials;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Materials;

/// <summary>The instances of the reference notes.</summary>
internal static class CuttingCases
{
    public static IReadOnlyList<string> Names => [.. Rows("cutting_instances.csv").Select(r => r["instance"])];

    public static CuttingProblem Of(string name)
    {
        var head = Rows("cutting_instances.csv").Single(r => r["instance"] == name);
        var pieces = Rows("cutting_instance_items.csv").Where(r => r["instance"] == name).SelectMany(r => Enumerable.Repeat(Whole(r["length"]), (int)Whole(r["demand"])));
        return new([.. pieces], [new(Whole(head["stock_length"]), 1)], Whole(head["kerf"]));
    }

    public static CuttingProblem SeveralStocks()
    {
        var rows = Rows("cutting_instance_multistock.csv");
        return new(
            [.. rows.Where(r => r["row"] == "M1 item").SelectMany(r => Enumerable.Repeat(Whole(r["length"]), (int)Whole(r["count"])))],
            [.. rows.Where(r => r["row"] == "M1 stock").Select(r => new CutStock(Whole(r["length"]), Whole(r["cost"])))]);
    }

    /// <summary>Sum of a pattern as printed: <c>2x45 + 1x36</c>.</summary>
    public static long PatternLength(string pattern) =>
        pattern.Split(" + ").Select(p => p.Split('x')).Sum(p => Whole(p[0]) * Whole(p[1]));

    /// <summary>Says what is wrong with a plan; empty when each piece is cut once and no stock is overfilled or used too often.</summary>
    public static string Faults(CuttingProblem problem, CutResult result)
    {
        var cut = result.Strips.SelectMany(s => s.Pieces).Order().ToArray();
        if (!cut.SequenceEqual(Enumerable.Range(0, problem.Pieces.Count))) return "pieces are missing or cut twice";
        foreach (var strip in result.Strips)
            if (strip.Pieces.Sum(p => problem.Pieces[p]) + (strip.Pieces.Count - 1) * problem.Kerf > problem.Stock[strip.Stock].Length) return "a stock is overfilled";
        foreach (var use in result.Strips.GroupBy(s => s.Stock))
            if (problem.Stock[use.Key].Count is { } count && use.Count() > count) return "a stock is used too often";
        return result.Cost == result.Strips.Sum(s => problem.Stock[s.Stock].Cost) ? "" : "the cost is not the sum of its parts";
    }

    private static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string file) => CsvText.Rows(ReferenceFile.Text("materials/" + file));

    private static long Whole(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}
