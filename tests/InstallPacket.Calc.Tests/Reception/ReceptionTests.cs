using CsCheck;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Reception;

public class ReceptionTests
{
    private static readonly Gen<double> Frequency = Gen.OneOf(Gen.Double[54, 88], Gen.Double[174, 216], Gen.Double[470, 806]);

    [Fact]
    public void Ninety_percent_of_the_time_is_never_better_than_half() =>
        Gen.Select(Frequency, Gen.Double[10, 2000], Gen.Double[0.2, 300]).Sample((f, haat, km) =>
        {
            var half = FccCurves.FieldDbuVm(CurvePercent.F50_50, f, 1, haat, km).DbuVm;
            Assert.True(FccCurves.FieldDbuVm(CurvePercent.F50_90, f, 1, haat, km).DbuVm <= half + 1e-9);
        });

    [Fact]
    public void No_curve_rises_above_free_space() =>
        Gen.Select(Gen.Enum<CurvePercent>(), Frequency, Gen.Double[10, 2000], Gen.Double[0.2, 300]).Sample((curve, f, haat, km) =>
            Assert.True(FccCurves.FieldDbuVm(curve, f, 50, haat, km).DbuVm <= FreeSpaceField.DbuVm(50, km) + 1e-9));

    [Fact]
    public void Ten_times_the_power_is_ten_decibels() =>
        Gen.Select(Frequency, Gen.Double[30, 1600], Gen.Double[0.2, 300], Gen.Double[0.01, 1000]).Sample((f, haat, km, erp) => Assert.Equal(
            10, FccCurves.FieldDbuVm(CurvePercent.F50_90, f, 10 * erp, haat, km).DbuVm - FccCurves.FieldDbuVm(CurvePercent.F50_90, f, erp, haat, km).DbuVm, 1e-9));

    [Theory, InlineData(29.9, true, 30), InlineData(30, false, 30), InlineData(1600, false, 1600), InlineData(2000, true, 1600), InlineData(-20, true, 30)]
    public void FieldDbuVm_says_when_it_clamps_the_height(double haat, bool clamped, double used)
    {
        var field = FccCurves.FieldDbuVm(CurvePercent.F50_50, 600, 1, haat, 50);
        Assert.Equal((clamped, used), (field.HaatClamped, field.EffectiveHaatM));
    }

    [Theory, InlineData(0), InlineData(-1), InlineData(300.1), InlineData(double.NaN)]
    public void FieldDbuVm_refuses_a_distance_outside_the_curves(double km) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FccCurves.FieldDbuVm(CurvePercent.F50_50, 600, 1, 300, km));

    [Fact]
    public void ContourKm_gives_the_distance_at_which_the_field_is_met() =>
        Gen.Select(Frequency, Gen.Double[30, 1600], Gen.Double[0.1, 1000], Gen.Double[30, 80]).Sample((f, haat, erp, wanted) =>
        {
            var km = FccCurves.ContourKm(CurvePercent.F50_90, f, erp, haat, wanted)!.Value;
            Assert.True(FccCurves.FieldDbuVm(CurvePercent.F50_90, f, erp, haat, km).DbuVm >= wanted - 1e-9);
            Assert.True(FccCurves.FieldDbuVm(CurvePercent.F50_90, f, erp, haat, km + 0.001).DbuVm < wanted);
        });

    [Fact]
    public void ContourKm_is_unknown_beyond_the_curves() => Assert.Null(FccCurves.ContourKm(CurvePercent.F50_50, 57, 100, 600, -20));

    [Theory, InlineData(4, 5, false), InlineData(6, 7, false), InlineData(13, 14, false), InlineData(7, 8, true), InlineData(36, 35, true), InlineData(20, 22, false)]
    public void AreNeighbours_looks_at_frequencies_not_at_numbers(int a, int b, bool expected) =>
        Assert.Equal(expected, ChannelRaster.AreNeighbours(ChannelRaster.Find("us-6", a)!, ChannelRaster.Find("us-6", b)!));

    [Fact]
    public void The_same_number_is_another_channel_in_another_plan()
    {
        Assert.Equal(515, ChannelRaster.Find("us-6", 21)!.CentreMHz);
        Assert.Equal(474, ChannelRaster.Find("eu-8", 21)!.CentreMHz);
        Assert.Null(ChannelRaster.Find("us-6", 1));
        Assert.Null(ChannelRaster.Find("mars-6", 21));
    }

    [Fact]
    public void Find_tells_what_was_added_and_how_well_it_is_known()
    {
        var isdb = RequiredCn.Find("ISDB-T", "64QAM", "3/4")!;
        Assert.Equal((20.1, 3.0, 23.1, Provenance.Memory), (isdb.ListedDb, isdb.AddedDb, isdb.RequiredDb, isdb.Provenance));
        Assert.NotEmpty(isdb.AddedFor);
        Assert.Equal(Provenance.Read, RequiredCn.Find("DVB-T", "64QAM", "2/3")!.Provenance);
        Assert.Null(RequiredCn.Find("DVB-T2", "QPSK", "1/3"));
        Assert.Null(RequiredCn.Find("DVB-T9", "QPSK", "1/2"));
    }

    [Fact]
    public void Find_falls_back_to_the_Ricean_row_when_no_real_receiver_was_measured()
    {
        var rows = RequiredCn.All.Where(r => r.Channel != "Gaussian, real receiver").ToArray();
        var row = RequiredCn.Find(rows, "DVB-T", "64QAM", "2/3")!;
        Assert.Equal((17.1, 2.5, Provenance.Memory), (row.ListedDb, row.AddedDb, row.Provenance));
    }

    [Fact]
    public void FigureDb_of_the_outside_adds_man_made_and_galactic_power()
    {
        var expected = 10 * Math.Log10(Math.Pow(10, 3.46 / 10) + Math.Pow(10, -0.92 / 10));
        Assert.Equal(expected, ExternalNoise.FigureDb(NoiseEnvironment.Rural, 200), 0.01);
        Assert.Equal(0, ExternalNoise.FigureDb(NoiseEnvironment.City, 600));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExternalNoise.ManMadeDb(NoiseEnvironment.City, 251));
    }

    [Theory, InlineData("ATSC 1.0", 6.0, 6.0), InlineData("DVB-T2", 8.0, 7.61), InlineData("DVB-T", 8.0, 7.61), InlineData("DVB-T2", 7.0, 6.66), InlineData("DVB-T", 7.0, 6.66), InlineData("ISDB-T", 6.0, 5.575)]
    public void NoiseMHz_goes_with_the_system(string system, double width, double expected) => Assert.Equal(expected, Bandwidth.NoiseMHz(system, width));

    [Fact]
    public void NoiseMHz_is_unknown_for_an_unknown_pair() => Assert.Null(Bandwidth.NoiseMHz("ATSC 1.0", 8));

    [Fact]
    public void The_pattern_is_symmetric_and_ends_at_its_back() =>
        Gen.Select(Gen.Double[-720, 720], Gen.Double[20, 120], Gen.Double[5, 30]).Sample((angle, width, back) =>
        {
            var gain = AntennaPattern.RelativeGainDb(angle, width, back);
            Assert.InRange(gain, -back, 0);
            Assert.Equal(gain, AntennaPattern.RelativeGainDb(-angle, width, back), 1e-9);
        });

    [Fact]
    public void The_pattern_falls_three_decibels_at_half_its_beamwidth() =>
        Gen.Double[10, 150].Sample(width => Assert.Equal(-3.0103, AntennaPattern.RelativeGainDb(width / 2, width, 30), 1e-4));

    [Fact]
    public void Normal_is_symmetric_and_rises() =>
        Gen.Select(Gen.Double[-9, 9], Gen.Double[0, 3]).Sample((x, more) =>
        {
            Assert.Equal(1, Probability.Normal(x) + Probability.Normal(-x), 1e-14);
            Assert.True(Probability.Normal(x + more) >= Probability.Normal(x) - 1e-15);
        });

    [Fact]
    public void Dbd_and_dbi_undo_each_other() =>
        Gen.Double[-10, 30].Sample(gain => Assert.Equal(gain, DipoleFactor.DbdFromDbi(DipoleFactor.DbiFromDbd(gain)), 1e-12));

    [Fact]
    public void A_higher_antenna_never_loses() =>
        Gen.Select(Frequency, Gen.Double[1, 30], Gen.Double[0, 10]).Sample((f, height, more) =>
            Assert.True(ReceivingHeight.GainDb(f, height + more, 9.1) >= ReceivingHeight.GainDb(f, height, 9.1)));

    [Fact]
    public void TotalDbm_refuses_an_empty_list() => Assert.Throws<ArgumentException>(() => DecibelSum.TotalDbm([]));
}
