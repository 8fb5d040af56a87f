using CsCheck;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Sources;

/// <summary>What a planner runs through a formula is what the checked function gives.</summary>
public class FormulaMethodTests
{
    [Fact]
    public void Noise_part_by_part_is_the_cascade_of_all() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[-20, 20], Gen.Double[0, 20]).Sample((before, gain, part) => Assert.Equal(
            NoiseCascade.Friis([new("first", gain, before), new("second", 0, part)])[1].NoiseFigureDb,
            NoiseCascade.FriisFormula.Method!([before, gain, part]), 9));

    // Half of the length, or half of the factor, bears four times as much; the number itself is pi squared for a unit of each.
    [Fact]
    public void Buckling_load_falls_with_the_square_of_length_and_factor()
    {
        var euler = Guys.EulerFormula.Method!;
        Assert.Equal(9.8696044, euler([1, 1, 1]), 7);
        Assert.Equal(4 * euler([320, 3, 1]), euler([320, 1.5, 1]), 6);
        Assert.Equal(4 * euler([320, 3, 1]), euler([320, 3, 0.5]), 6);
        Assert.Equal(2 * euler([320, 3, 1]), euler([640, 3, 1]), 6);
    }

    [Fact]
    public void Loss_of_a_run_takes_its_factor_for_temperature() =>
        Assert.Equal(CoaxLoss.Db(18, 25, 1.08), CoaxLoss.LossFormula.Method!([18, 25, 1.08]), 12);
}
