using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>What a plan makes of the figures of a transmitter: pattern, missing height, system and mode.</summary>
public class TransmitterTests
{
    private const string List = "_shared/stations/tamarack.csv";
    private const string Pattern = ",0:0 120:0 180:-2 240:-5 300:-1.5";

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("far-meadow")]
    public void A_pattern_weakens_every_figure_of_its_station_and_no_other(string id)
    {
        var with = DemoPlans.Of(id);
        var without = DemoPlans.Of(id, DemoJobs.Load().With(List, Pattern, ""));
        var (a, b) = (with.Station("pin-27").Budget!, without.Station("pin-27").Budget!);
        var loss = a.PatternDb!.Value;
        Assert.InRange(loss, -5, -3);
        Assert.Equal(12 * Math.Pow(10, loss / 10), a.ErpKw, 9);
        Assert.Equal((12.0, null), (b.ErpKw, b.PatternDb));
        Assert.Equal(loss, a.FreeSpaceDbuvM - b.FreeSpaceDbuvM, 9);
        Assert.Equal(loss, a.FieldDbuvM - b.FieldDbuvM, 9);
        Assert.Equal(loss, a.MedianDbuvM - b.MedianDbuvM, 9);
        Assert.Equal(loss, a.LevelDbm - b.LevelDbm, 9);
        Assert.Equal((true, false), (with.Reception.AnyPattern, without.Reception.AnyPattern));
        Assert.All(with.Reception.Stations.Where(s => s.Id != "pin-27" && s.Calculated), s => Assert.Equal((without.Station(s.Id).Budget!.LevelDbm, null), (s.Budget!.LevelDbm, s.Budget.PatternDb)));
    }

    [Fact]
    public void Every_model_is_asked_with_the_power_toward_the_house()
    {
        var with = DemoPlans.Of("alder-lane", DemoJobs.Load().With(List, "180,262,790,horizontal", "180,262,790,horizontal,0:-3 180:-3")).Station("blu-15").Budget!;
        var without = DemoPlans.Of("alder-lane").Station("blu-15").Budget!;
        Assert.Equal(["curves", "itm", "p1812"], with.Estimates.Select(v => v.Model));
        Assert.All(with.Estimates.Zip(without.Estimates), v =>
        {
            Assert.Equal(-3, v.First.MedianDbuvM - v.Second.MedianDbuvM, 9);
            Assert.Equal(-3, v.First.ServiceDbuvM - v.Second.ServiceDbuvM, 9);
        });
        Assert.Equal(-3, with.FieldDbuvM - without.FieldDbuvM, 9);
    }

    [Fact]
    public void The_pattern_is_read_at_the_bearing_from_the_transmitter_to_the_house()
    {
        var plan = DemoPlans.Of("alder-lane");
        var working = plan.Workings.Single(w => w.Formula.Id == "transmitter-pattern");
        // From the house the station stands in the north-east; from the station the house lies in the south-west, a little less than half a turn on.
        Assert.InRange(plan.Station("pin-27").BearingTrueDeg, 48, 52);
        Assert.InRange(working.Inputs[0].Number, 228, 233);
        Assert.Equal([180, -2, 240, -5], working.Inputs.Skip(1).Select(i => i.Number));
        Assert.Equal(-2 - (3 * (working.Inputs[0] - 180) / 60), working.Number, 9);
    }

    [Fact]
    public void A_pattern_in_the_job_is_calculated_like_one_in_the_list()
    {
        var own = "pin-27: { name: Pine Butte One, site: Pine Butte, system: ATSC 1.0, raster: us-6, channel: 27, latitude: 44.25 N, longitude: 98.1 W, power: 12 kW, height: 150 m, above-sea: 690 m, polarisation: horizontal, "
            + "pattern: [{ bearing: 0 deg true, gain: 0 dB }, { bearing: 120 deg true, gain: 0 dB }, { bearing: 300 deg true, gain: -1.5 dB }, { bearing: 240 deg true, gain: -5 dB }, { bearing: 180 deg true, gain: -2 dB }] }";
        var plan = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "  stations: tamarack.csv\n", "  stations: tamarack.csv\n  transmitters:\n    " + own + "\n"));
        Assert.Equal(DemoPlans.Of("alder-lane").Station("pin-27").Budget!.LevelDbm, plan.Station("pin-27").Budget!.LevelDbm, 12);
    }

    [Fact]
    public void Without_height_above_average_terrain_the_curves_take_their_least_height_and_say_so()
    {
        const string job = "far-meadow";
        var least = DemoPlans.Of(job, DemoJobs.Load().With(List, "28,310,842", "28,30,842"));
        var missing = DemoPlans.Of(job, DemoJobs.Load().With(List, "28,310,842", "28,,842").With(List, "12,150,690", "12,,690"));
        Assert.Equal(least.Station("kes-9").Budget!.FieldDbuvM, missing.Station("kes-9").Budget!.FieldDbuvM, 12);
        Assert.True(missing.Station("kes-9").Budget!.FieldDbuvM < DemoPlans.Of(job).Station("kes-9").Budget!.FieldDbuvM - 3);
        var finding = missing.Finding("haat-missing"); // of the wanted station only
        Assert.Equal((Severity.Note, 3), (finding.Severity, finding.At.Line));
        Assert.All(["kes-9", "pin-27"], s => Assert.StartsWith("height above average terrain unknown, 30", missing.Station(s).Budget!.Estimates[0].Note, StringComparison.Ordinal));
        Assert.False(least.Has("haat-missing"));
        Assert.False(missing.Has("height-outside-curves"));
    }

    [Theory]
    [InlineData("ATSC 3.0", "256QAM 9/15", "us-6", "derived")]
    [InlineData("ATSC 3.0", "16QAM 9/15", "us-6", "memory")]
    [InlineData("DVB-T", "64QAM 2/3", "au-7", "read")]
    [InlineData("DVB-T2", "256QAM 2/3", "eu-8", "read")]
    [InlineData("ISDB-T", "64QAM 3/4", "br-6", "memory")]
    [InlineData("ISDB-T", "DQPSK 1/2", "jp-6", "memory")]
    public void Every_system_is_planned_and_the_plan_says_how_its_threshold_is_known(string system, string mode, string raster, string known)
    {
        var own = $"kes-30: {{ name: Valley Sports, site: Kestrel Ridge, system: {system}, mode: {mode}, raster: {raster}, channel: 30, latitude: 43.2943 N, longitude: 99.378 W, power: 90 kW, height: 290 m, above-sea: 822 m, polarisation: horizontal }}";
        var plan = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "  stations: tamarack.csv\n", "  stations: tamarack.csv\n  transmitters:\n    " + own + "\n"));
        var station = plan.Station("kes-30");
        Assert.Equal((true, known), (station.Calculated, station.Budget!.RequiredCnProvenance));
        Assert.Equal(Calc.Reception.ChannelRaster.Find(raster, 30)!.CentreMHz, station.FrequencyMhz);
        Assert.All(plan.Cabling.Outlets, o => Assert.True(double.IsFinite(plan.At(o.Id, "kes-30").MarginDb)));
    }
}
