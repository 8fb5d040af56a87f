using System.Diagnostics;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

public class OtherCommandTests
{
    [Fact]
    public void Check_writes_nothing_and_fails_on_a_stop()
    {
        using var shop = Workshop.WithDemoJobs();
        Assert.Equal(ExitCode.JobFailed, Workshop.Run("check", "--jobs", shop.Jobs).Code);
        Assert.Equal(ExitCode.Done, Workshop.Run("check", "--jobs", shop.Jobs, "alder-lane", "brook-terrace").Code);
        Assert.False(Directory.Exists(shop.Out));
    }

    [Fact]
    public void New_job_checks_out_in_an_empty_folder()
    {
        using var shop = new Workshop();
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "--jobs", shop.Jobs, "first-house").Code);
        var run = Workshop.Run("check", "--jobs", shop.Jobs);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("first-house  planned", run.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongCommandLine, Workshop.Run("new", "--jobs", shop.Jobs, "first-house").Code);
        Assert.Equal(ExitCode.WrongCommandLine, Workshop.Run("new", "--jobs", shop.Jobs, "../escape").Code);
    }

    [Fact]
    public void Short_job_of_the_readme_builds_in_an_empty_folder()
    {
        using var shop = new Workshop();
        var readme = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "README.md"));
        var start = readme.IndexOf("```yaml\n", StringComparison.Ordinal) + "```yaml\n".Length;
        shop.Write("jobs/first-house/job.yaml", readme[start..readme.IndexOf("```", start, StringComparison.Ordinal)]);
        var run = shop.Build();
        Workshop.AssertOnlyHillsUnseen(run);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("Channel Five", shop.Read("out/first-house/crew.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_are_told_in_physical_units_and_by_meaning()
    {
        using var shop = Workshop.WithDemoJobs();
        Git(shop, "init", "-q", "-b", "main");
        Git(shop, "add", ".");
        Git(shop, "-c", "user.name=t", "-c", "user.email=t@example.invalid", "commit", "-q", "-m", "first");
        shop.Edit("jobs/alder-lane/job.yaml", "den: [4 ft, 14 ft, 10 ft]", "den: [4 ft, 14 ft, 4 ft]");
        shop.Edit("jobs/alder-lane/job.yaml", "distance: 52 ft, height: 18 ft", "distance: 22 ft, height: 18 ft");
        Directory.Delete(Path.Combine(shop.Jobs, "brook-terrace"), true);
        var run = Workshop.Run("changes", "--from", "HEAD", "--jobs", shop.Jobs);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("| routing, runs R7: length | 18.44", run.Output, StringComparison.Ordinal);
        Assert.Contains("| plan: state | planned | stopped |  |", run.Output, StringComparison.Ordinal);
        Assert.Contains("- **stop** power-line-near: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("## far-meadow\n\nNo change of plan.", run.Output, StringComparison.Ordinal);
        Assert.Contains("## brook-terrace\n\nThe job is gone.", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("runs R1:", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_lists_the_files_of_a_theme_and_the_tiles_that_differ()
    {
        using var shop = Workshop.WithDemoJobs();
        foreach (var job in new[] { "brook-terrace", "mill-yard", "pine-corner", "quay-loft", "alder-lane", "sugar-lane" }) Directory.Delete(Path.Combine(shop.Jobs, job), true);
        shop.Write("theme/words/en-US.yaml", "documents:\n  crew: { title: Crew }\n");
        shop.Write("theme/documents.yaml", "{}\n");
        Git(shop, "init", "-q", "-b", "main");
        Git(shop, "add", ".");
        Git(shop, "-c", "user.name=t", "-c", "user.email=t@example.invalid", "commit", "-q", "-m", "first");
        var theme = Path.Combine(shop.Root, "theme");
        Assert.Equal("# Changes since HEAD\n\n## far-meadow\n\nNo change of plan.\n", Changes());

        shop.Edit("theme/words/en-US.yaml", "Crew", "Roof crew");
        shop.Write("theme/templates/quotation.md.liquid", "# New\n");
        File.Copy(Path.Combine(shop.Jobs, "_shared/terrain/tamarack/N43W100.hgt.zip"), Path.Combine(shop.Jobs, "_shared/terrain/tamarack/N43W101.hgt.zip"));
        var changes = Changes();
        Assert.Contains("The theme differs; packets are printed anew:\n\n- templates/quotation.md.liquid\n- words/en-US.yaml\n", changes, StringComparison.Ordinal);
        Assert.Contains("Elevation tiles differ; every number that depends on them may differ too:\n\n- _shared/terrain/tamarack/N43W101.hgt.zip\n", changes, StringComparison.Ordinal);
        Assert.DoesNotContain("documents.yaml", changes, StringComparison.Ordinal);

        string Changes()
        {
            var run = Workshop.Run("changes", "--from", "HEAD", "--jobs", shop.Jobs, "--theme", theme);
            Assert.Equal(ExitCode.Done, run.Code);
            return run.Output;
        }
    }

    [Theory]
    [InlineData("no-such-revision")]
    [InlineData("--output=/tmp/x")]
    [InlineData("")]
    public void Revision_that_git_does_not_know_is_a_wrong_command_line(string revision)
    {
        using var shop = Workshop.WithDemoJobs();
        Git(shop, "init", "-q", "-b", "main");
        var run = Workshop.Run("changes", "--from", revision, "--jobs", shop.Jobs);
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.NotEqual("", run.Errors);
    }

    [Theory]
    [InlineData("biuld")]
    [InlineData("build", "--colour")]
    [InlineData("build", "--jobs", "/no/such/folder")]
    [InlineData("changes")]
    [InlineData("explain", "nothing-of-that-name")]
    public void Wrong_command_line_exits_with_2_and_says_why(params string[] arguments)
    {
        var run = Workshop.Run(arguments);
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.StartsWith("installpacket: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_job_is_named_with_those_that_are_there()
    {
        using var shop = Workshop.WithDemoJobs();
        var run = Workshop.Run("check", "--jobs", shop.Jobs, "alder-lain");
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.Contains("alder-lane, brook-terrace, far-meadow", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Stations_lists_distance_and_bearing_from_a_job()
    {
        using var shop = Workshop.WithDemoJobs();
        var run = Workshop.Run("stations", Path.Combine(shop.Jobs, "_shared/stations/tamarack.csv"), "--near", "alder-lane", "--jobs", shop.Jobs);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("kes-21           RF 21    41.0 km  208.1 deg true  Kestrel Ridge", run.Output, StringComparison.Ordinal);
        Assert.Contains("7 stations kept, 0 rows dropped", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_knows_keys_with_real_names()
    {
        var run = Workshop.Run("explain", "routing.runs.R1.drip-depth");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("default: 150 mm", run.Output, StringComparison.Ordinal);
    }

    private static void Git(Workshop shop, params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = shop.Root, RedirectStandardError = true };
        foreach (var a in arguments) start.ArgumentList.Add(a);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, error);
    }
}
