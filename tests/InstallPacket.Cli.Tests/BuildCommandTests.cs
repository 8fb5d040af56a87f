namespace InstallPacket.Cli.Tests;

public class BuildCommandTests
{
    [Fact]
    public void Demo_jobs_build_and_the_stopped_one_is_stamped()
    {
        var shop = Workshop.Built;
        var run = Workshop.FirstRun;
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("far-meadow     stopped    1 stop", run.Output, StringComparison.Ordinal);
        Assert.StartsWith("**STOPPED", shop.Read("out/far-meadow/crew.md"), StringComparison.Ordinal);
        Assert.Contains("STOPPED", shop.Read("out/far-meadow/customer.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("STOPPED", shop.Read("out/alder-lane/crew.html"), StringComparison.Ordinal);
        Assert.Contains("do not install as planned", shop.Read("out/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Strict_build_fails_on_a_stopped_job() 
    {
        using var shop = Workshop.WithDemoJobs();
        Assert.Equal(ExitCode.JobFailed, shop.Build("--strict", "far-meadow", "alder-lane").Code);
        Assert.Equal(ExitCode.Done, shop.Build("--strict", "alder-lane").Code);
    }

    [Fact]
    public void Every_promised_file_is_there()
    {
        var shop = Workshop.Built;
        string[] promised =
        [
            "index.html", "crew.html", "crew.pdf", "crew.md", "customer.html", "customer.pdf", "customer.md", "workings.html", "workings.md", "plan.json", "cut-list.csv",
            "materials.csv", "van-list.csv", "findings.json", "findings.sarif", "figures/aim-card.svg", "figures/horizon-strip.svg",
            "figures/route-sketch.svg", "figures/chain-diagram.svg", "figures/level-ladder.svg",
        ];
        foreach (var job in new[] { "alder-lane", "far-meadow", "brook-terrace", "mill-yard", "pine-corner", "quay-loft" })
            Assert.All(promised, f => Assert.True(new FileInfo(Path.Combine(shop.Out, job, f)).Length > 0, $"{job}/{f}"));
    }

    [Fact]
    public void Figures_are_written_as_pictures_where_asked()
    {
        using var shop = Workshop.WithPackets();
        var drawn = Directory.GetFiles(Path.Combine(shop.Out, "quay-loft", "figures")).Select(Path.GetFileName).ToArray();
        Assert.All(drawn, f => Assert.EndsWith(".svg", f, StringComparison.Ordinal));
        Assert.DoesNotContain("(unchanged)", shop.Build("quay-loft", "--pictures").Output, StringComparison.Ordinal);
        Assert.All(drawn, f => Assert.True(File.Exists(Path.Combine(shop.Out, "quay-loft", "figures", Path.ChangeExtension(f, ".png")!))));
        Assert.Contains("(unchanged)", shop.Build("quay-loft", "--pictures").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_in_which_no_wanted_station_can_be_calculated_still_gets_its_packet()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/alder-lane/job.yaml", "part: antenna-vhf-uhf-combined", "part: antenna-uhf-panel");
        shop.Edit("jobs/alder-lane/job.yaml", "want: [kes-9, kes-21, kes-24, kes-30, blu-15, blu-33]", "want: [kes-9]");
        Assert.Equal(ExitCode.Done, shop.Build("alder-lane").Code);
        Assert.Contains("Smallest margin: not known", shop.Read("out/alder-lane/crew.md"), StringComparison.Ordinal);
        Assert.DoesNotContain("figures/level-ladder", shop.Read("out/alder-lane/crew.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_without_known_ground_and_obstructions_shows_neither_strip_nor_profiles()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/brook-terrace/job.yaml", "  terrain: lindmark\n", "");
        shop.Edit("jobs/brook-terrace/job.yaml", "  obstructions:\n    ridge-of-number-9: { kind: building, bearing: 118 deg true, width: 30 deg, distance: 14 m, height: 8.9 m }\n", "");
        Assert.Equal(ExitCode.Done, shop.Build("brook-terrace").Code);
        var crew = shop.Read("out/brook-terrace/crew.md");
        Assert.DoesNotContain("figures/horizon-strip", crew, StringComparison.Ordinal);
        Assert.DoesNotContain("figures/path-profile", crew, StringComparison.Ordinal);
        Assert.Contains("figures/chain-diagram.svg", crew, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Out, "brook-terrace", "figures", "horizon-strip.svg")));
    }

    [Fact]
    public void Second_run_elsewhere_gives_the_same_bytes()
    {
        var one = Workshop.Built;
        using var two = Workshop.WithDemoJobs();
        two.Build();
        var (a, b) = (Workshop.Files(one.Out), Workshop.Files(two.Out));
        a.Remove(".installpacket-tiles"); // times of the tiles on this machine
        b.Remove(".installpacket-tiles");
        Assert.Equal(a.Keys, b.Keys);
        Assert.All(a.Keys, f => Assert.True(a[f].AsSpan().SequenceEqual(b[f]), f));
    }

    [Fact]
    public void Unchanged_job_is_left_alone_and_a_changed_one_is_built()
    {
        using var shop = Workshop.WithPackets();
        Assert.Contains("alder-lane     planned    3 cautions, 2 notes  (unchanged)", shop.Build().Output, StringComparison.Ordinal);
        shop.Edit("jobs/alder-lane/job.yaml", "Dog in the yard.", "No dog.");
        Assert.DoesNotContain("alder-lane     planned    3 cautions, 2 notes  (unchanged)", shop.Build().Output, StringComparison.Ordinal);
        Assert.Contains("No dog.", shop.Read("out/alder-lane/crew.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_job_keeps_its_old_packet_marked_stale_and_the_good_ones_are_built()
    {
        using var shop = Workshop.WithPackets();
        var before = Workshop.Files(Path.Combine(shop.Out, "alder-lane"));
        shop.Edit("jobs/alder-lane/job.yaml", "antenna-height: 31 ft", "antenna-height: 31");
        shop.Edit("jobs/brook-terrace/job.yaml", "Retune".ToLowerInvariant() + " takes", "new search takes");
        var run = shop.Build();
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("alder-lane     stale", run.Output, StringComparison.Ordinal);
        Assert.Contains("stop unit-missing", run.Errors, StringComparison.Ordinal);
        Assert.Equal(before, Workshop.Files(Path.Combine(shop.Out, "alder-lane")));
        Assert.Contains("new search takes", shop.Read("out/brook-terrace/customer.md"), StringComparison.Ordinal);
        Assert.Contains("stale", shop.Read("out/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_that_is_no_packet_is_left_alone()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Build("quay-loft");
        shop.Write("out/alder-lane/letters.txt", "mine");
        var run = shop.Build("alder-lane", "quay-loft");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("holds something that is not a packet", run.Errors, StringComparison.Ordinal);
        Assert.Equal("mine", shop.Read("out/alder-lane/letters.txt"));
    }

    [Fact]
    public void Character_without_glyph_names_itself_and_leaves_the_packet()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/alder-lane/job.yaml", "M. and J. Sorrel", "M. \u4E2D Sorrel");
        var run = shop.Build("alder-lane", "far-meadow");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("U+4E2D", run.Errors, StringComparison.Ordinal);
        Assert.Contains("far-meadow  stopped", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_theme_replaces_one_file_and_its_mistakes_have_a_place()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/templates/packet.md.liquid", "# Our own page for {{ job.title }}\n");
        shop.Build("--theme", Path.Combine(shop.Root, "theme"), "alder-lane");
        Assert.Contains("Our own page for Two-storey house", shop.Read("out/alder-lane/index.html"), StringComparison.Ordinal);
        shop.Write("theme/templates/packet.md.liquid", "# Page\n\n{{ job.titel }}\n");
        var run = shop.Build("--theme", Path.Combine(shop.Root, "theme"), "alder-lane");
        Assert.Equal(ExitCode.JobFailed, run.Code);
        Assert.Contains("templates/packet.md.liquid:3:", run.Errors, StringComparison.Ordinal);
        Assert.Contains("titel", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Markup_in_a_job_is_only_text()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/alder-lane/job.yaml", "note: Dog in the yard. Ring first.", "note: \"<script>alert(1)</script> [x](javascript:alert(2)) {onclick=alert(3)} | cell\"");
        Assert.Equal(ExitCode.Done, shop.Build("alder-lane").Code);
        var page = shop.Read("out/alder-lane/crew.html");
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("href=\"javascript", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" onclick=", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt; [x](javascript:alert(2)) {onclick=alert(3)} | cell", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Spreadsheet_formula_in_a_job_is_only_text()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Edit("jobs/alder-lane/job.yaml", "for: outdoor joints", "for: \"=HYPERLINK(0)\"");
        shop.Build("alder-lane");
        Assert.Contains("\"'=HYPERLINK(0)\"", shop.Read("out/alder-lane/materials.csv"), StringComparison.Ordinal);
    }
}
