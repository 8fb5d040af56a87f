using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>What was finished stays whole, what is broken heals, and what is somebody else's is left alone.</summary>
public class OutputFolderTests
{
    private static readonly string[] Two = ["alder-lane", "quay-loft"];

    [Fact]
    public void Packet_with_a_file_lost_or_changed_is_written_again()
    {
        using var shop = Workshop.WithPackets();
        File.Delete(Path.Combine(shop.Out, "alder-lane", "crew.pdf"));
        File.AppendAllText(Path.Combine(shop.Out, "quay-loft", "crew.html"), "x");
        Assert.DoesNotContain("(unchanged)", shop.Build(Two).Output, StringComparison.Ordinal);
        Assert.Equal(Workshop.Files(Path.Combine(Workshop.Built.Out, "alder-lane")), Workshop.Files(Path.Combine(shop.Out, "alder-lane")));
        Assert.Equal(Workshop.Files(Path.Combine(Workshop.Built.Out, "quay-loft")), Workshop.Files(Path.Combine(shop.Out, "quay-loft")));
        Assert.Contains("(unchanged)", shop.Build(Two).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("(unchanged)", shop.Build([.. Two, "--force"]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_that_somebody_put_into_a_packet_folder_stay()
    {
        using var shop = Workshop.WithPackets();
        shop.Write("out/quay-loft/photos/roof.txt", "mine");
        shop.Build("quay-loft", "--force");
        Assert.Equal("mine", shop.Read("out/quay-loft/photos/roof.txt"));
        Assert.Contains("(unchanged)", shop.Build("quay-loft").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Packet_of_a_run_that_was_killed_comes_back()
    {
        using var shop = Workshop.WithPackets();
        var place = Path.Combine(shop.Out, "alder-lane");
        var packet = Workshop.Files(place);
        Directory.CreateDirectory(Path.Combine(shop.Out, ".installpacket-work", "old"));
        Directory.Move(place, Path.Combine(shop.Out, ".installpacket-work", "old", "alder-lane")); // died between the two renames
        shop.Write("out/.installpacket-work/new/far-meadow/crew.md", "half"); // died while writing
        shop.Edit("jobs/alder-lane/job.yaml", "format: 1", "format: 2");
        shop.Build(Two);
        Assert.Equal(packet, Workshop.Files(place));
        Assert.Empty(Directory.GetDirectories(shop.Out, ".*"));
    }

    [Fact]
    public void One_run_at_a_time_works_in_an_output_folder()
    {
        using var shop = Workshop.WithDemoJobs();
        using (OutputFolder.Open(shop.Out, TimeSpan.Zero))
        {
            var second = Assert.Throws<OutputException>(() => OutputFolder.Open(shop.Out, TimeSpan.Zero));
            Assert.Contains("another run is writing into", second.Message, StringComparison.Ordinal);
        }
        OutputFolder.Open(shop.Out, TimeSpan.Zero).Dispose();
    }

    [Fact]
    public async Task Two_builds_at_once_leave_whole_packets()
    {
        using var shop = Workshop.WithDemoJobs();
        var runs = await Task.WhenAll(Task.Run(() => shop.Build([.. Two, "--force"])), Task.Run(() => shop.Build([.. Two, "--force"])));
        Assert.All(runs, r => Assert.Equal(ExitCode.Done, r.Code));
        foreach (var id in Two) Assert.True(PacketManifest.Of(Path.Combine(shop.Out, id))!.IsWhole(Path.Combine(shop.Out, id)));
    }

    [Theory]
    [InlineData("out/.new-letters/a.txt")]
    [InlineData("out/letters/a.txt")]
    [InlineData("out/a.txt")]
    public void Folder_of_somebody_else_is_refused_and_left_as_it_is(string path)
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write(path, "mine");
        var run = Assert.Throws<OutputException>(() => shop.Build("quay-loft"));
        Assert.Contains("is not empty, and nothing in it says that it is an output folder", run.Message, StringComparison.Ordinal);
        Assert.Single(Workshop.Files(shop.Out));
        Assert.Equal("mine", shop.Read(path));
    }

    [Fact]
    public void Output_folder_that_is_a_file_is_named()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("out", "mine");
        Assert.Contains("is a file; --out names a folder", Assert.Throws<OutputException>(() => shop.Build("quay-loft")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Job_called_like_a_file_of_the_output_folder_is_refused_and_the_others_are_built()
    {
        using var shop = Workshop.WithDemoJobs();
        Directory.Move(Path.Combine(shop.Jobs, "alder-lane"), Path.Combine(shop.Jobs, "index.html"));
        var run = shop.Build("index.html", "quay-loft");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("rename the folder of the job", run.Errors, StringComparison.Ordinal);
        Assert.Contains("quay-loft   planned", run.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(shop.Out, "index.html")));
    }

    [Fact]
    public void Links_to_jobs_with_odd_names_are_escaped_and_nothing_odd_reaches_the_terminal()
    {
        using var shop = Workshop.WithDemoJobs();
        Directory.Move(Path.Combine(shop.Jobs, "quay-loft"), Path.Combine(shop.Jobs, "quay #1 (50%)"));
        Directory.Move(Path.Combine(shop.Jobs, "alder-lane"), Path.Combine(shop.Jobs, "alder\u001b[31m"));
        var run = shop.Build("quay #1 (50%)", "alder\u001b[31m");
        Assert.Contains("href=\"quay%20%231%20%2850%25%29/index.html\"", shop.Read("out/index.html"), StringComparison.Ordinal);
        Assert.Contains("job-name-unfit", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", run.Output + run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void One_packet_folder_that_cannot_be_written_leaves_the_other_jobs_and_the_index()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.UserName == "root", "this user may write everywhere");
        if (OperatingSystem.IsWindows()) return;
        using var shop = Workshop.WithPackets();
        var held = Path.Combine(shop.Out, "alder-lane", "figures");
        File.SetUnixFileMode(held, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        shop.Build([.. Two, "--force"]);
        File.SetUnixFileMode(held, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Contains("quay-loft", shop.Read("out/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Mistake_in_one_part_stops_the_jobs_that_use_it_and_no_other()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("jobs/_shared/parts/own.yaml", "parts:\n  my-splitter: { kind: splitter, name: Mine, passes-power: ja }\n  my-cable: { kind: cable, name: Mine, unit: foo }\n  third: { kind: foo, name: Mine }\n");
        shop.Edit("jobs/alder-lane/job.yaml", "{ part: splitter-4,", "{ part: my-splitter,");
        var run = shop.Build(Two);
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("stop unknown-word: `parts.my-splitter.passes-power` is `ja`", run.Errors, StringComparison.Ordinal);
        Assert.Contains("names the part `my-splitter`, which has mistakes in its parts file", run.Errors, StringComparison.Ordinal);
        Assert.Contains("quay-loft   planned", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Connector_that_no_part_is_stops_the_jobs_with_that_cable()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("jobs/_shared/parts/own.yaml", "parts:\n  my-cable: { kind: cable, name: Mine, connector: zzz }\n");
        var run = shop.Build("quay-loft");
        Assert.Contains("stop unknown-reference: the cable `my-cable` names the connector `zzz`, which is not in the library", run.Errors, StringComparison.Ordinal);
        Assert.Contains("quay-loft  planned", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Remark_in_a_parts_file_rebuilds_nothing_unless_a_finding_names_the_file()
    {
        using var shop = Workshop.WithPackets();
        var parts = Path.Combine(shop.Jobs, "_shared", "parts", "cables.yaml");
        File.WriteAllText(parts, "# a remark\n" + File.ReadAllText(parts));
        Assert.Contains("quay-loft   planned    1 note  (unchanged)", shop.Build(Two).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Pipe_in_the_place_of_a_file_does_not_hang()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "no pipes in folders there");
        using var shop = Workshop.WithDemoJobs();
        System.Diagnostics.Process.Start("mkfifo", [Path.Combine(shop.Jobs, "quay-loft", "notes.yaml")]).WaitForExit();
        Assert.Equal(ExitCode.Done, shop.Build("quay-loft").Code);
    }

    [Theory]
    [InlineData("{{ job.title | slice: \"x\" }}", "invalid number")]
    [InlineData("{{ 1 | divided_by: 0 }}", "")]
    [InlineData("{{ 79228162514264337593543950335 | plus: 1 }}", "")]
    public void Bad_filter_argument_in_a_theme_names_the_template(string text, string says)
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/templates/packet.md.liquid", text + "\n");
        var run = shop.Build("--theme", Path.Combine(shop.Root, "theme"), "quay-loft");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("quay-loft: templates/packet.md.liquid", run.Errors, StringComparison.Ordinal);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Pointer_in_the_place_of_a_font_is_a_mistake_of_the_theme()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/fonts/SourceSans3-It.ttf", "version 1\noid sha256:00\nsize 12\n");
        var run = Assert.Throws<DocumentException>(() => shop.Build("--theme", Path.Combine(shop.Root, "theme"), "quay-loft"));
        Assert.Contains("font 'fonts/SourceSans3-It.ttf' is not a TrueType file", run.Message, StringComparison.Ordinal);
        Assert.Contains("fetch the file itself", run.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{% for i in (1..2000000000) %}{% endfor %}", "a range '(1..n)' needs two numbers written out, at most 1000 apart")]
    [InlineData("{% assign n = 2000000000 %}{% for i in (1..n) limit: 1 %}{% endfor %}", "a range '(1..n)' needs two numbers written out")]
    [InlineData("{% capture c %}{% for i in (1..2000000000) %}{% endfor %}{% endcapture %}", "a range '(1..n)' needs two numbers written out")]
    [InlineData("{% assign a = 'x' %}{% for i in (1..40) %}{% assign a = a | append: a %}{% endfor %}", "grows beyond 262144 characters")]
    [InlineData("{% assign a = 'x' %}{% for i in (1..40) %}{% assign a = a | replace: 'x', 'xxxx' %}{% endfor %}", "grows beyond 262144")]
    [InlineData("{% assign a = 'x,y' | split: ',' %}{% for i in (1..40) %}{% assign a = a | concat: a %}{% endfor %}", "grows beyond 262144")]
    [InlineData("{% assign a = 'word' %}{% for i in (1..40) %}{% capture a %}{{ a }}{{ a }}{% endcapture %}{% endfor %}",
        "the text captured as 'a' grows beyond 262144")]
    [InlineData("{% for i in (1..1000) %}{% for j in (1..1000) %}{% for k in (1..1000) %}{% endfor %}{% endfor %}{% endfor %}",
        "it takes more than 500000 steps, or renders itself")]
    [InlineData("{% for i in (1..1000) %}{% for j in (1..1000) %}{{ 'a word of some length' }}{% endfor %}{% endfor %}",
        "the page grows beyond 4194304 characters")]
    [InlineData("{% render 'packet' %}{% render 'packet' %}", "it takes more than 500000 steps, or renders itself")]
    [InlineData("{{ 1 | fixed: 999999999 }}", "'999999999' is no number of decimals: 0 to 12")]
    [InlineData("{{ 1 | format_string: '{0,1000000000}' }}", "format_string")]
    public void Loop_in_a_theme_ends_within_its_bounds(string text, string says)
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/templates/packet.md.liquid", text + "\n");
        var before = GC.GetTotalAllocatedBytes();
        var run = shop.Build("--theme", Path.Combine(shop.Root, "theme"), "quay-loft");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("quay-loft: templates/packet.md.liquid", run.Errors, StringComparison.Ordinal);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 1_000_000_000);
    }

    [Fact]
    public void Link_in_a_theme_is_refused()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/templates/packet.md.liquid", "# x\n");
        File.CreateSymbolicLink(Path.Combine(shop.Root, "theme", "templates", "mine.md.liquid"), Path.Combine(shop.Jobs, "quay-loft", "job.yaml"));
        var run = Assert.Throws<DocumentException>(() => shop.Build("--theme", Path.Combine(shop.Root, "theme"), "quay-loft"));
        Assert.Contains("'templates/mine.md.liquid' in the theme is a symbolic link", run.Message, StringComparison.Ordinal);
    }
}
