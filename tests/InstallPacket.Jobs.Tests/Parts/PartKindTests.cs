namespace InstallPacket.Jobs.Tests.Parts;

public class PartKindTests
{
    public static TheoryData<PartKind> Kinds => [.. Enum.GetValues<PartKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_part_of_each_kind_reads_as_its_own_record(PartKind kind)
    {
        var (library, findings) = Read($"  p: {{ kind: {Word.Of(kind)}, name: Something }}");
        Assert.Empty(findings);
        var part = library.Find("p")!;
        Assert.Equal(kind, part.Kind);
        Assert.Equal(kind + "Part", part.GetType().Name);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_kind_has_the_common_keys_and_no_key_twice(PartKind kind)
    {
        var keys = PartCatalogue.KeysOf(kind).Keys;
        Assert.Equal(PartKeys.Common.Keys, keys.Take(PartKeys.Common.Keys.Count));
        Assert.Equal(keys.Count, keys.Select(k => k.Name).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_key_of_another_kind_is_reported_and_not_used()
    {
        var (library, findings) = Read("  p: { kind: mast, name: Tube, noise-figure: 2 dB, beamwidth: 40 deg, diameter: 40 mm, provenance: { diameter: memory } }");
        Assert.Equal(["key-of-other-kind", "key-of-other-kind"], findings.Select(f => f.Id));
        Assert.All(findings, f => Assert.Equal(Severity.Caution, f.Severity));
        Assert.Contains(findings, f => (string?)f.Values["key"] == "noise-figure" && f.Values["kinds"] is string[] and ["amplifier", "receiver"]);
        Assert.Contains(findings, f => (string?)f.Values["key"] == "beamwidth" && f.Values["kinds"] is string[] and ["antenna"]);
        Assert.Equal(0.04, Assert.IsType<MastPart>(library.Find("p")).DiameterM!.Value, 12);
    }

    [Fact]
    public void A_value_of_a_key_of_another_kind_is_not_judged()
    {
        var (_, findings) = Read("  p: { kind: mast, name: Tube, noise-figure: rubbish }");
        Assert.Equal(["key-of-other-kind"], findings.Select(f => f.Id));
    }

    [Fact]
    public void An_unknown_word_is_a_finding_and_no_part()
    {
        var (library, findings) = Read("  p: { kind: mst, name: Tube }\n  q: { kind: sundry, name: Clip, role: clp }\n  r: { kind: fixing, name: Screw, form: nail }");
        Assert.Equal(["unknown-word", "unknown-word", "unknown-word"], findings.Select(f => f.Id));
        Assert.Empty(library.Parts);
        Assert.All((string[])["p", "q", "r"], id => Assert.True(library.IsBroken(id)));
    }

    [Fact]
    public void Of_several_parts_of_a_role_the_first_by_name_is_taken()
    {
        var (library, _) = Read("  b: { kind: sundry, name: B, role: clip }\n  a: { kind: sundry, name: A, role: clip }\n  c: { kind: sundry, name: C, role: tie }");
        Assert.Equal("a", library.Of(PartRole.Clip)!.Id);
        Assert.Null(library.Of(PartRole.Terminator));
    }

    [Fact]
    public void Provenance_is_a_mark_and_a_note()
    {
        var (library, findings) = Read("  p: { kind: connector, name: Plug, torque: 3 N m, spare: 5 %, provenance: { torque: \"common practice: half a turn\", spare: guess } }");
        var part = library.Find("p")!;
        Assert.Equal((Calc.Sources.Provenance.CommonPractice, "half a turn"), (part.Provenance["torque"].Mark!.Value, part.Provenance["torque"].Note));
        Assert.Equal("common practice", part.ProvenanceOf(PartKeys.Torque));
        Assert.Equal("unknown", part.ProvenanceOf(PartKeys.Spare));
        Assert.Equal(["provenance-missing"], findings.Select(f => f.Id));
    }

    private static (PartLibrary Library, IReadOnlyList<Finding> Findings) Read(string parts)
    {
        var findings = new FindingList();
        var library = PartLibraryReader.Read(new MemoryJobFiles().With("_shared/parts/p.yaml", "parts:\n" + parts + "\n"), findings);
        return (library, findings.Sorted);
    }
}
