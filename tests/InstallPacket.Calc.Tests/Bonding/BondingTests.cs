using CsCheck;
using InstallPacket.Calc.Bonding;

namespace InstallPacket.Calc.Tests.Bonding;

public class BondingTests
{
    [Fact]
    public void Twice_the_length_has_more_than_twice_the_inductance() =>
        Gen.Select(Gen.Double[0.2, 100], Gen.Double[0.001, 0.01]).Sample((length, diameter) =>
            Assert.True(WireInductance.StraightH(2 * length, diameter) > 2 * WireInductance.StraightH(length, diameter)));

    [Fact]
    public void A_corner_adds_no_inductance() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[0.001, 0.01]).Sample((leg, diameter) =>
            Assert.True(2 * WireInductance.StraightH(leg, diameter) < WireInductance.StraightH(2 * leg, diameter)));

    [Fact]
    public void Twice_the_section_lowers_the_inductance_by_little() =>
        Gen.Select(Gen.Double[2, 50], Gen.Double[2e-6, 50e-6]).Sample((length, area) => Assert.InRange(
            WireInductance.StraightH(length, WireGauge.EquivalentDiameterM(2 * area)) / WireInductance.StraightH(length, WireGauge.EquivalentDiameterM(area)), 0.90, 0.999));

    [Fact]
    public void Gauge_and_diameter_lead_back_to_each_other() =>
        Gen.Double[-3, 40].Sample(gauge => Assert.Equal(gauge, WireGauge.Nearest(WireGauge.DiameterM(gauge)), 1e-9));

    [Fact]
    public void Two_rods_lie_between_the_half_and_the_whole_of_one() =>
        Gen.Select(Gen.Double[10, 3000], Gen.Double[1.5, 3], Gen.Double[1.05, 10]).Sample((soil, length, apart) =>
        {
            var one = GroundRod.OneOhm(soil, length, 0.008);
            Assert.InRange(GroundRod.TwoOhm(soil, length, 0.008, length * apart), one / 2, one);
        });

    [Fact]
    public void The_rod_takes_the_radius() =>
        Assert.Equal(100 / (2 * Math.PI * 2.4) * (Math.Log(8 * 2.4 / 0.016) - 1), GroundRod.OneOhm(100, 2.4, 0.008), 1e-9);

    [Fact]
    public void A_thin_conductor_melts_in_a_stroke_and_a_thick_one_does_not()
    {
        Assert.True(SurgeHeating.RiseK(Surge.StrokeEnergyJPerOhm, WireGauge.AreaM2(WireGauge.DiameterM(10))) > SurgeHeating.MeltingRiseK);
        Assert.InRange(SurgeHeating.RiseK(Surge.StrokeEnergyJPerOhm, 16e-6), 40, 80);
        Assert.True(double.IsFinite(SurgeHeating.RiseK(1e7, 0.1e-6)));
    }

    [Fact]
    public void The_wave_is_steepest_on_its_front_and_above_its_mean() =>
        Assert.InRange(Surge.SteepestAPerS(10e3) / Surge.SteepnessAPerS(10e3, Surge.InducedFrontS), 1, 1.5);

    [Fact]
    public void What_lies_outside_is_refused_with_value_and_unit()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => GroundRod.TwoOhm(100, 2.4, 0.008, 2));
        Assert.Contains("spacing", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => WireInductance.StraightH(0.001, 0.002));
        Assert.Throws<ArgumentOutOfRangeException>(() => GroundRod.OneOhm(0, 2.4, 0.008));
        Assert.Throws<ArgumentOutOfRangeException>(() => FacadeZone.IsExempt(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RollingSphere.ProtectedM(50, 8, 45));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeExposure.PerYear(3, 100, 5));
    }
}
