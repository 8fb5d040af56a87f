using CsCheck;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Calc.Tests.Reception;

public class SpreadTests
{
    [Fact]
    public void Quantile_undoes_the_normal_distribution() => Gen.Double[1e-6, 1 - 1e-6].Sample(share =>
    {
        var x = Probability.Quantile(share);
        Assert.Equal(share, Probability.Normal(x), 1e-13);
        Assert.Equal(x, -Probability.Quantile(1 - share), 1e-8);
    });

    [Theory, InlineData(0), InlineData(1), InlineData(double.NaN)]
    public void Quantile_refuses_certainty(double share) => Assert.Throws<ArgumentOutOfRangeException>(() => Probability.Quantile(share));

    [Fact]
    public void A_measurement_takes_the_spread_between_places_away()
    {
        Assert.Equal(new ReceptionSpread(0, 1, 2, 0, 1.5), ReceptionSpread.For(PredictionBasis.Measured, 1, 0, 1.5));
        Assert.Equal(new ReceptionSpread(5.5, 1, 6, 3, 1.5), ReceptionSpread.For(PredictionBasis.Terrain, 1, 3, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReceptionSpread.For(PredictionBasis.Curves, -1, 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReceptionSpread.TimeSigmaDb(40, 41));
    }

    [Fact]
    public void More_spread_brings_every_chance_nearer_to_one_half() =>
        Gen.Select(Gen.Double[-30, 30], Gen.Double[0.5, 10], Gen.Double[0, 10]).Sample((margin, sigma, more) =>
        {
            double before = new ReceptionSpread(sigma, 0, 0, 0, 0).ChanceOf(margin), after = new ReceptionSpread(sigma, more, 0, 0, 0).ChanceOf(margin);
            Assert.True(Math.Abs(after - 0.5) <= Math.Abs(before - 0.5) + 1e-12);
        });
}
