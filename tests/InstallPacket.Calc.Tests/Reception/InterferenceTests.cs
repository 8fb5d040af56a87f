using CsCheck;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Calc.Tests.Reception;

public class InterferenceTests
{
    [Theory, InlineData(15.19), InlineData(10), InlineData(double.NegativeInfinity)]
    public void Below_its_threshold_no_ratio_helps(double sn)
    {
        Assert.Null(Interference.CochannelDuDb(sn));
        Assert.Null(Interference.RequiredDuDb(15.19, sn));
    }

    [Fact]
    public void Interference_refuses_what_is_no_number()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Interference.CochannelDuDb(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Interference.RequiredDuDb(15, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Interference.EffectiveCnDb(20, [double.NaN]));
    }

    [Fact]
    public void The_required_ratio_just_meets_the_requirement() =>
        Gen.Select(Gen.Double[-6, 33], Gen.Double[0.01, 40]).Sample((required, above) =>
        {
            var du = Interference.RequiredDuDb(required, required + above)!.Value;
            Assert.Equal(required, Interference.EffectiveCnDb(required + above, [du]), 1e-6);
        });

    [Fact]
    public void Another_disturber_never_helps() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[-10, 60].Array[0, 6], Gen.Double[-10, 60]).Sample((cn, du, more) =>
        {
            var before = Interference.EffectiveCnDb(cn, du);
            Assert.True(before <= cn + 1e-9);
            Assert.True(Interference.EffectiveCnDb(cn, [.. du, more]) < before);
        });

    [Theory, InlineData(4, 5), InlineData(6, 7), InlineData(13, 14), InlineData(4, 6), InlineData(13, 20), InlineData(3, 5)]
    public void Across_a_gap_of_the_raster_there_is_no_offset(int a, int b) =>
        Assert.Null(ChannelRaster.Offset(ChannelRaster.Find("us-6", a)!, ChannelRaster.Find("us-6", b)!));

    [Theory, InlineData(14, 16, 2), InlineData(36, 35, -1), InlineData(7, 13, 6), InlineData(21, 21, 0), InlineData(2, 4, 2), InlineData(5, 6, 1)]
    public void Offset_counts_channels_by_frequency(int wanted, int other, int offset) =>
        Assert.Equal(offset, ChannelRaster.Offset(ChannelRaster.Find("us-6", wanted)!, ChannelRaster.Find("us-6", other)!));

    [Fact]
    public void Offset_needs_equal_widths_and_forgives_an_eighth_of_a_megahertz()
    {
        var c = new TvChannel("made-up", 1, "UHF", 470, 473.5, 477, 7);
        Assert.Null(ChannelRaster.Offset(c, c with { WidthMHz = 8 }));
        Assert.Equal(1, ChannelRaster.Offset(c, c with { CentreMHz = 480.625 }));
        Assert.Null(ChannelRaster.Offset(c, c with { CentreMHz = 482 }));
    }

    [Fact]
    public void Neighbours_are_one_channel_apart()
    {
        foreach (var group in ChannelRaster.All.Where(c => c.Plan is "us-6" or "eu-8" or "eu-7").GroupBy(c => c.Plan))
        {
            foreach (var (a, b) in group.SelectMany(x => group.Select(y => (x, y))))
                Assert.Equal(ChannelRaster.AreNeighbours(a, b), ChannelRaster.Offset(a, b) is 1 or -1);
        }
    }

    [Theory, InlineData(-90, DesiredLevel.Weak), InlineData(-68, DesiredLevel.Weak), InlineData(-67.9, DesiredLevel.Moderate), InlineData(-53, DesiredLevel.Moderate), InlineData(-52.9, DesiredLevel.Strong)]
    public void Between_two_tried_levels_the_stronger_one_counts(double dbm, DesiredLevel level) => Assert.Equal(level, DuRatio.LevelOf(dbm));

    [Fact]
    public void A_stronger_wanted_channel_never_stands_more() => Assert.All(Enumerable.Range(-15, 31).Where(n => n != 0), n =>
    {
        var ratios = Enum.GetValues<DesiredLevel>().Select(l => DuRatio.Find("ATSC 1.0", DuKind.Receiver, n, l)!.RatioDb).ToArray();
        Assert.Equal(ratios.Order(), ratios);
    });

    [Fact]
    public void An_offset_without_a_row_is_unknown()
    {
        Assert.Null(DuRatio.Find("ATSC 1.0", DuKind.Receiver, 16, DesiredLevel.Weak));
        Assert.Null(DuRatio.Find("ATSC 1.0", DuKind.Receiver, 0, DesiredLevel.Strong));
        Assert.Null(DuRatio.Find("ATSC 1.0", DuKind.Planning, 2, DesiredLevel.Weak));
        Assert.Null(DuRatio.Find("DVB-T", DuKind.Planning, -9, DesiredLevel.Weak));
        Assert.Null(DuRatio.Find("ISDB-T", DuKind.Planning, 1, DesiredLevel.Weak));
    }
}
