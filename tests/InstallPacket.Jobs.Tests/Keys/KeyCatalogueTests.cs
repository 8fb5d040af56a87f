using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Tests.Keys;

public class KeyCatalogueTests
{
    private static readonly IReadOnlyList<(string Path, Key Key)> All = [.. KeyCatalogue.AllKeys(), .. PartCatalogue.Part.Keys.Select(k => ("parts.NAME." + k.Name, k))];

    public static TheoryData<string> Paths => [.. All.Select(k => k.Path)];

    [Fact]
    public void No_two_keys_have_the_same_path() => Assert.Equal(All.Count, All.Select(k => k.Path).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void The_walk_reaches_the_keys_of_named_things_and_of_lists()
    {
        Assert.Contains(All, k => k.Path == "cabling.chain.NAME.part");
        Assert.Contains(All, k => k.Path == "mounting.fixings.count");
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Every_key_is_documented_in_a_sentence(string path)
    {
        var key = KeyOf(path);
        Assert.True(key.Meaning.Length is > 3 and < 200 && char.IsUpper(key.Meaning[0]), key.Meaning);
        Assert.True(key.Meaning[^1] is '.', key.Meaning);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", key.Name);
        Assert.NotEmpty(ScalarChecker.Expectation(key.Kind));
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Defaults_read_without_a_finding_and_stand_at_keys_that_may_be_left_out(string path)
    {
        var key = KeyOf(path);
        if (key.Default is null) return;
        var findings = new FindingList();
        Assert.False(key.Required);
        Assert.NotNull(new ScalarChecker(findings).Read(new YamlScalar(new("job.yaml", 1, 1), key.Default, false), key.Kind, path));
        Assert.Empty(findings.Sorted);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Ranges_are_ranges_in_a_unit_that_measures_this(string path)
    {
        var (min, max) = KeyOf(path).Kind switch
        {
            QuantityKind q => (q.Min, q.Max),
            CurveKind c => (c.Min, c.Max),
            IntegerKind i => (i.Min, i.Max),
            NumberKind n => (n.Min, n.Max),
            _ => (0, 0.0),
        };
        Assert.True(min <= max);
        if (KeyOf(path).Kind is QuantityKind quantity) Assert.Contains(UnitTable.For(quantity.Dimension), u => u.Name == quantity.RangeUnit);
        if (KeyOf(path).Kind is CurveKind curve) Assert.Contains(UnitTable.For(curve.Dimension), u => u.Name == curve.RangeUnit);
    }

    [Fact]
    public void A_key_is_explained_by_its_path_with_NAME_or_with_a_real_name()
    {
        Assert.Contains("The part.", KeyReference.Of("cabling.chain.NAME.part"), StringComparison.Ordinal);
        Assert.Equal(KeyReference.Of("cabling.chain.NAME.part"), KeyReference.Of("cabling.chain.A1.part"));
        Assert.Contains("How many.", KeyReference.Of("mounting.fixings[2].count"), StringComparison.Ordinal);
        Assert.Null(KeyReference.Of("cabling.nothing"));
    }

    [Fact]
    public void A_path_that_a_finding_sends_the_author_to_is_explained() => Assert.NotNull(KeyReference.Of("routing.points.lounge"));

    [Fact]
    public void The_reference_page_names_every_key()
    {
        var page = KeyReference.Page("format: 1");
        Assert.All(All, k => Assert.Contains($"| `{k.Path}` |", page, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("gruond", "ground")]
    [InlineData("Ground", "ground")]
    [InlineData("antena-height", "antenna-height")]
    [InlineData("colour", null)]
    [InlineData("R9", null)]
    public void The_nearest_word_is_offered_only_when_it_is_near(string written, string? expected) =>
        Assert.Equal(expected, NearestWord.Of(written, ["ground", "antenna-height", "latitude", "R1"]));

    private static Key KeyOf(string path) => All.First(k => k.Path == path).Key;
}
