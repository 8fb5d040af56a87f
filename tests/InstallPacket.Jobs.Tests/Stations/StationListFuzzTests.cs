using CsCheck;
using InstallPacket.Calc.Reception;
using static InstallPacket.Tests.RegulatorRows;

namespace InstallPacket.Jobs.Tests.Stations;

/// <summary>Any text as a list gives stations and findings, never an exception; every row is accounted for.</summary>
public class StationListFuzzTests
{
    private static readonly string[] Pieces =
    [
        "|", "||", "\n", " ", "XINV-DT", "DTV", "TX", "21", "-1", "LIC", "CP", "34.     kW", "N", "W", "43", "99", "59.99", "60", "1e9", "\u00E9", "\u0000", "\"", ",", "rf_channel", ".", "-", "=1+1", "999999999999999999",
    ];

    private static readonly StationFilter Somewhere = new() { From = (43.3, -99.4), WithinM = 200_000, Channels = (2, 36), Statuses = ["LIC", "CP"] };

    [Fact]
    public void Random_text() => Gen.String[0, 300].Sample(Check, iter: 400);

    [Fact]
    public void Random_pieces() => Gen.OneOf(Pieces).Array[0, 200].Sample(p => Check(string.Concat(p)), iter: 800);

    [Fact]
    public void Rows_with_some_fields_exchanged()
    {
        var change = Gen.Select(Gen.Int[1, 36], Gen.OneOf(Gen.OneOf(Pieces), Gen.String[0, 6]));
        Gen.Select(change.Array[0, 5], Gen.OneOf("XA", "XB"), Gen.OneOf("21", "22")).List[1, 8].Sample(rows =>
        {
            var text = string.Concat(rows.Select(r =>
            {
                var fields = Row(call: r.Item2, channel: r.Item3).TrimEnd('\n').Split('|');
                foreach (var (at, with) in r.Item1) fields[at] = with;
                return string.Join('|', fields) + "\n";
            }));
            return Check(text);
        }, iter: 1000);
    }

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var text = Gen.OneOf(Gen.OneOf("a, b", "\"q\"", "x", " blank ", "two\nlines"), Gen.String[Gen.Char[' ', '~'], 1, 12]).Where(t => t.Trim().Length > 0);
        var pattern = Gen.Select(Gen.Int[0, 359].Array[2, 8], Gen.Int[-600, 0]).Select((b, g) => b.Distinct().ToArray() is { Length: > 1 } some ? new TransmitterPattern(some.Select((x, i) => ((double)x, i == 0 ? 0 : g / 10.0))) : null);
        Gen.Select(text, text, Gen.Double[1, 89], Gen.Double[-180, 180], Gen.Double[0.01, 5000], Gen.Double[1, 3000], Gen.Bool, pattern).Sample((name, site, north, east, erp, haat, high, p) =>
        {
            var s = new Station("x-1", name, site, "DVB-T2", "64QAM 3/5", "eu-8", 33, "", Math.Round(north, 6), Math.Round(east, 6), Math.Round(erp, 6), high ? null : Math.Round(haat, 2), high ? 12.5 : null, Polarisation.Both, new("list.csv", 2, 1)) { Pattern = p };
            var findings = new FindingList();
            var read = StationListReader.Read(new JobFile("list.csv", FileState.Present, StationListWriter.Text([s], ["a \"remark\"\nof two lines, with a comma"])), findings);
            Assert.Empty(findings.Sorted);
            var back = Assert.Single(read.Stations);
            Assert.Equal(s with { Pattern = null, At = default }, back with { Pattern = null, At = default });
            Assert.Equal(p?.Points, back.Pattern?.Points);
        });
    }

    [Fact]
    public void Random_filters_are_read_or_refused()
    {
        var piece = Gen.OneOf(Gen.OneOf("43.62 N", ", ", "99.14 W", "150 km", "90 mi", "-", "2", "36", " ", "0 m", "LIC", ","), Gen.String[0, 5]);
        piece.Array[0, 6].Sample(pieces =>
        {
            var text = string.Concat(pieces);
            _ = StationFilter.ReadStatuses([text]);
            return StationFilter.ReadPlace(text) is null or { LatitudeDeg: >= -90 and <= 90, LongitudeDeg: >= -180 and <= 180 }
                && StationFilter.ReadDistanceM(text) is null or > 0
                && (StationFilter.ReadChannels(text) is not { } c || c.Low <= c.High);
        });
        Assert.Equal((43.62, -99.14), StationFilter.ReadPlace("43.62 N, 99.14 W"));
        Assert.Equal(150_000, StationFilter.ReadDistanceM("150 km"));
        Assert.Equal((2, 36), StationFilter.ReadChannels("2-36"));
        Assert.Equal(["LIC", "CP MOD"], StationFilter.ReadStatuses(["lic, cp mod", "LIC"]));
        Assert.Null(StationFilter.ReadPlace("99.14 W, 43.62 N"));
        Assert.Null(StationFilter.ReadDistanceM("150"));
        Assert.Null(StationFilter.ReadChannels("36-2"));
    }

    private static bool Check(string text)
    {
        var findings = new FindingList();
        var file = new JobFile("list.txt", FileState.Present, text);
        var lines = text.Split('\n');
        foreach (var list in new[] { RegulatorList.Read(file, Somewhere, findings), StationListReader.Read(file, Somewhere, findings) })
        {
            Assert.Equal(list.Stations.Count, list.Tally.Kept);
            Assert.Equal(list.Stations.Count, list.Stations.Select(s => s.Id).Distinct(StringComparer.Ordinal).Count());
        }
        Assert.Equal(lines.Count(l => !string.IsNullOrWhiteSpace(l)), RegulatorList.Read(file, Somewhere, new FindingList()).Tally.Read);
        return findings.Sorted.All(f => f.At.Line == 0 || (f.At.Line <= lines.Length && f.At.Column >= 1 && f.At.Column <= lines[f.At.Line - 1].Length + 1));
    }
}
