using System.Globalization;
using System.Text;
using static InstallPacket.Tests.RegulatorRows;

namespace InstallPacket.Jobs.Tests.Stations;

public class RegulatorListTests
{
    [Fact]
    public void A_row_becomes_a_station_of_ours()
    {
        var (list, findings) = Read(Row() + Row(call: "XZED-TV", channel: "9", power: ".5 kW", vertical: "0.25 kW", haat: "-20.", longitude: "99|22|41.0"));
        Assert.Empty(findings);
        var s = list.Stations[0];
        Assert.Equal(("xinv-dt", "XINV-DT", "Harlow", "ATSC 1.0", "", "us-6", 21, ""), (s.Id, s.Name, s.Site, s.System, s.Mode, s.Raster, s.Channel, s.ShowsAs));
        Assert.Equal((34.0, 318.0, 850.0, Polarisation.Horizontal), (s.ErpKw, s.HaatM!.Value, s.AboveSeaM!.Value, s.Polarisation));
        Assert.Equal(43 + (17 / 60.0) + (39.5 / 3600), s.LatitudeDeg, 1e-12);
        Assert.Equal(-(99 + (22 / 60.0) + (40.8 / 3600)), s.LongitudeDeg, 1e-12);
        Assert.Equal(("list.txt", 1), (s.At.File, s.At.Line));
        var other = list.Stations[1];
        Assert.Equal(("xzed-tv", "Harlow", 0.5, null, Polarisation.Both), (other.Id, other.Site, other.ErpKw, other.HaatM, other.Polarisation));
        Assert.Contains("No height above average terrain from 1 to 3000 m in the list; `haat_m` is empty: xzed-tv.", list.Remarks);
    }

    [Fact]
    public void Bad_rows_are_told_by_line_column_value_and_reason()
    {
        var (list, findings) = Read(string.Concat(Faulty));
        Assert.Equal("xinv-dt", Assert.Single(list.Stations).Id);
        Assert.All(findings, f => Assert.Equal((Severity.Caution, "station-row-dropped"), (f.Severity, f.Id)));
        Assert.Equal(
        [
            "2,1 no-record",
            "3,2 list-call-sign call-sign `X INV`",
            "4,26 list-analogue service-code `TX`",
            "5,26 list-service service-code `FM`",
            "6,31 list-channel rf-channel `70`",
            "7,31 list-channel rf-channel `7.5`",
            "8,145 list-power power `0.     kW`",
            "9,145 list-power power `-3. kW`",
            "10,145 list-power power `high`",
            "11,145 list-power power `9000. kW`",
            "12,145 list-power power `40. W`",
            "13,196 list-letter latitude-letter `X`",
            "14,204 list-whole latitude-minutes `60`",
            "15,198 list-whole latitude-degrees `91`",
            "16,198 list-angle latitude",
            "17,230 list-seconds longitude-seconds `60`",
            "18,218 list-whole longitude-degrees ``",
            "19,196 list-sea",
            "20,167 list-height",
            "21,1 no-record",
        ], findings.Select(f => $"{f.At.Line},{f.At.Column} {Said(f)}"));
        Assert.Equal("21 rows read, 1 station kept, 20 rows dropped (analogue: 1, call sign: 1, channel: 2, height: 1, not a record: 2, position: 7, power: 5, service code: 1)", list.Tally.ToString());
    }

    [Fact]
    public void Of_rows_for_one_transmitter_the_licensed_one_with_the_most_power_is_kept()
    {
        var text = Row(power: "20. kW") + Row(power: "34. kW", latitude: "43|17|40.0") + Row(power: "90. kW", status: "CP MOD") + Row(power: "30. kW")
            + Row(channel: "22") + Row(power: "34. kW", latitude: "43|18|39.5");
        var (list, findings) = Read(text, new StationFilter { Statuses = ["LIC", "CP MOD"] });
        Assert.Equal([(21, 34.0, 2), (21, 34.0, 6), (22, 34.0, 5)], list.Stations.Select(s => (s.Channel, s.ErpKw, s.At.Line)));
        Assert.Equal(["xinv-dt-21", "xinv-dt-21-2", "xinv-dt-22"], list.Stations.Select(s => s.Id));
        Assert.Equal([(1, "LIC", 20.0), (3, "CP MOD", 90.0), (4, "LIC", 30.0)], findings.Select(f => (f.At.Line, (string?)f.Values["status"], (double)f.Values["power_kw"]!)));
        Assert.All(findings, f => Assert.Equal((2, "LIC", 34.0), ((int)f.Values["kept_line"]!, (string?)f.Values["kept_status"], (double)f.Values["kept_power_kw"]!)));
        Assert.Equal(3, list.Tally.Dropped["duplicate"]);
    }

    [Fact]
    public void Filters_leave_out_what_is_not_asked_for_and_count_it()
    {
        var text = Row() + Row(call: "XAPP", status: "APP") + Row(call: "XCP", status: "CP MOD", service: "TX") + Row(call: "XFAR", latitude: "53|0|0") + Row(call: "XLOW", channel: "3") + Row(call: "XBAD", longitude: "-|-|-");
        var filter = new StationFilter { From = (43.3, -99.4), WithinM = 150_000, Channels = (7, 36) };
        var (list, findings) = Read(text, filter);
        Assert.Equal(["xinv-dt"], list.Stations.Select(s => s.Id));
        Assert.Equal("6 rows read, 1 station kept, 1 row dropped (position: 1), 4 rows left out as asked (channel outside 7-36: 1, farther than 150 km: 1, status APP: 1, status CP MOD: 1)", list.Tally.ToString());
        Assert.Equal(6, Assert.Single(findings).At.Line);
    }

    [Fact]
    public void Transmitters_within_300_m_are_one_site_named_after_its_usual_city()
    {
        // 300 m are 9.7 seconds of latitude.
        var text = Row(call: "XA", city: "HARLOW") + Row(call: "XB", latitude: "43|17|49.1", city: "NORTH HARLOW") + Row(call: "XC", latitude: "43|17|49.3", city: "HARLOW")
            + Row(call: "XD", city: "HARLOW") + Row(call: "XE", latitude: "44|0|0", city: "ST. MORE") + Row(call: "XF", latitude: "45|0|0", city: "") + Row(call: "XG", latitude: "46|0|0", city: "=1+1");
        var (list, _) = Read(text);
        Assert.Equal(["Harlow 1", "Harlow 1", "Harlow 2", "Harlow 1", "St. More", "Unnamed site 1", "Unnamed site 2"], list.Stations.Select(s => s.Site));
    }

    [Fact]
    public void Names_do_not_depend_on_the_order_of_the_list()
    {
        string[] rows = [Row(call: "XA"), Row(call: "XB", latitude: "44|0|0"), Row(call: "XA", channel: "30"), Row(call: "XC", latitude: "45|0|0"), Row(call: "XA", latitude: "45|0|0")];
        string Names(IEnumerable<string> some) => string.Join("; ", Read(string.Concat(some)).List.Stations.Select(s => $"{s.Id} {s.Site}"));
        Assert.Equal("xa-21 Harlow 1; xa-21-2 Harlow 2; xa-30 Harlow 1; xb Harlow 3; xc Harlow 2", Names(rows));
        Assert.Equal(Names(rows), Names(rows.Reverse()));
    }

    [Fact]
    public void Directional_antennas_are_named_because_their_pattern_is_not_there()
    {
        var (list, _) = Read(Row() + Row(call: "XDIR", directional: "DAX"));
        Assert.Contains(list.Remarks, r => r.StartsWith("Directional antenna", StringComparison.Ordinal) && r.EndsWith("fill in `pattern`: xdir.", StringComparison.Ordinal));
        Assert.Contains(list.Remarks, r => r.Contains("NAD83", StringComparison.Ordinal));
        Assert.Contains(list.Remarks, r => r.Contains("ATSC 3.0", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_kept_is_a_stop()
    {
        Assert.Equal(["station-list-empty", "station-row-dropped"], Read(Row(power: "0 kW")).Findings.Select(f => f.Id));
        var (list, findings) = Read(Row(status: "APP"));
        var finding = Assert.Single(findings);
        Assert.Equal(("left-out", 1), (finding.Case, (int)finding.Values["rows"]!));
        Assert.Empty(list.Remarks);
    }

    [Fact]
    public void The_form_of_the_list_is_told_from_ours()
    {
        Assert.True(RegulatorList.HasForm("a heading\n\n" + Row()));
        Assert.False(RegulatorList.HasForm(""));
        Assert.False(RegulatorList.HasForm("id,rf_channel\n" + Row()));
        Assert.False(RegulatorList.HasForm("|a|b|\n"));
        Assert.Equal("station-list-foreign", Assert.Single(Own(Row()).Findings).Id);
    }

    [Fact]
    public void Twenty_thousand_rows_fit_the_bound_and_come_back_as_a_list_of_ours()
    {
        var text = new StringBuilder();
        for (var i = 0; i < 20_000; i++)
        {
            var (a, b) = (i / 2 % 150, i / 2 / 150);
            text.Append(Row(call: $"X{i:D5}", channel: (2 + (i % 35)).ToString(CultureInfo.InvariantCulture), city: $"PLACE {(char)('A' + (i % 26))}",
                latitude: $"{30 + (a / 10)}|{a % 10 * 6}|0", longitude: $"{80 + (b / 10)}|{b % 10 * 6}|{i % 2 * 2}"));
        }
        Assert.InRange(Encoding.Latin1.GetByteCount(text.ToString()), 8_000_000, StationListReader.MostBytes);
        var (list, findings) = Read(text.ToString());
        Assert.Empty(findings);
        Assert.Equal((20_000, 20_000), (list.Tally.Read, list.Tally.Kept));
        Assert.Equal(10_000, list.Stations.Select(s => s.Site).Distinct().Count());
        var ours = StationListWriter.Text(list.Stations, list.Remarks);
        Assert.InRange(Encoding.UTF8.GetByteCount(ours), 1_000_000, StationListReader.MostBytes);
        var (again, problems) = Own(ours);
        Assert.Empty(problems);
        Assert.Equal(list.Stations.Select(s => (s.Id, s.Site, s.Channel)), again.Stations.Select(s => (s.Id, s.Site, s.Channel)));
    }

    private static (StationList List, IReadOnlyList<Finding> Findings) Read(string text, StationFilter? filter = null)
    {
        var findings = new FindingList();
        return (RegulatorList.Read(new JobFile("list.txt", FileState.Present, text), filter ?? StationFilter.None, findings), findings.Sorted);
    }

    private static (StationList List, IReadOnlyList<Finding> Findings) Own(string text)
    {
        var findings = new FindingList();
        var list = StationListReader.Read(new JobFile("list.csv", FileState.Present, text), findings);
        return (list, findings.Sorted);
    }

    // The case, the field and what it holds.
    private static string Said(Finding f) => string.Join(' ', new[]
    {
        f.Case, f.Values.Where(v => v.Name == "field").Select(v => (string?)v.Value).FirstOrDefault(),
        f.Values.Where(v => v.Name == "value").Select(v => $"`{v.Value}`").FirstOrDefault(),
    }.Where(t => t is not null));
}
