using CsCheck;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

public class MountTests
{
    // The wind may come from anywhere: the pulling guys must balance it with no guy pushing.
    [Fact]
    public void No_wind_between_two_guys_pulls_harder_than_the_worst_case() =>
        Gen.Select(Gen.Int[3, 4], Gen.Double[20, 70], Gen.Double[0, 1]).Sample((guys, angle, share) =>
        {
            var between = 2 * Math.PI / guys;
            var wind = share * between;
            var first = 100 * Math.Sin(between - wind) / Math.Sin(between) / Math.Sin(angle * Math.PI / 180);
            var second = 100 * Math.Sin(wind) / Math.Sin(between) / Math.Sin(angle * Math.PI / 180);
            Assert.True(Math.Max(first, second) <= Guys.WorstTensionN(100, angle, guys) + 1e-9);
            Assert.True(Guys.CompressionN(first + second, angle) <= Guys.WorstCompressionN(100, angle, guys) + 1e-9);
        });

    [Fact]
    public void Beside_one_of_three_guys_the_wind_pulls_it_harder_than_in_line()
    {
        Assert.Equal(2 / Math.Sqrt(3), Guys.WorstTensionN(100, 40, 3) / Guys.TensionN(100, 40), 1e-12);
        Assert.Equal(Guys.TensionN(100, 40), Guys.WorstTensionN(100, 40, 4), 1e-9);
    }

    [Fact]
    public void The_bolts_of_a_plate_hold_its_moment() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[0.02, 0.5], Gen.Double[0.02, 0.5], Gen.Int[1, 4]).Sample((moment, near, far, bolts) =>
        {
            var pulls = MountReactions.PlateBoltsN(moment, [new(near, bolts), new(far, 2)]);
            Assert.Equal(moment, bolts * pulls[0] * near + 2 * pulls[1] * far, 1e-6);
        });

    [Fact]
    public void The_feet_of_a_tripod_carry_its_weight_and_its_moment() =>
        Gen.Select(Gen.Double[0, 1000], Gen.Double[0.2, 1], Gen.Double[0, 500]).Sample((moment, radius, weight) =>
        {
            var (two, thrust) = (MountReactions.TripodTwoPullN(moment, radius, weight), MountReactions.TripodThrustN(moment, radius, weight));
            Assert.Equal(weight, thrust - 2 * two, 1e-6);
            Assert.Equal(moment, thrust * radius + 2 * two * radius / 2, 1e-6);
        });

    [Fact]
    public void Blocks_are_enough_and_not_one_too_many() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 500], Gen.Double[5, 40]).Sample((needed, own, block) =>
        {
            var blocks = BallastBase.Blocks(needed, own, block);
            Assert.True(own + blocks * block * 9.80665 >= needed - 1e-3);
            Assert.True(blocks == 0 || own + (blocks - 1) * block * 9.80665 < needed);
        });

    [Fact]
    public void A_stack_without_a_mast_is_pressed_by_its_weight() => Assert.Equal(-1900 * 9.80665, ChimneyStack.FootTensionPa(0, 0, 0.4, 1, 1900), 1e-6);

    [Fact]
    public void What_lies_outside_is_refused_with_value_and_unit()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => Guys.TensionN(300, 90));
        Assert.Contains("90", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("degrees", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Guys.MidwayTensionN(300, 45, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guys.EulerN(new(0.038, 0.002), 200e9, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MountReactions.BoltShareN(100, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MountReactions.AlongWallPullN(100, 0.3, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MountReactions.PlateBoltsN(100, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => MountReactions.TripodOnePullN(-1, 0.5, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => BallastBase.SlidingN(100, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChimneyStack.FootTensionPa(100, 10, 0, 1, 1900));
    }
}
