using CsCheck;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

public class EurocodeTests
{
    [Fact]
    public void Pressure_grows_with_height_and_with_open_ground() =>
        Gen.Select(Gen.Int[0, 4], Gen.Double[0, 100], Gen.Double[0, 100], Gen.Double[15, 40]).Sample((category, height, more, speed) =>
        {
            var terrain = TerrainCategory.All[category];
            var pressure = WindEurocode.PeakPressurePa(terrain, height, speed);
            Assert.True(WindEurocode.PeakPressurePa(terrain, height + more, speed) >= pressure);
            if (category > 0) Assert.True(WindEurocode.PeakPressurePa(TerrainCategory.All[category - 1], height, speed) > pressure);
        });

    [Fact]
    public void Coefficient_and_end_effect_stay_within_their_ends() =>
        Gen.Select(Gen.Double[0.01, 2], Gen.Double[0.1, 60], Gen.Double[100, 4000]).Sample((diameter, length, pressure) =>
        {
            Assert.InRange(RoundMember.BareCoefficient(RoundMember.Reynolds(diameter, pressure), 0.0002, diameter), 0.2, 1.2);
            Assert.InRange(RoundMember.EndEffect(RoundMember.Slenderness(length, diameter)), 0.60, 0.91);
        });

    [Fact]
    public void The_two_lines_of_the_end_effect_meet() => Assert.Equal(RoundMember.EndEffect(9.9999999), RoundMember.EndEffect(10.0000001), 1e-7);

    [Fact]
    public void What_lies_outside_is_refused_with_value_and_unit()
    {
        var terrain = TerrainCategory.All[2];
        Assert.Contains("201", Assert.Throws<ArgumentOutOfRangeException>(() => WindEurocode.PeakPressurePa(terrain, 201, 25)).Message, StringComparison.Ordinal);
        Assert.Contains("m/s", Assert.Throws<ArgumentOutOfRangeException>(() => WindEurocode.PeakPressurePa(terrain, 10, 121)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundMember.ForceN(800, 0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundMember.EndEffect(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => EuropeanMastRule.PressurePa(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EuropeanMastRule.TubeForceN(800, 0.04, double.NaN));
        Assert.Null(TerrainCategory.Find("V"));
    }
}
