using CsCheck;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Calc.Tests.Reception;

public class AntennaTests
{
    [Fact]
    public void A_turned_antenna_loses_between_nothing_and_its_cross_polar_ratio() =>
        Gen.Select(Gen.Double[-720, 720], Gen.Double[0, 40]).Sample((angle, ratio) =>
        {
            Assert.InRange(PolarisationMismatch.LossDb(angle, ratio), 0, ratio + 1e-9);
            Assert.Equal(PolarisationMismatch.LossDb(angle, ratio), PolarisationMismatch.LossDb(angle + 180, ratio), 1e-9);
        });

    [Theory, InlineData(30, -1), InlineData(30, double.NaN), InlineData(double.NaN, 20)]
    public void Polarisation_refuses_what_means_nothing(double angle, double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PolarisationMismatch.LossDb(angle, ratio));

    [Theory, InlineData(0), InlineData(3), InlineData(-2)]
    public void Antennas_are_stacked_in_pairs(int antennas) => Assert.Throws<ArgumentOutOfRangeException>(() => Stacking.GainDb(antennas, 0.5));

    [Fact]
    public void The_spacing_for_a_null_makes_that_null() =>
        Gen.Select(Gen.Double[0.3, 6], Gen.Double[1, 89]).Sample((wavelength, angle) =>
            Assert.Equal(angle, Stacking.NullDeg(wavelength, Stacking.SpacingForNullM(wavelength, angle))!.Value, 1e-9));

    [Fact]
    public void The_planners_antenna_never_gains_off_its_axis() =>
        Gen.Select(Gen.OneOf(Gen.Const(57.0), Gen.Const(200.0), Gen.Const(600.0)), Gen.Double[0, 180], Gen.Double[0, 90]).Sample((f, angle, more) =>
        {
            var band = ReceivingDiscrimination.Find(f)!;
            Assert.InRange(band.GainDb(angle), band.FloorDb, 0);
            Assert.Equal(band.GainDb(angle), band.GainDb(-angle));
            if (angle + more <= 180) Assert.True(band.GainDb(angle + more) <= band.GainDb(angle) + 1e-9);
        });

    [Fact]
    public void Between_its_bands_the_planners_antenna_is_unknown() => Assert.Null(ReceivingDiscrimination.Find(85));

    [Theory, InlineData(0, 60), InlineData(60, 180), InlineData(60, double.NaN)]
    public void Directivity_refuses_a_beam_that_is_none(double e, double h) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Directivity.FromBeamwidthsDbi(e, h, BeamRule.Usual));

    private static readonly Gen<(double BearingDeg, double GainDb)[]> PatternPoints =
        Gen.Select(Gen.Int[0, 3599], Gen.Double[-60, 0]).Array[2, 40].Select(points => points.DistinctBy(p => p.Item1).Select(p => (p.Item1 / 10.0, p.Item2)).ToArray()).Where(p => p.Length >= 2);

    [Fact]
    public void The_pattern_of_a_transmitter_passes_its_points_and_stays_between_its_neighbours() =>
        Gen.Select(PatternPoints, Gen.Double[-720, 720]).Sample((points, bearing) =>
        {
            var pattern = new TransmitterPattern(points.Reverse());
            Assert.All(points, p => Assert.Equal(p.GainDb, pattern.Toward(p.BearingDeg + 360).GainDb, 1e-9));
            var span = pattern.Toward(bearing);
            Assert.InRange(span.GainDb, Math.Min(span.Before.GainDb, span.After.GainDb) - 1e-9, Math.Max(span.Before.GainDb, span.After.GainDb) + 1e-9);
            Assert.InRange(span.BearingDeg, span.Before.BearingDeg, span.After.BearingDeg);
            Assert.Equal(span.GainDb, pattern.Toward(bearing - 360).GainDb, 1e-6);
            Assert.InRange(TransmitterPattern.PowerKw(100, span.GainDb), 0.0000999, 100.0000001);
        });

    [Fact]
    public void A_pattern_that_means_nothing_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new TransmitterPattern([(0, 0)]));
        Assert.Throws<ArgumentException>(() => new TransmitterPattern([(0, 0), (360, -1)]));
        Assert.Throws<ArgumentException>(() => new TransmitterPattern([(0, 0), (90, 0.1)]));
        Assert.Throws<ArgumentException>(() => new TransmitterPattern([(0, 0), (90, double.NaN)]));
        Assert.Throws<ArgumentException>(() => new TransmitterPattern([(10, 0), (10, -3)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TransmitterPattern([(0, 0), (90, -1)]).Toward(double.NaN));
    }
}
