using System.Text.RegularExpressions;
using InstallPacket.Packets;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>A short job says what the long one says.</summary>
public partial class ShortJobTests
{
    private static readonly FolderJobFiles Demo = new(Path.Combine(DemoJobs.Checkout, "jobs"), "");
    private static readonly PartLibrary Parts = PartLibraryReader.Read(Demo, new FindingList());

    public static TheoryData<string> WrittenOut => [.. Directory.GetDirectories(DemoJobs.WrittenOut).Select(d => Path.GetFileName(d)!)];

    public static TheoryData<string> Shown => [.. JobReader.JobIds(Demo)];

    [Theory]
    [MemberData(nameof(WrittenOut))]
    public void Demo_job_with_firm_and_kits_gives_the_plan_of_the_one_that_writes_everything_out(string id)
    {
        using var shop = Workshop.WithDemoJobs();
        Assert.Equal(PlanOf(shop.Jobs, id), PlanOf(Path.Combine(DemoJobs.Checkout, "jobs"), id));
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void Job_printed_in_full_gives_the_same_plan_without_firm_and_kits(string id)
    {
        using var shop = Workshop.WithDemoJobs();
        var full = JobInFull.Of(Demo, id, new FindingList())!;
        Directory.Delete(Path.Combine(shop.Jobs, "_shared", "firms"), true);
        Directory.Delete(Path.Combine(shop.Jobs, "_shared", "kits"), true);
        shop.Write($"jobs/{id}/job.yaml", FirmLine().Replace(full, ""));
        Assert.Equal(PlanOf(Path.Combine(DemoJobs.Checkout, "jobs"), id), PlanOf(shop.Jobs, id));
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void Demo_job_is_short(string id) =>
        Assert.InRange(File.ReadAllLines(Path.Combine(DemoJobs.Checkout, "jobs", id, "job.yaml")).Length, 1, id == "sugar-lane" ? 40 : 80);

    [Fact]
    public void First_job_of_the_guide_is_a_desk_study_and_becomes_a_packet()
    {
        using var shop = new Workshop();
        shop.Write("jobs/birch-row/job.yaml", Example("first-job.md", "    format: 1\n"));
        var run = shop.Build();
        Workshop.AssertOnlyHillsUnseen(run);
        Assert.Contains("birch-row  study", run.Output, StringComparison.Ordinal);
        Assert.StartsWith("**NOT SURVEYED", shop.Read("out/birch-row/study.md"), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Out, "birch-row", "crew.md")));
        Assert.False(File.Exists(Path.Combine(shop.Out, "birch-row", "materials.csv")));
    }

    [Fact]
    public void Kit_of_the_guide_is_the_one_that_comes_with_the_program() =>
        Assert.Equal(File.ReadAllText(Path.Combine(DemoJobs.Checkout, "jobs/_shared/kits/antenna-and-amplifier.yaml")).Split("gives:")[1]
            .Replace("<antenna>", "antenna-vhf-uhf-combined", StringComparison.Ordinal).Replace("<amplifier>", "masthead-amplifier-16", StringComparison.Ordinal),
            Example("firm-and-kits.md", "    what: Antenna with").Split("gives:")[1]);

    [Fact]
    public void What_the_firm_promises_and_who_it_is_stands_on_the_customers_pages()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/quay-loft/job.yaml", "  phone: 070 555 01 42\n", "  phone: 070 555 01 42\n  mail: office@example.invalid\n  licence: trade register 42 (invented)\n");
        shop.Edit("jobs/quay-loft/job.yaml", "handover:\n", "handover:\n  warranty: Two years on the work, by our terms of 2026.\n");
        Assert.Equal(ExitCode.Done, shop.Build("quay-loft").Code);
        var page = shop.Read("out/quay-loft/customer.md");
        Assert.Contains("Two years on the work, by our terms of 2026.", page, StringComparison.Ordinal);
        Assert.Contains("office@example.invalid. License or registration: trade register 42 (invented).", page.Replace("Licence", "License", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // The indented block that begins so.
    private static string Example(string page, string begins)
    {
        var text = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "docs", "guide", page));
        var start = text.IndexOf("\n" + begins, StringComparison.Ordinal) + 1;
        var lines = text[start..].Split('\n').TakeWhile(l => l.StartsWith("    ", StringComparison.Ordinal));
        return string.Concat(lines.Select(l => l[4..] + "\n"));
    }

    private static string PlanOf(string folder, string id)
    {
        var files = new FolderJobFiles(folder, "");
        var reading = new JobReader(files, Parts).Read(id);
        Assert.True(reading.Job is not null, string.Join("\n", reading.Findings.Select(f => $"{f.At} {f.Id}")));
        using var terrain = reading.Job.Siting.Terrain is { } tiles ? new TerrainTiles(files, tiles.Value) : null;
        return Places().Replace(PlanJson.Text(PlanJson.Tree(Planner.Plan(reading.Job, Parts, terrain, reading.Findings))), "");
    }

    // Where a finding stands differs; what it says does not.
    [GeneratedRegex("\"(file|line|column|path)\": [^\\n]*")]
    private static partial Regex Places();

    [GeneratedRegex("(?m)^firm:.*\\n")]
    private static partial Regex FirmLine();
}
