using System.Globalization;
using System.Text;
using CsCheck;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Tests.Stations;

public class StationListTests
{
    private const string Header = "id,name,site,system,mode,raster,rf_channel,shows_as,latitude_deg,longitude_deg,erp_kw,haat_m,above_sea_m,polarisation\n";
    private const string Good = "mux-a,Multiplex A,Hill,DVB-T2,256QAM 2/3,eu-8,26,1,56.1,14.6,50,240,365,horizontal\n";

    [Fact]
    public void A_good_row_gives_a_station_with_its_place()
    {
        var (stations, findings) = Read("# a remark\n" + Header + Good);
        Assert.Empty(findings);
        var s = Assert.Single(stations);
        Assert.Equal(("mux-a", 26, 56.1, 14.6, 50.0, 240.0, 365.0), (s.Id, s.Channel, s.LatitudeDeg, s.LongitudeDeg, s.ErpKw, s.HaatM!.Value, s.AboveSeaM!.Value));
        Assert.Equal(3, s.At.Line);
    }

    [Theory]
    [InlineData("rf_channel", "26", "26.5", 47)]
    [InlineData("rf_channel", "26", "70", 47)]
    [InlineData("rf_channel", "26", "12", 47)]
    [InlineData("latitude_deg", "56.1", "91", 52)]
    [InlineData("latitude_deg", "56.1", "", 52)]
    [InlineData("longitude_deg", "14.6", "14,6\"", 74)]
    [InlineData("erp_kw", ",50,", ",-1,", 62)]
    [InlineData("erp_kw", ",50,", ",0,", 62)]
    [InlineData("haat_m", "240", "Infinity", 65)]
    [InlineData("haat_m", "240,365", ",", 65)]
    [InlineData("above_sea_m", "365", "high", 69)]
    [InlineData("polarisation", "horizontal", "circular", 73)]
    [InlineData("system", "DVB-T2", "dvb-t2", 24)]
    [InlineData("raster", "eu-8", "eu-9", 42)]
    [InlineData("raster", "eu-8", "us-6", 42)]
    [InlineData("mode", "256QAM 2/3", "256QAM", 31)]
    [InlineData("id", "mux-a", "", 1)]
    public void A_row_is_dropped_with_the_line_and_the_column_of_the_field_at_fault(string column, string good, string bad, int at)
    {
        var (stations, findings) = Read(Header + "\n" + Good.Replace(good, bad, StringComparison.Ordinal) + Good.Replace("mux-a", "mux-b", StringComparison.Ordinal));
        Assert.Equal("mux-b", Assert.Single(stations).Id);
        var finding = Assert.Single(findings);
        Assert.Equal(("station-row-dropped", 3, at), (finding.Id, finding.At.Line, finding.At.Column));
        Assert.True(finding.Case == "fields" || (string?)finding.Values["column"] == column, finding.Values.ToString());
    }

    [Theory]
    [InlineData("ATSC 1.0", "", "us-6", 21)]
    [InlineData("ATSC 3.0", "256QAM 9/15", "us-6", 36)]
    [InlineData("DVB-T", "64QAM 2/3", "eu-7", 5)]
    [InlineData("DVB-T", "64QAM 2/3", "au-7", 28)]
    [InlineData("DVB-T2", "256QAM 2/3", "eu-8", 48)]
    [InlineData("ISDB-T", "64QAM 3/4", "jp-6", 13)]
    [InlineData("ISDB-T", "64QAM 3/4", "br-6", 7)]
    public void Every_system_is_read_in_its_rasters(string system, string mode, string raster, int channel)
    {
        var (stations, findings) = Read(Header + $"x,X,Hill,{system},{mode},{raster},{channel},,10.5,20.5,1,100,,both\n");
        Assert.Empty(findings);
        Assert.Equal((system, mode, raster, channel), (stations[0].System, stations[0].Mode, stations[0].Raster, stations[0].Channel));
    }

    [Fact]
    public void A_system_is_offered_only_in_rasters_whose_noise_bandwidth_is_known()
    {
        foreach (var system in StationRules.Systems)
            Assert.All(ChannelRaster.All.Where(c => StationRules.RastersOf(system).Contains(c.Plan)), c => Assert.NotNull(Bandwidth.NoiseMHz(system, c.WidthMHz)));
        // The carriers of ISDB-T sit 1/7 MHz above the middle of the channel.
        Assert.All(ChannelRaster.All.Where(c => StationRules.RastersOf("ISDB-T").Contains(c.Plan)), c => Assert.Equal(1.0 / 7, c.CentreMHz - ((c.LowerMHz + c.UpperMHz) / 2), 1e-5));
        Assert.Equal(ChannelRaster.All.Select(c => c.Plan).Distinct().Order(), StationRules.Rasters.Order());
        Assert.Equal(RequiredCn.All.Select(r => r.System).Distinct().Order(), StationRules.Systems.Order());
    }

    [Theory]
    [InlineData("DVB-T", "256QAM 2/3", "eu-8", "mode QPSK, 16QAM, 64QAM: 1/2, 2/3, 3/4, 5/6, 7/8")]
    [InlineData("ISDB-T", "64QAM", "jp-6", "mode DQPSK, QPSK, 16QAM, 64QAM: 1/2, 2/3, 3/4, 5/6, 7/8")]
    [InlineData("ATSC 3.0", "256QAM 2/3", "us-6", "mode QPSK, 16QAM, 64QAM, 256QAM, 1024QAM, 4096QAM: 2/15 ... 13/15")]
    [InlineData("ATSC 3.0", "LDM 64QAM 7/15", "us-6", "layered QPSK, 16QAM, 64QAM, 256QAM, 1024QAM, 4096QAM: 2/15 ... 13/15")]
    [InlineData("ATSC 3.0", "64QAM 7/15 ldm", "us-6", "layered QPSK, 16QAM, 64QAM, 256QAM, 1024QAM, 4096QAM: 2/15 ... 13/15")]
    public void An_unknown_mode_is_met_with_the_known_ones(string system, string mode, string raster, string said)
    {
        var (_, findings) = Read(Header + $"x,X,Hill,{system},{mode},{raster},22,,10.5,20.5,1,100,,both\n");
        var finding = findings.Single(f => f.Id == "station-row-dropped");
        Assert.Equal((said, system), ($"{finding.Case} {string.Join("; ", (string[])finding.Values["modes"]!)}", (string?)finding.Values["system"]));
    }

    [Fact]
    public void Either_height_is_enough()
    {
        var (stations, findings) = Read(Header + Good.Replace("240,365", "240,", StringComparison.Ordinal) + Good.Replace("mux-a", "mux-b", StringComparison.Ordinal).Replace("240,365", ",365", StringComparison.Ordinal));
        Assert.Empty(findings);
        Assert.Equal([(240.0, null), (null, 365.0)], stations.Select(s => (s.HaatM, s.AboveSeaM)));
    }

    [Fact]
    public void A_list_without_any_column_of_heights_is_refused()
    {
        var (_, findings) = Read("id,name,site,system,raster,rf_channel,latitude_deg,longitude_deg,erp_kw,polarisation\nx,X,Hill,ATSC 1.0,us-6,21,10,20,1,both\n");
        Assert.Equal(["haat_m / above_sea_m"], (string[])Assert.Single(findings).Values["missing"]!);
    }

    [Fact]
    public void A_pattern_is_read_in_any_order_of_bearings()
    {
        var (stations, findings) = Read(Header.Replace("\n", ",pattern\n", StringComparison.Ordinal) + Good.Replace("horizontal", "horizontal,180:-10  0:0 90.5:-3", StringComparison.Ordinal));
        Assert.Empty(findings);
        Assert.Equal([(0, 0), (90.5, -3), (180, -10)], stations[0].Pattern!.Points);
    }

    [Theory]
    [InlineData("0:0 90")]
    [InlineData("0:0")]
    [InlineData("0:0 360:-1")]
    [InlineData("0:0 90:1")]
    [InlineData("0:0 90:-61")]
    [InlineData("0:0 90:-1 90.0:-2")]
    [InlineData("0:0, 90:-1")]
    public void A_pattern_that_does_not_read_drops_the_row(string pattern)
    {
        var (stations, findings) = Read(Header.Replace("\n", ",pattern\n", StringComparison.Ordinal) + Good.Replace("horizontal", $"horizontal,\"{pattern}\"", StringComparison.Ordinal));
        Assert.Empty(stations);
        var finding = findings.Single(f => f.Id == "station-row-dropped");
        Assert.Equal((2, 84, "pattern", pattern), (finding.At.Line, finding.At.Column, finding.Case, (string?)finding.Values["value"]));
    }

    [Fact]
    public void Rows_are_counted_by_what_became_of_them()
    {
        var text = Header + Good + Good + Good.Replace("mux-a", "mux-b", StringComparison.Ordinal).Replace("56.1", "59", StringComparison.Ordinal)
            + Good.Replace("mux-a", "mux-c", StringComparison.Ordinal).Replace("eu-8,26", "eu-8,40", StringComparison.Ordinal) + Good.Replace("eu-8", "eu-0", StringComparison.Ordinal);
        var filter = new StationFilter { From = (56, 14.6), WithinM = 150_000, Channels = (21, 36) };
        var list = StationListReader.Read(new JobFile("list.csv", FileState.Present, text), filter, new FindingList());
        Assert.Equal("5 rows read, 1 station kept, 2 rows dropped (id: 1, raster: 1), 2 rows left out as asked (channel outside 21-36: 1, farther than 150 km: 1)", list.Tally.ToString());
    }

    [Fact]
    public void Both_mistakes_of_a_list_are_reported_and_the_second_of_two_equal_rows_is_dropped()
    {
        var (stations, findings) = Read(Header + Good + Good + Good.Replace("mux-a", "mux-b", StringComparison.Ordinal).Replace("eu-8", "eu-0", StringComparison.Ordinal));
        Assert.Single(stations);
        Assert.Equal([3, 4], findings.Select(f => f.At.Line));
    }

    [Fact]
    public void Twenty_thousand_rows_keep_their_order_and_their_lines()
    {
        var text = new StringBuilder(Header);
        for (var i = 0; i < 20_000; i++)
            text.Append(CultureInfo.InvariantCulture, $"s-{i},Station {i},Site {i % 700},DVB-T2,256QAM 2/3,eu-8,{21 + (i % 28)},{i},{50 + (i % 100 / 10.0):F1},{10 + (i / 2000.0):F4},1,100,,both\n");
        var (stations, findings) = Read(text.ToString());
        Assert.Empty(findings);
        Assert.Equal(20_000, stations.Count);
        Assert.Equal(("s-19999", 20_001), (stations[^1].Id, stations[^1].At.Line));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n# only remarks\n")]
    [InlineData(Header)]
    [InlineData("\"")]
    [InlineData(",,,,,\n,,,,\n")]
    [InlineData("id\n\"never closed\n")]
    public void A_list_without_stations_is_a_stop(string text)
    {
        var (stations, findings) = Read(text);
        Assert.Empty(stations);
        Assert.Contains(findings, f => f.Severity == Severity.Stop);
    }

    [Fact]
    public void Any_rows_are_kept_or_dropped_with_a_finding_for_each()
    {
        var field = Gen.OneOf(Gen.OneOf("mux-a", "Hill", "DVB-T2", "256QAM 2/3", "eu-8", "26", "56.1", "50", "", "\"", "\"\"", "both", "1e400", "-0"), Gen.String[0, 12]);
        field.Array[0, 20].List[0, 8].Sample(rows =>
        {
            var text = Header + string.Concat(rows.Select(r => string.Join(',', r) + "\n"));
            var (stations, findings) = Read(text);
            var lines = text.ReplaceLineEndings("\n").Split('\n').Length;
            return findings.All(f => f.At.Line >= 0 && f.At.Line <= lines) && (stations.Count > 0 || findings.Any(f => f.Severity == Severity.Stop));
        });
    }

    private static (IReadOnlyList<Station> Stations, IReadOnlyList<Finding> Findings) Read(string text)
    {
        var findings = new FindingList();
        var list = StationListReader.Read(new JobFile("list.csv", FileState.Present, text.ReplaceLineEndings("\n")), findings);
        return (list.Stations, findings.Sorted);
    }
}
