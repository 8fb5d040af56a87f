using CsCheck;
using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Routing;

namespace InstallPacket.Calc.Tests.Routing;

public class RoutingTests
{
    [Fact]
    public void A_deeper_loop_takes_more_cable_and_a_wider_bend_less() =>
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0, 0.3], Gen.Double[0.001, 0.2]).Sample((radius, deeper, more) =>
        {
            var depth = radius + more + deeper;
            Assert.True(DripLoop.ExtraLengthM(depth + 0.01, radius) > DripLoop.ExtraLengthM(depth, radius));
            Assert.True(DripLoop.ExtraLengthM(depth, radius + more) < DripLoop.ExtraLengthM(depth, radius));
        });

    [Fact]
    public void A_loop_shallower_than_its_bend_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => DripLoop.ExtraLengthM(0.069, 0.07));

    [Fact]
    public void A_sagging_span_is_longer_than_a_straight_one() =>
        Gen.Select(Gen.Double[0.1, 50], Gen.Double[0, 2]).Sample((span, dip) => Assert.True(Sag.LengthM(span, dip) >= span));

    [Fact]
    public void The_two_branches_of_the_sag_meet() => Assert.Equal(Sag.LengthM(40, 0.000999), Sag.LengthM(40, 0.001001), 1e-8);

    [Fact]
    public void RoundUpM_never_shortens_and_never_adds_a_whole_step() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0.01, 1]).Sample((length, step) =>
        {
            var cut = PieceLength.RoundUpM(length, step);
            Assert.InRange(cut - length, -1.1e-6 * step, step);
        });

    [Fact]
    public void The_foot_stands_a_quarter_of_the_working_length_out() =>
        Gen.Double[1, 15].Sample(height =>
        {
            var working = LadderSet.WorkingLengthM(height);
            Assert.Equal(working, Math.Sqrt(height * height + Math.Pow(LadderSet.FootDistanceM(working), 2)), 1e-9);
        });

    [Fact]
    public void No_ladder_is_named_when_none_is_long_enough() => Assert.Null(LadderSet.ExtensionSizeFt(56));
}
