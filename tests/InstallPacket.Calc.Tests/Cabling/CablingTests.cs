using CsCheck;
using InstallPacket.Calc.Cabling;

namespace InstallPacket.Calc.Tests.Cabling;

public class CablingTests
{
    private static readonly IReadOnlyList<AttenuationPoint> Series6 = CoaxSets.Table("6");

    [Fact]
    public void Loss_rises_with_frequency() =>
        Gen.Select(Gen.Double[5, 2000], Gen.Double[0, 500]).Sample((f, more) =>
            Assert.True(CoaxAttenuation.DbPer100M(Series6, f + more) >= CoaxAttenuation.DbPer100M(Series6, f)));

    [Fact]
    public void Loss_rises_with_length_and_heat() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 50], Gen.Double[-40, 40], Gen.Double[0, 30]).Sample((length, more, celsius, warmer) =>
        {
            var loss = CoaxLoss.Db(16.7, length, CoaxTemperature.Factor(celsius));
            Assert.True(CoaxLoss.Db(16.7, length + more, CoaxTemperature.Factor(celsius + warmer)) >= loss);
        });

    [Fact]
    public void DbPer100M_meets_its_table_points() =>
        Assert.All(Series6, p => Assert.Equal(p.DbPer100M, CoaxAttenuation.DbPer100M(Series6, p.FrequencyMHz), 1e-9));

    [Fact]
    public void DbPer100M_refuses_a_frequency_below_the_table() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoaxAttenuation.DbPer100M(Series6, 4.9));

    [Fact]
    public void DbPer100M_refuses_a_table_out_of_order() =>
        Assert.Throws<ArgumentException>(() => CoaxAttenuation.DbPer100M([new(100, 6), new(50, 4), new(600, 17)], 300));

    [Theory, InlineData(-41), InlineData(71), InlineData(double.NaN)]
    public void Factor_refuses_temperatures_outside_the_rule(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoaxTemperature.Factor(celsius));

    [Fact]
    public void A_chain_is_never_quieter_than_its_first_part()
    {
        var stage = Gen.Select(Gen.Double[-20, 30], Gen.Double[0, 12]).Select((gain, nf) => new Stage("part", gain, nf));
        stage.Array[1, 8].Sample(stages =>
        {
            var chain = NoiseCascade.Friis(stages);
            Assert.Equal(stages.Length, chain.Count);
            Assert.Equal(stages[0].NoiseFigureDb, chain[0].NoiseFigureDb, 1e-9);
            Assert.All(chain, c => Assert.True(c.NoiseFigureDb >= stages[0].NoiseFigureDb - 1e-9));
        });
    }

    [Fact]
    public void A_loss_before_a_receiver_adds_to_its_noise_figure() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 12]).Sample((loss, nf) => Assert.Equal(
            loss + nf, NoiseCascade.Friis([new("line", -loss, NoiseCascade.PassiveNoiseFigureDb(loss, 290)), new("receiver", 0, nf)])[^1].NoiseFigureDb, 1e-9));

    [Fact]
    public void A_constant_power_load_balances_its_feed() =>
        Gen.Select(Gen.Double[5, 24], Gen.Double[0.1, 6], Gen.Double[0.1, 20]).Sample((supply, watts, ohm) =>
        {
            if (DcFeed.ConstantPowerV(supply, watts, ohm) is not { } volts) { Assert.True(supply * supply < 4 * watts * ohm); return; }
            Assert.Equal(supply, volts + watts / volts * ohm, 1e-4);
        });

    [Fact]
    public void Return_loss_and_vswr_undo_each_other() =>
        Gen.Double[1, 40].Sample(rl => Assert.Equal(rl, ReturnLoss.FromVswr(ReturnLoss.Vswr(rl)), 1e-9));

    [Fact]
    public void FromVswr_refuses_a_ratio_below_one() => Assert.Throws<ArgumentOutOfRangeException>(() => ReturnLoss.FromVswr(0.99));
}
