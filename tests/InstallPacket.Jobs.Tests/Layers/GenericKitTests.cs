namespace InstallPacket.Jobs.Tests.Layers;

/// <summary>Kits of a firm beside the generic ones that come with the program.</summary>
public class GenericKitTests
{
    private const string Job = "format: 1\nkits:\n  one: { kit: aim }\n  two: { kit: reach }\n";

    private readonly MemoryJobFiles _files = new MemoryJobFiles().With("house/job.yaml", Job)
        .With("_generic/kits/aim.yaml", "what: Generic\ngives: { reception: { aim: 10 deg true } }\n")
        .With("_generic/kits/reach.yaml", "what: Generic\ngives: { reception: { within: 90 km } }\n");

    [Fact]
    public void A_generic_kit_is_there_without_a_file_of_ones_own() =>
        Assert.Contains("  aim: 10 deg true  # _generic/kits/aim.yaml, line 2\n", Full(), StringComparison.Ordinal);

    [Fact]
    public void A_firms_kit_goes_before_the_generic_one_and_the_others_stay()
    {
        _files.With("_shared/kits/aim.yaml", "what: Ours\ngives: { reception: { aim: 20 deg true } }\n");
        Assert.Contains("  aim: 20 deg true  # _shared/kits/aim.yaml, line 2\n", Full(), StringComparison.Ordinal);
        Assert.Contains("  within: 90 km  # _generic/kits/reach.yaml, line 2\n", Full(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kit_that_is_missing_names_near_ones_of_both()
    {
        _files.With("_shared/kits/reserve.yaml", "what: Ours\ngives: {}\n").With("house/job.yaml", Job.Replace("reach", "reech", StringComparison.Ordinal));
        var findings = new FindingList();
        JobInFull.Of(_files, "house", findings);
        var finding = Assert.Single(findings.Sorted, f => f.Id == "unknown-reference");
        Assert.Equal("reach", finding.Values["near"]);
        Assert.Equal(["aim", "reach", "reserve"], (string[])finding.Values["known"]!);
    }

    private string Full()
    {
        var findings = new FindingList();
        var text = JobInFull.Of(_files, "house", findings);
        Assert.Empty(findings.Sorted);
        return text!;
    }
}
