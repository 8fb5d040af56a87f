using CsCheck;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

public class ScrewTests
{
    private const double Inch = 0.0254;

    // The equations over a gap are written in another way than those without: a gap of next to nothing must give the table's equations.
    [Fact]
    public void A_gap_of_next_to_nothing_changes_no_mode() =>
        Gen.Select(Gen.Int[0, 4], Gen.Double[0.35, 0.7], Gen.Double[0.05, 0.4], Gen.Double[0, 90], Gen.Double[4, 12]).Sample((size, gravity, plate, theta, diameters) =>
        {
            var lag = LagScrew.All[size];
            YieldModes Of(double gap) => YieldModes.Of(lag, gravity, plate * Inch, YieldModes.SheetSteelPa, theta, diameters * lag.DiameterM, gapM: gap);
            var (tight, open) = (Of(0), Of(1e-12));
            Assert.Equal(1, open.II / tight.II, 1e-6);
            Assert.Equal(1, open.IIIm / tight.IIIm, 1e-6);
            Assert.Equal(1, open.IIIs / tight.IIIs, 1e-6);
            Assert.Equal(1, open.IV / tight.IV, 1e-6);
        });

    [Fact]
    public void The_least_mode_counts_whichever_it_is() =>
        Gen.Double[1, 1000].Array[6].Sample(m => Assert.Equal(m.Min(), new YieldModes(m[0], m[1], m[2], m[3], m[4], m[5]).LeastN));

    // With a wide gap the screw is a lever bent at both ends: Z g = 2 My, divided by the reduction of the mode.
    [Fact]
    public void Over_a_wide_gap_the_screw_is_a_lever()
    {
        var lag = LagScrew.Find(0.375 * Inch)!;
        const double gap = 2.0;
        var plastic = lag.BendingPa * Math.Pow(lag.RootM, 3) / 6;
        Assert.Equal(1, YieldModes.Of(lag, 0.5, 0.2 * Inch, YieldModes.SheetSteelPa, 0, 8 * lag.DiameterM, gapM: gap).IV / (2 * plastic / gap / 3.2), 0.01);
    }

    [Fact]
    public void A_wider_gap_never_bears_more() =>
        Gen.Select(Gen.Int[0, 3], Gen.Double[0, 0.05], Gen.Double[0, 0.05]).Sample((size, one, two) =>
        {
            double Least(double gap) => YieldModes.Of(WoodScrew.All[size], 0.42, 0.003, YieldModes.SheetSteelPa, 0.04, gap).LeastN;
            Assert.True(Least(Math.Max(one, two)) <= Least(Math.Min(one, two)) + 1e-9);
        });

    [Fact]
    public void A_wood_screw_counts_from_six_diameters_and_in_full_from_ten()
    {
        var screw = WoodScrew.Find(0.190 * Inch)!;
        Assert.Equal(0, screw.AdjustedN(100, 5.99 * screw.DiameterM, 1.6, 1));
        Assert.Equal(96, screw.AdjustedN(100, 6 * screw.DiameterM, 1.6, 1), 1e-9);
        Assert.Equal(160, screw.AdjustedN(100, 10 * screw.DiameterM, 1.6, 1), 1e-9);
        Assert.Equal(160, screw.AdjustedN(100, 30 * screw.DiameterM, 1.6, 1), 1e-9);
    }

    [Fact]
    public void Thicknesses_without_a_size_are_refused()
    {
        Assert.Null(WoodScrew.Find(0.25 * Inch));
        Assert.Null(WoodScrew.Find(0.200 * Inch));
        Assert.Throws<ArgumentOutOfRangeException>(() => YieldModes.Of(WoodScrew.All[0], 0.42, 0.003, YieldModes.SheetSteelPa, 0.04, -0.001));
    }
}
