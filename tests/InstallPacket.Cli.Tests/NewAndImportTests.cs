namespace InstallPacket.Cli.Tests;

/// <summary>Jobs that the program begins: by questions or flags, and from a table of addresses.</summary>
public class NewAndImportTests
{
    public static TheoryData<string, string, string, int> Kinds()
    {
        var kinds = new TheoryData<string, string, string, int>();
        foreach (var family in new[] { "us", "eu" })
            foreach (var mount in JobKindAsked.Mounts)
                foreach (var (cable, outlets) in new[] { ("new", 1), ("existing", 4) })
                    kinds.Add(family, mount, cable, outlets);
        return kinds;
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void New_job_of_every_kind_plans_as_it_stands(string family, string mount, string cable, int outlets)
    {
        using var shop = new Workshop();
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "house", "--jobs", shop.Jobs, "--family", family, "--mount", mount, "--cable", cable,
            "--outlets", outlets.ToString(System.Globalization.CultureInfo.InvariantCulture)).Code);
        var run = Workshop.Run("check", "--jobs", shop.Jobs);
        Assert.True(run.Code == ExitCode.Done, run.Errors);
        Assert.Contains(mount == "desk" ? "study" : "planned", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("stop", run.Output, StringComparison.Ordinal);
        Assert.InRange(shop.Read("jobs/house/job.yaml").Split('\n').Length, 10, 75);
    }

    [Fact]
    public void Firm_folder_makes_new_jobs_shorter()
    {
        using var shop = new Workshop();
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "--firm", "--family", "eu", "--jobs", shop.Jobs).Code);
        Assert.Equal(ExitCode.WrongCommandLine, Workshop.Run("new", "--firm", "--jobs", shop.Jobs).Code);
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "house", "--mount", "wall", "--jobs", shop.Jobs).Code);
        var job = shop.Read("jobs/house/job.yaml");
        Assert.DoesNotContain("receiver", job, StringComparison.Ordinal);
        Assert.DoesNotContain("code:", job, StringComparison.Ordinal);
        Assert.Contains("56.3100 N", job, StringComparison.Ordinal); // the family is the firm's
        var run = Workshop.Run("check", "--jobs", shop.Jobs);
        Assert.True(run.Code == ExitCode.Done, run.Errors);
    }

    [Theory]
    [InlineData("--family", "fr")]
    [InlineData("--mount", "tree")]
    [InlineData("--cable", "old")]
    [InlineData("--outlets", "9")]
    [InlineData("--firm", "nobody")]
    public void Wrong_word_writes_nothing(string flag, string word)
    {
        using var shop = new Workshop();
        Assert.Equal(ExitCode.WrongCommandLine, Workshop.Run("new", "house", "--jobs", shop.Jobs, flag, word).Code);
        Assert.False(Directory.Exists(Path.Combine(shop.Jobs, "house")));
    }

    [Theory]
    [InlineData(',')]
    [InlineData(';')]
    [InlineData('\t')]
    public void Table_of_addresses_becomes_desk_studies_and_every_row_is_accounted_for(char sign)
    {
        using var shop = Workshop.WithDemoJobs();
        var firm = shop.Read("jobs/_shared/firms/fernleigh.yaml");
        shop.Write("jobs/_shared/firms/fernleigh.yaml", firm + "import: [{ column: Address, key: customer.address }, { column: Who, key: customer.name }, { column: Position, key: siting.place }, { column: Wish, key: reception.want }, { column: Ground, key: siting.ground }]\n");
        string[][] rows =
        [
            ["Address", "Who", "Position", "Wish", "Ground"],
            ["\"3 Birch Row, Tamarack\"", "K. Alder (invented)", "\"43.65 N, 99.20 W\"", "kes-9|kes-21", "1640 ft"],
            ["4 Birch Row", "=HYPERLINK(1)", "\"43.65 N, 99.20 W\"", "kes-9", "1640 ft"],
            ["5 Birch Row", "L. Oak (invented)", "\"43.65 N, 99.20 W\"", "kes-9", "1640"],
            ["Alder Lane", "M. Elm (invented)", "\"43.65 N, 99.20 W\"", "kes-9", "1640 ft"],
            ["6 Birch Row", "N. Ash (invented)"],
        ];
        shop.Write("table.csv", "\uFEFF" + string.Join("\r\n", rows.Select(r => string.Join(sign, r))) + "\r\n");
        var run = Workshop.Run("import", Path.Combine(shop.Root, "table.csv"), "--jobs", shop.Jobs, "--firm", "fernleigh", "--date", "2027-05-20");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("row 2  written  3-birch-row-tamarack\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("row 3  skipped  : `=HYPERLINK(1)` is a formula of a spreadsheet, not a value\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("row 4  skipped  5-birch-row: 1 stop: siting.ground: unit-missing\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("row 5  skipped  alder-lane: the folder is there already; it is left alone\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("row 6  skipped  : it has 2 fields, the header has 5", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("1 of 5 rows are jobs now\n", run.Output, StringComparison.Ordinal);
        var check = Workshop.Run("check", "--jobs", shop.Jobs, "3-birch-row-tamarack");
        Assert.True(check.Code == ExitCode.Done, check.Errors);
        Assert.Contains("3 Birch Row, Tamarack", shop.Read("jobs/3-birch-row-tamarack/job.yaml"), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(shop.Jobs, "5-birch-row")));
    }

    [Fact]
    public void Table_with_unknown_columns_or_another_encoding_is_refused_whole()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("table.csv", "customer.name,Street\nA,B\n");
        var run = Workshop.Run("import", Path.Combine(shop.Root, "table.csv"), "--jobs", shop.Jobs);
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.Contains("the columns `Street` are no keys of a job", run.Errors, StringComparison.Ordinal);
        File.WriteAllBytes(Path.Combine(shop.Root, "latin.csv"), [0x63, 0x75, 0xE4, 0x2C, 0x0A, 0xE4]);
        Assert.Contains("is not UTF-8 text", Workshop.Run("import", Path.Combine(shop.Root, "latin.csv"), "--jobs", shop.Jobs).Errors, StringComparison.Ordinal);
    }
}
