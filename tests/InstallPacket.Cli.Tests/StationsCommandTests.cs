using System.Text;
using System.Text.RegularExpressions;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

public sealed partial class StationsCommandTests : IDisposable
{
    private const string One = "|XINV-DT|-|DTV|21|ND|-|-|-|LIC|HARLOW|ZZ|US|-|420. kW|-|318.|-|-|N|43|17|39.5|W|99|22|40.8|Invented One|-|-|-|850.|-|\n";
    private readonly Workshop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void The_example_of_the_guide_prints_and_writes_what_the_guide_shows()
    {
        var guide = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "docs", "guide", "stations.md"));
        _shop.Write("query-list.txt", Block(guide, "text query-list.txt"));
        var command = Command().Match(guide).Groups["rest"].Value;
        var arguments = Word().Matches(command).Select(m => m.Value.Trim('"')).Select(a => a is "query-list.txt" or "region.csv" ? At(a) : a).ToArray();
        var run = Workshop.Run(arguments);
        var printed = (run.Errors + run.Output).Replace(_shop.Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        if (BadJobs.Repository.Accepts) Accept(printed, _shop.Read("region.csv"));
        guide = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "docs", "guide", "stations.md"));
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Equal(Block(guide, "text printed"), printed);
        Assert.Equal(Block(guide, "csv region.csv"), _shop.Read("region.csv"));
    }

    [Fact]
    public void The_saved_list_is_one_of_ours()
    {
        _shop.Write("list.txt", One);
        Assert.Equal(ExitCode.Done, Workshop.Run("stations", At("list.txt"), "--save", At("ours.csv")).Code);
        var run = Workshop.Run("stations", At("ours.csv"), "--at", "43.62 N, 99.14 W");
        Assert.Equal("", run.Errors);
        Assert.Equal("xinv-dt          RF 21    41.0 km  208.1 deg true  Harlow\n1 row read, 1 station kept, 0 rows dropped\n", run.Output);
    }

    [Fact]
    public void A_file_that_is_there_is_written_over_only_when_told_so()
    {
        _shop.Write("list.txt", One);
        _shop.Write("ours.csv", "precious");
        var refused = Workshop.Run("stations", At("list.txt"), "--save", At("ours.csv"));
        Assert.Equal((ExitCode.WrongCommandLine, "precious"), (refused.Code, _shop.Read("ours.csv")));
        Assert.Equal($"installpacket: {At("ours.csv")} is there already; `--replace` writes over it\n", refused.Errors);
        Assert.Equal(ExitCode.Done, Workshop.Run("stations", At("list.txt"), "--save", At("ours.csv"), "--replace").Code);
        Assert.Contains("xinv-dt,XINV-DT,Harlow", _shop.Read("ours.csv"), StringComparison.Ordinal);
        Assert.Equal(["list.txt", "ours.csv"], Workshop.Files(_shop.Root).Keys);
    }

    [Fact]
    public void Nothing_is_saved_when_nothing_is_kept()
    {
        _shop.Write("list.txt", One);
        var run = Workshop.Run("stations", At("list.txt"), "--status", "CP", "--save", At("ours.csv"));
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("stop station-list-empty", run.Errors, StringComparison.Ordinal);
        Assert.Equal("1 row read, 0 stations kept, 0 rows dropped, 1 row left out as asked (status LIC: 1)\n", run.Output);
        Assert.False(File.Exists(At("ours.csv")));
    }

    [Fact]
    public void The_regulators_list_is_read_as_Latin_1()
    {
        // 0x85 is a line end to some; here it is a sign inside a name, and the next record must not move.
        File.WriteAllBytes(At("list.txt"), Encoding.Latin1.GetBytes("a heading\r\n" + One.Replace("HARLOW", "CA\u00D1ON\u0085", StringComparison.Ordinal).Replace("\n", "\r\n", StringComparison.Ordinal) + One.Replace("DTV", "FM ", StringComparison.Ordinal)));
        var run = Workshop.Run("stations", At("list.txt"));
        Assert.StartsWith("xinv-dt          RF 21  ATSC 1.0  Ca\u00F1on\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("list.txt(1,1): caution station-row-dropped: row dropped: the line is not a record", run.Errors, StringComparison.Ordinal);
        Assert.Contains("list.txt(3,12): caution station-row-dropped: row dropped: the service code is `FM`", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Filters_work_on_a_list_of_ours_and_count_what_they_leave_out()
    {
        var list = Path.Combine(DemoJobs.Checkout, "jobs/_shared/stations/tamarack.csv");
        var run = Workshop.Run("stations", list, "--near", "alder-lane", "--jobs", Path.Combine(DemoJobs.Checkout, "jobs"), "--within", "30 mi", "--channels", "14-36", "--save", At("near.csv"));
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("7 rows read, 3 stations kept, 0 rows dropped, 4 rows left out as asked (channel outside 14-36: 1, farther than 48.28 km: 3)", run.Output, StringComparison.Ordinal);
        Assert.Contains("kes-21,Kestrel News,Kestrel Ridge,ATSC 1.0,,us-6,21,5.1,43.2943,-99.378,420,318,850,both,\n", _shop.Read("near.csv"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("`--within` counts from a place", "--within", "150 km")]
    [InlineData("give one of them", "--near", "alder-lane", "--at", "43.62 N, 99.14 W")]
    [InlineData("`--replace` goes with `--save`", "--replace")]
    [InlineData("`--at 43.62, -99.14` is not a place", "--at", "43.62, -99.14")]
    [InlineData("`--within 150` is not a distance", "--at", "43.62 N, 99.14 W", "--within", "150")]
    [InlineData("`--channels 36-2` is not a range of channels", "--channels", "36-2")]
    [InlineData("the job nobody", "--near", "nobody")]
    [InlineData("`--status` goes with the regulator's list", "--status", "CP")]
    [InlineData("there is no folder for", "--save", "/no/such/folder/list.csv")]
    [InlineData("is a folder", "--save", "/tmp")]
    public void Options_that_do_not_go_together_are_a_wrong_command_line(string problem, params string[] options)
    {
        var run = Workshop.Run(["stations", Path.Combine(DemoJobs.Checkout, "jobs/_shared/stations/tamarack.csv"), "--jobs", Path.Combine(DemoJobs.Checkout, "jobs"), .. options]);
        Assert.Equal((ExitCode.WrongCommandLine, ""), (run.Code, run.Output));
        Assert.Contains(problem, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_list_is_refused()
    {
        Assert.Contains("there is no file", Workshop.Run("stations", At("nothing.txt")).Errors, StringComparison.Ordinal);
        File.WriteAllBytes(At("picture"), [0xFF, 0xD8, 0xFF, 0xE0, 0x0A]);
        Assert.Contains("neither a list of ours in UTF-8 nor the regulator's list", Workshop.Run("stations", At("picture")).Errors, StringComparison.Ordinal);
        using (var big = File.Create(At("big"))) big.SetLength(StationListReader.MostBytes + 1);
        Assert.Contains("is larger than 16 MiB", Workshop.Run("stations", At("big")).Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Recalled_thresholds_of_new_systems_print_with_the_word_verify()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/alder-lane/job.yaml", "  stations: tamarack.csv\n", """
              stations: tamarack.csv
              transmitters:
                kes-24: { name: Tamarack Home, site: Kestrel Ridge, system: ATSC 3.0, mode: 256QAM 9/15, raster: us-6, channel: 24, latitude: 43.2943 N, longitude: 99.378 W, power: 250 kW, above-sea: 837 m, polarisation: horizontal }
                kes-30: { name: Valley Sports, site: Kestrel Ridge, system: ISDB-T, mode: 64QAM 3/4, raster: br-6, channel: 30, latitude: 43.2943 N, longitude: 99.378 W, power: 90 kW, above-sea: 822 m, polarisation: horizontal }

            """);
        Assert.Equal(ExitCode.Done, shop.Build("alder-lane").Code);
        var workings = shop.Read("out/alder-lane/workings.md");
        Assert.Matches(@"\| Tamarack Home \| ATSC 3\.0 \| 256QAM 9/15 \| [0-9.]+\sdB \| derived \|", workings);
        Assert.Matches(@"\| Valley Sports \| ISDB-T \| 64QAM 3/4 \| [0-9.]+\sdB \| memory: verify \|", workings);
    }

    private string At(string name) => Path.Combine(_shop.Root, name);

    private static string Block(string page, string info)
    {
        var start = page.IndexOf($"```{info}\n", StringComparison.Ordinal) + $"```{info}\n".Length;
        return page[start..page.IndexOf("```", start, StringComparison.Ordinal)];
    }

    private static void Accept(string printed, string saved)
    {
        var path = Path.Combine(DemoJobs.Checkout, "docs", "guide", "stations.md");
        var page = File.ReadAllText(path);
        foreach (var (info, text) in new[] { ("text printed", printed), ("csv region.csv", saved) })
            page = page.Replace($"```{info}\n{Block(page, info)}```", $"```{info}\n{text}```", StringComparison.Ordinal);
        File.WriteAllText(path, page);
    }

    [GeneratedRegex(@"^    installpacket (?<rest>stations .*)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Command();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();
}
