namespace InstallPacket.Cli.Tests.BadJobs;

public class BadJobTests
{
    public static TheoryData<string> Cases => [.. BadJobCase.Names];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Check_prints_what_the_folder_expects(string name)
    {
        var bad = new BadJobCase(name);
        var actual = bad.Run();
        if (Repository.Accepts) bad.Accept(actual);
        Assert.Equal(bad.ExpectedText, actual);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_folder_is_named_after_a_finding_that_it_shows(string name)
    {
        var shown = FindingIds.Shown(new BadJobCase(name).ExpectedText);
        Assert.True(name.StartsWith("many-", StringComparison.Ordinal) || shown.Any(id => name == id || name.StartsWith(id + "-", StringComparison.Ordinal)),
            $"{name} shows {string.Join(", ", shown)}");
    }

    [Fact]
    public void The_base_job_has_no_findings() => Assert.Equal("exit: 0\nhouse  planned  no findings\n", BadJobCase.Base.Run());

    [Fact]
    public void One_run_reports_all_mistakes_of_a_file_in_the_order_of_the_file()
    {
        var places = FindingIds.Places(new BadJobCase("many-mistakes-at-once").ExpectedText);
        Assert.True(places.Count >= 12, $"only {places.Count} findings");
        Assert.Equal(places.OrderBy(p => p.Line).ThenBy(p => p.Column), places);
    }
}
