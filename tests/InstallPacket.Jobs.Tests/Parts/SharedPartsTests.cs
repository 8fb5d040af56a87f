namespace InstallPacket.Jobs.Tests.Parts;

/// <summary>Parts of a firm beside the generic ones that come with the program.</summary>
public class SharedPartsTests
{
    private const string Generic = """
        parts:
          splitter-2: { kind: splitter, name: Generic splitter, outputs: 2, loss: 4 dB, provenance: { loss: "memory: typical" } }
          cap: { kind: terminator, name: Generic cap, role: terminator }
        """;

    private const string Own = """
        parts:
          splitter-2: { kind: splitter, name: Our splitter, outputs: 2, loss: 3.7 dB, provenance: { loss: "read: its sheet" } }
          our-cap: { kind: terminator, name: Our cap, role: terminator }
        """;

    [Fact]
    public void A_firms_part_goes_before_the_generic_one_and_the_others_stay()
    {
        var findings = new FindingList();
        var library = PartLibraryReader.Read(Files(Own), findings);
        Assert.Empty(findings.Sorted);
        Assert.Equal("Our splitter", library.Find("splitter-2")!.Name);
        Assert.Equal("Generic cap", library.Find("cap")!.Name);
    }

    [Fact]
    public void For_a_role_the_plan_takes_the_firms_part_whatever_its_name() =>
        Assert.Equal("our-cap", PartLibraryReader.Read(Files(Own), new FindingList()).Of(PartRole.Terminator)!.Id);

    [Fact]
    public void A_generic_part_does_not_step_in_for_one_of_the_firm_that_has_a_mistake()
    {
        var findings = new FindingList();
        var library = PartLibraryReader.Read(Files(Own.Replace("3.7 dB", "3.7", StringComparison.Ordinal)), findings);
        Assert.Equal("unit-missing", Assert.Single(findings.Sorted).Id);
        Assert.Null(library.Find("splitter-2"));
        Assert.True(library.IsBroken("splitter-2"));
    }

    [Fact]
    public void Every_generic_part_can_be_copied_and_reads_the_same()
    {
        var files = new MemoryJobFiles();
        foreach (var path in DemoJobs.Files().List("_shared/parts"))
            files.With("_generic" + path["_shared".Length..], DemoJobs.Files().Read(path, FileBounds.PartsBytes).Text);
        var listed = new PartListing(files, null).All();
        Assert.Equal(DemoJobs.Parts.Parts.Count, listed.Count);
        foreach (var part in listed)
        {
            var copy = new PartCopy(files);
            files.With(PartCopy.Target, copy.With(copy.Lines(part, part.Id)!, part.Id)!);
        }
        var own = new MemoryJobFiles().With(PartCopy.Target, files.Read(PartCopy.Target, FileBounds.PartsBytes).Text);
        var findings = new FindingList();
        Assert.Equal(listed.Count, PartLibraryReader.Read(own, findings).Parts.Count);
        Assert.Empty(findings.Sorted);
        Assert.Equal(listed.Select(Shown), new PartListing(own, null).All().Select(Shown));
    }

    [Theory]
    [InlineData("parts: { cap: { kind: terminator, name: Cap } }\n")]
    [InlineData("parts:\n    cap: { kind: terminator, name: Cap }\n")]
    [InlineData("parts:\n  cap: [\n")]
    [InlineData("parts:\n")]
    public void Nothing_is_added_to_a_file_of_another_form(string own)
    {
        var files = Files(Own).With(PartCopy.Target, own);
        var part = new PartListing(Files("parts: {}"), null).All().First(p => p.Id == "splitter-2");
        Assert.Null(new PartCopy(files).With("  splitter-2:\n    kind: splitter\n", part.Id));
    }

    [Fact]
    public void Figures_are_listed_in_the_units_that_are_asked_for()
    {
        string Figures(UnitFamily? units) => string.Join("; ", new PartListing(DemoJobs.Files(), units).All().First(p => p.Id == "coax-6").Figures);
        Assert.Contains("diameter 6.9 mm", Figures(null), StringComparison.Ordinal);
        Assert.Contains("diameter 0.272 in", Figures(UnitFamily.Us), StringComparison.Ordinal);
        Assert.Contains("dB/100 ft at 5 MHz", Figures(UnitFamily.Us), StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", Figures(UnitFamily.Us), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_is_missing_in_the_chain_names_parts_of_its_kind_first()
    {
        var text = DemoJobs.Text("alder-lane").Replace("part: splitter-4,", "part: splitter-5,", StringComparison.Ordinal);
        var finding = DemoJobs.Read(text).Findings.First(f => f.Id == "unknown-reference");
        var known = (string[])finding.Values["known"]!;
        Assert.StartsWith("splitter-", (string)finding.Values["near"]!, StringComparison.Ordinal);
        Assert.All(known.Take(5), id => Assert.StartsWith("splitter-", id, StringComparison.Ordinal));
        Assert.All(known, id => Assert.IsAssignableFrom<ChainPart>(DemoJobs.Parts.Find(id)));
    }

    private static string Shown(ListedPart part) => $"{part.Id} {part.Kind} {part.Name} {string.Join("; ", part.Figures)}";

    private static MemoryJobFiles Files(string own) => new MemoryJobFiles().With("_shared/parts/hall.yaml", own).With("_generic/parts/passives.yaml", Generic);
}
