using System.Text;

namespace InstallPacket.Cli.Tests.BadJobs;

public class FindingPageTests
{
    // Findings that no bad job can show, each with its reason.
    private static readonly Dictionary<string, string> WithoutBadJob = new(StringComparer.Ordinal)
    {
        ["job-name-unfit"] = "a folder of the repository cannot have such a name; the tests of the output folder show it",
        ["cutting-not-proved"] = "a job that a person writes is proved; the planner tests show it with a search that is cut short",
    };

    public static TheoryData<string> Ids => [.. FindingIds.InSource];

    [Fact]
    public void The_scan_reads_the_identifier_of_every_finding_in_the_source()
    {
        Assert.Empty(FindingIds.Unreadable);
        Assert.True(FindingIds.InSource.Count > 60, $"only {FindingIds.InSource.Count} identifiers found");
    }

    [Theory]
    [InlineData("""findings.Add(Severity.Stop, "one-id", "some-case", at, ("name", "some-name"));""", "one-id")]
    [InlineData("""findings.Add(severity, far ? "far-id" : "near-id", at, ("span_m", span));""", "far-id near-id")]
    [InlineData("""return Refuse("refused-id", new(file, 1, 1), ("name", name));""", "refused-id")]
    [InlineData("""FileState.Absent => "absent-id",""", "absent-id")]
    [InlineData("""terminal.Error.WriteLine("not-an-id");""", "")]
    public void The_scan_reads_each_way_of_writing_a_finding(string source, string ids) =>
        Assert.Equal(ids, string.Join(' ', FindingIds.Emitted(source)));

    [Fact]
    public void The_scan_complains_of_an_identifier_that_it_cannot_read() =>
        Assert.Equal(["Some.cs: computed"], FindingIds.Hidden("Some.cs", """findings.Add(Severity.Stop, computed, at);"""));

    [Fact]
    public void Every_finding_has_a_bad_job()
    {
        var shown = BadJobCase.Names.SelectMany(n => FindingIds.Shown(new BadJobCase(n).ExpectedText)).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(FindingIds.InSource, id => !shown.Contains(id) && !WithoutBadJob.ContainsKey(id));
        Assert.DoesNotContain(WithoutBadJob.Keys, shown.Contains);
        Assert.DoesNotContain(shown, id => !FindingIds.InSource.Contains(id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_finding_has_a_page_that_explain_prints(string id)
    {
        var page = FindingPages.Of(id);
        Assert.True(page is not null, $"docs/findings/{id}.md is missing");
        Assert.StartsWith($"# {id}\n\n", page, StringComparison.Ordinal);
        Assert.Contains("\n## Why it matters on site\n\n", page, StringComparison.Ordinal);
        Assert.Contains("\n## What to do\n\n", page, StringComparison.Ordinal);
        var summary = page.Split('\n')[2];
        Assert.True(summary.EndsWith('.') && summary.Length <= 140, $"the summary is one sentence of at most 140 characters: {summary}");
    }

    [Fact]
    public void Every_page_belongs_to_a_finding() => Assert.DoesNotContain(FindingPages.Ids, id => !FindingIds.InSource.Contains(id));

    [Fact]
    public void The_committed_list_of_findings_is_the_generated_one()
    {
        var path = Repository.Path("docs", "findings.md");
        var list = List();
        if (Repository.Accepts) File.WriteAllText(path, list);
        Assert.Equal(File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "", list);
    }

    private static string List()
    {
        var list = new StringBuilder("# Findings\n\nEverything that `installpacket check` can report. The list is written from the pages by a test; `installpacket explain ID` prints a page.\n\n");
        list.Append("| Finding | Means |\n|---|---|\n");
        foreach (var id in FindingPages.Ids) list.Append($"| [{id}](findings/{id}.md) | {FindingPages.Of(id)!.Split('\n')[2].Replace("|", "\\|", StringComparison.Ordinal)} |\n");
        return list.ToString();
    }
}
