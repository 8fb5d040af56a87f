using CsCheck;
using InstallPacket.Calc.Materials;

namespace InstallPacket.Calc.Tests.Materials;

public class CuttingTests
{
    public static TheoryData<string> Names => [.. CuttingCases.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_instance_gives_a_sound_plan_that_is_proved_best(string name)
    {
        var problem = CuttingCases.Of(name);
        var result = CuttingStock.Solve(problem);
        Assert.Equal("", CuttingCases.Faults(problem, result));
        Assert.True(result.Proved);
        Assert.Equal(result.Bound, result.Cost);
    }

    [Fact]
    public void Several_stock_lengths_give_a_sound_plan() =>
        Assert.Equal("", CuttingCases.Faults(CuttingCases.SeveralStocks(), CuttingStock.Solve(CuttingCases.SeveralStocks())));

    [Fact]
    public void Small_problems_agree_with_trying_everything() => Problems(6, 3).Sample(problem =>
    {
        var result = CuttingStock.Solve(problem);
        var least = BruteForce(problem);
        Assert.True(result.Proved);
        Assert.Equal(least is not null, result.Found);
        if (least is null) return;
        Assert.Equal("", CuttingCases.Faults(problem, result));
        Assert.Equal(least, result.Cost);
    }, iter: 1500);

    [Fact]
    public void A_search_that_is_cut_short_never_claims_too_much() => Problems(7, 3).Sample(problem =>
    {
        var least = BruteForce(problem);
        var result = CuttingStock.Solve(problem, mostNodes: 2);
        if (result.Found) Assert.Equal("", CuttingCases.Faults(problem, result));
        if (least is null) { Assert.False(result.Found); return; }
        Assert.True(result.Bound <= least, $"bound {result.Bound}, optimum {least}");
        if (result.Found) Assert.True(result.Cost >= least);
        if (result.Proved) Assert.Equal(least, result.Cost);
    }, iter: 800);

    [Fact]
    public void The_linear_program_never_exceeds_the_optimum() => Problems(6, 3).Sample(problem =>
    {
        if (BruteForce(problem) is not { } least) return;
        var program = new CuttingProgram(CutInstance.Of(problem));
        program.Solve();
        Assert.True(program.Bound <= least, $"bound {program.Bound}, optimum {least}");
    }, iter: 800);

    [Fact]
    public void A_cap_of_few_nodes_gives_the_best_found_and_its_bound()
    {
        var open = 0;
        for (var n = 0; n < 40; n++)
        {
            // Pieces between a fifth and a half of the stock, all different: hard to prove.
            var problem = new CuttingProblem([.. Enumerable.Range(0, 21).Select(i => 200L + (i * 37 + n * 101 + i * i * 13) % 300)], [new(1000, 1)]);
            var cut = CuttingStock.Solve(problem, mostNodes: 30);
            Assert.True(cut.Found);
            Assert.Equal("", CuttingCases.Faults(problem, cut));
            if (cut.Proved) continue;
            open++;
            var whole = CuttingStock.Solve(problem);
            Assert.True(cut.Bound < cut.Cost);
            Assert.True(cut.Bound <= whole.Cost && whole.Cost <= cut.Cost);
        }
        Assert.True(open > 0);
    }

    [Fact]
    public void The_same_problem_gives_the_same_plan()
    {
        var problem = CuttingCases.Of("J3");
        Assert.Equal(
            CuttingStock.Solve(problem).Strips.Select(s => string.Join(' ', s.Pieces)), CuttingStock.Solve(problem).Strips.Select(s => string.Join(' ', s.Pieces)));
    }

    [Fact]
    public void A_piece_longer_than_all_stock_has_no_plan()
    {
        var result = CuttingStock.Solve(new([11, 2], [new(10, 1)]));
        Assert.False(result.Found);
        Assert.True(result.Proved);
    }

    [Fact]
    public void Lengths_that_are_not_above_zero_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CuttingStock.Solve(new([0], [new(10, 1)])));
        Assert.Throws<ArgumentOutOfRangeException>(() => CuttingStock.Solve(new([1], [new(-10, 1)])));
    }

    [Fact]
    public void Spares_never_lower_a_count_and_packs_hold_it() => Gen.Select(Gen.Int[0, 500], Gen.Double[0, 50], Gen.Int[1, 100]).Sample((wanted, spare, pack) =>
    {
        var count = PackCount.WithSpares(wanted, spare);
        Assert.InRange(count - wanted * (1 + spare / 100), -1e-6, 1);
        var packs = PackCount.Packs(count, pack);
        Assert.True(packs * pack >= count && (packs - 1) * pack < count || count == 0 && packs == 0);
    });

    private static Gen<CuttingProblem> Problems(int mostPieces, int mostStocks)
    {
        var stock = Gen.Select(Gen.Long[5, 25], Gen.Long[0, 9], Gen.Int[0, 3]).Select((length, cost, count) => new CutStock(length, cost, count == 0 ? null : count));
        return Gen.Select(Gen.Long[1, 14].Array[1, mostPieces], stock.Array[1, mostStocks], Gen.Long[0, 2]).Select((pieces, stocks, kerf) => new CuttingProblem(pieces, stocks, kerf));
    }

    // Puts each piece on every opened and every new stock in turn.
    private static long? BruteForce(CuttingProblem problem)
    {
        long? best = null;
        var open = new List<(int Stock, long Left)>();
        void Place(int at, long cost)
        {
            if (best <= cost) return;
            if (at == problem.Pieces.Count) { best = cost; return; }
            var length = problem.Pieces[at] + problem.Kerf;
            for (var i = 0; i < open.Count; i++)
            {
                var before = open[i];
                if (before.Left < length) continue;
                open[i] = before with { Left = before.Left - length };
                Place(at + 1, cost);
                open[i] = before;
            }
            for (var s = 0; s < problem.Stock.Count; s++)
            {
                var left = problem.Stock[s].Length + problem.Kerf - length;
                if (left < 0 || open.Count(o => o.Stock == s) >= (problem.Stock[s].Count ?? int.MaxValue)) continue;
                open.Add((s, left));
                Place(at + 1, cost + problem.Stock[s].Cost);
                open.RemoveAt(open.Count - 1);
            }
        }
        Place(0, 0);
        return best;
    }
}
