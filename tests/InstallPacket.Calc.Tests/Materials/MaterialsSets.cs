using InstallPacket.Calc.Materials;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Materials;

public static class MaterialsSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Cutting from one stock length: fewest lengths, bounds, linear program", File = "materials/cutting_instances.csv", Source = "cutting-notes", Worth = Worth.Independent,
            Tolerance = "whole numbers exactly; half a unit of the last printed digit", Formulas = ["cutting-least-cost", "cutting-cover-bound", "cutting-long-pieces-bound", "cutting-waste"],
            Rows = 14, Comparisons = 70, Check = Instance,
        },
        new()
        {
            Name = "Cutting from several stock lengths: least cost", File = "materials/cutting_instance_multistock.csv", Source = "cutting-notes", Worth = Worth.Independent,
            Tolerance = "whole numbers exactly", Formulas = ["cutting-least-cost"], Rows = 15, Comparisons = 2, RowsLeftOut = 14, LeftOutBecause = "stock, pieces and patterns of the one instance",
            Check = r => r.Text("row") == "M1 result" ? Several(r) : [],
        },
        new()
        {
            Name = "Published cutting patterns: used length", File = "materials/cutting_instance_solutions.csv", Source = "cutting-notes", Worth = Worth.Derived,
            Tolerance = "whole numbers exactly", Formulas = ["cutting-waste"], Rows = 52, Comparisons = 52, Check = Pattern,
        },
        new()
        {
            Name = "Spares and packs", File = "materials/packs.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = "whole numbers exactly",
            Formulas = ["count-with-spares", "whole-packs"], Rows = 6, Comparisons = 12, Check = Packs,
        },
    ];

    private static Comparison[] Instance(ReferenceRow r)
    {
        var problem = CuttingCases.Of(r.Text("instance"));
        var instance = CutInstance.Of(problem);
        // The notes print the ceiling without the kerf.
        var (plain, whole) = (CutInstance.Of(problem with { Kerf = 0 }, reduce: false), CutInstance.Of(problem, reduce: false));
        var result = CuttingStock.Solve(problem);
        var program = new CuttingProgram(instance);
        program.Solve();
        return
        [
            r.Within("lower_bound_ceiling", CuttingBounds.Cover(plain, plain.Total(plain.Demand), plain.Counts), 1e-9, "lengths"),
            r.Within("lower_bound_L2", CuttingBounds.LongPieces(whole.Lengths, whole.Demand, whole.StockLengths[0]), 1e-9, "lengths"),
            r.Printed("LP_bound_proper_patterns", program.Value, "lengths"),
            r.Within("optimum_stocks", result.Proved ? result.Cost : -1, 1e-9, "lengths"),
            r.Printed("waste_percent_at_optimum", CuttingStock.WastePct(problem.Pieces.Sum(), (double)result.Cost * problem.Stock[0].Length), "%"),
        ];
    }

    private static Comparison[] Several(ReferenceRow r)
    {
        var result = CuttingStock.Solve(CuttingCases.SeveralStocks());
        return [r.Within("cost", result.Cost, 1e-9, "cost"), r.Expect("proved", 1, result.Proved ? 1 : 0, 1e-9, "")];
    }

    private static Comparison[] Pattern(ReferenceRow r) => [r.Within("used_length", CuttingCases.PatternLength(r.Text("pattern_pieces")), 1e-9, "lengths")];

    private static Comparison[] Packs(ReferenceRow r)
    {
        var wanted = PackCount.WithSpares((int)r.Value("wanted"), r.Value("spare_pct"));
        return [r.Within("with_spares", wanted, 1e-9, ""), r.Within("packs", PackCount.Packs(wanted, (int)r.Value("in_pack")), 1e-9, "")];
    }
}
