using InstallPacket.Calc.Materials;

namespace InstallPacket.Calc.Tests.Materials;

public class CuttingEffortTests
{
    [Fact]
    public void Sixty_different_pieces_from_five_stocks_give_a_sound_plan_and_a_bound()
    {
        for (var n = 0; n < 6; n++)
        {
            long[] pieces = [.. Enumerable.Range(0, 60).Select(i => 10_000L + (i * 7919 + n * 104729 + i * i * 613) % 190_000)];
            var problem = new CuttingProblem(pieces, [new(3_048_000, 95), new(1_000_000, 40), new(500_000, 24), new(310_000, 0, 1), new(250_000, 13)]);
            var result = CuttingStock.Solve(problem);
            Assert.Equal("", CuttingCases.Faults(problem, result));
            Assert.True(result.Bound <= result.Cost);
        }
    }
}
