using System.Globalization;
using System.Text;
using CsCheck;
using InstallPacket.Jobs.Stations;

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
        Assert.Equal(("mux-a", 26, 56.1, 14.6, 50.0, 240.0, 365.0), (s.Id, s.Channel, s.LatitudeDeg, s.LongitudeDeg, s.ErpKw, s.HaatM, s.AboveSeaM!.Value));
        Assert.Equal(3, s.At.Line);
    }

    [Theory]
    [InlineData("rf_channel", "26", "26.5")]
    [InlineData("rf_channel", "26", "70")]
    [InlineData("rf_channel", "26", "12")]
    [InlineData("latitude_deg", "56.1", "91")]
    [InlineData("latitude_deg", "56.1", "")]
    [InlineData("longitude_deg", "14.6", "14,6\"")]
    [InlineData("erp_kw", ",50,", ",-1,")]
    [InlineData("haat_m", "240", "Infinity")]
    [InlineData("above_sea_m", "365", "high")]
    [InlineData("polarisation", "horizontal", "circular")]
    [InlineData("system", "DVB-T2", "dvb-t2")]
    [InlineData("raster", "eu-8", "eu-9")]
    [InlineData("mode", "256QAM 2/3", "256QAM")]
    [InlineData("id", "mux-a", "")]
    public void A_row_is_dropped_with_its_line_and_the_column_at_fault(string column, string good, string bad)
    {
        var (stations, findings) = Read(Header + "\n" + Good.Replace(good, bad, StringComparison.Ordinal) + Good.Replace("mux-a", "mux-b", StringComparison.Ordinal));
        Assert.Equal("mux-b", Assert.Single(stations).Id);
        var finding = Assert.Single(findings);
        Assert.Equal(("station-row-dropped", 3), (finding.Id, finding.At.Line));
        Assert.True(finding.Found.Contains(column, StringComparison.Ordinal) || finding.Found.Contains("fields", StringComparison.Ordinal), finding.Found);
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
        return (StationListReader.Read(new JobFile("list.csv", FileState.Present, text.ReplaceLineEndings("\n")), findings), findings.Sorted);
    }
}
