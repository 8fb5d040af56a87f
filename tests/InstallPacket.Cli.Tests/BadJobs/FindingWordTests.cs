using System.Text.RegularExpressions;
using InstallPacket.Packets.Language;
using InstallPacket.Packets.Themes;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>Every finding is said by the words, with the values that it gives.</summary>
public partial class FindingWordTests
{
    private const string Section = "findings.";
    private static readonly Theme Theme = Theme.FromFolder(Repository.Path("theme"));
    private static readonly Words English = Theme.Words("en-US");

    // Every finding of the bad jobs, and of a regulator's list with every kind of fault.
    private static readonly IReadOnlyList<Finding> Given = [.. BadJobCase.Names.AsParallel().AsOrdered().SelectMany(n => new BadJobCase(n).Findings()), .. Dropped()];

    public static TheoryData<string> Ids => [.. FindingIds.InSource];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_finding_of_the_source_has_words(string id)
    {
        string[] texts = [.. English.Ids.Where(t => t.StartsWith($"{Section}{id}.", StringComparison.Ordinal)).Select(t => t[(Section.Length + id.Length + 1)..])];
        string[] cases = [.. texts.Where(t => t.Contains('.')).Select(t => t[..t.IndexOf('.')]).Distinct()];
        foreach (var part in new[] { "found", "remedy" })
            Assert.True(texts.Contains(part) || (cases.Length > 0 && cases.All(c => texts.Contains($"{c}.{part}"))), $"{id} has no text '{part}'");
        Assert.All(texts, t => Assert.Contains(t[(t.LastIndexOf('.') + 1)..], new[] { "found", "limit", "remedy" }));
    }

    [Fact]
    public void Every_text_belongs_to_a_finding_of_the_source_and_every_case_stands_there()
    {
        var source = string.Concat(Directory.GetFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories).Select(File.ReadAllText));
        foreach (var id in English.Ids.Where(t => t.StartsWith(Section, StringComparison.Ordinal)))
        {
            var parts = id.Split('.');
            Assert.Contains(parts[1], FindingIds.InSource);
            if (parts.Length == 4) Assert.Contains($"\"{parts[2]}\"", source, StringComparison.Ordinal);
        }
    }

    // A text is only rendered along one branch; this looks at all of them.
    [Fact]
    public void A_text_names_only_values_that_its_finding_gives()
    {
        var missing = from same in Given.GroupBy(f => (f.Id, f.Case))
                      let known = same.SelectMany(f => f.Values.Select(v => v.Name)).ToHashSet(StringComparer.Ordinal)
                      from part in new[] { "found", "limit", "remedy" }
                      let id = TextOf(same.Key.Id, same.Key.Case, part)
                      where id is not null
                      from name in Named(English.Written(id)).Where(n => !known.Contains(n))
                      select $"{id} names {name}; given are {string.Join(", ", known)}";
        Assert.Empty(missing.Distinct());
    }

    [Theory]
    [InlineData("en-US", true, LevelUnit.DBmV)]
    [InlineData("en-GB", false, LevelUnit.DBuV)]
    public void Every_finding_of_the_bad_jobs_is_spoken_with_all_its_values_filled(string language, bool usUnits, LevelUnit unit)
    {
        var words = new JobWords(Theme.Words(language), usUnits, unit);
        Assert.True(Given.Count > 250, $"only {Given.Count} findings");
        foreach (var finding in Given)
        {
            var text = FindingWords.Spoken(finding, words);
            Assert.NotEmpty(text.Found);
            Assert.NotEmpty(text.Remedy);
            Assert.All(new[] { text.Found, text.Limit, text.Remedy }, t => Assert.DoesNotMatch(Hole(), Ticked().Replace(t, "`x`")));
            // The meaning of a key is a sentence of the reference page.
            Assert.All(new[] { text.Found, finding.Case == "key" ? "" : text.Limit, text.Remedy }, t => Assert.False(t.EndsWith('.'), t));
        }
    }

    [Fact]
    public void A_firm_says_a_finding_in_its_own_words()
    {
        using var own = new Workshop();
        own.Write("words/en-US.yaml", "findings:\n  mast-near-limit:\n    remedy: \"call us about {{ free_m | length }}\"\n");
        var finding = new Finding(Severity.Caution, "mast-near-limit", "", default, new(
            ("moment_nm", 60.0), ("guyed", false), ("use_share", 0.9), ("allowable_nm", 66.0), ("material", "steel"), ("stronger", null), ("free_m", 2.0)));
        var text = FindingWords.Spoken(finding, new JobWords(Theme.FromFolder(Repository.Path("theme"), own.Root).Words("en-US"), false, LevelUnit.DBuV));
        Assert.Equal("call us about 2.00\u00A0m", text.Remedy);
        Assert.Equal(FindingWords.Spoken(finding, new JobWords(English, false, LevelUnit.DBuV)).Found, text.Found);
    }

    [Fact]
    public void A_text_of_a_finding_that_names_an_unknown_value_says_where_it_stands()
    {
        using var own = new Workshop();
        own.Write("words/en-US.yaml", "findings:\n  not-utf8:\n    found: \"{{ bogus }}\"\n");
        var words = new JobWords(Theme.FromFolder(Repository.Path("theme"), own.Root).Words("en-US"), false, LevelUnit.DBuV);
        var error = Assert.Throws<WordsException>(() => FindingWords.Spoken(new Finding(Severity.Stop, "not-utf8", "", default, new(("path", "a"))), words));
        Assert.StartsWith("own/words/en-US.yaml(3,12): 'findings.not-utf8.found': ", error.Message, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Finding> Dropped()
    {
        var findings = new FindingList();
        RegulatorList.Read(new JobFile("list.txt", FileState.Present, string.Concat(RegulatorRows.Faulty)), StationFilter.None, findings);
        return findings.Sorted;
    }

    private static string? TextOf(string id, string way, string part) => new[] { $"{Section}{id}.{way}.{part}", $"{Section}{id}.{part}" }.FirstOrDefault(English.Has);

    // The values that a text names, also by the texts that it says.
    private static IEnumerable<string> Named(string text) => Name().Matches(Quoted().Replace(text, "''")).SelectMany(m => Word().Matches(m.Value)).Select(m => m.Value)
        .Where(w => !Keywords.Contains(w))
        .Concat(Said().Matches(text).Where(m => m.Groups["id"].Value != "expected").SelectMany(m => Named(English.Written(m.Groups["id"].Value)).Where(n => n != "c"))).Distinct();

    private static readonly HashSet<string> Keywords = ["if", "elsif", "else", "endif", "unless", "endunless", "and", "or", "contains", "say", "c", "for", "in", "endfor", "forloop"];

    [GeneratedRegex(@"\{\{[^}]*\}\}|\{%[^%]*%\}")]
    private static partial Regex Name();

    [GeneratedRegex("'[^']*'")]
    private static partial Regex Quoted();

    // A name: not a filter, not a member, not the name of an argument.
    [GeneratedRegex(@"(?<![\w.-])(?<!\|\s*)[a-z_][a-z_0-9]*(?![\w-]*:)")]
    private static partial Regex Word();

    [GeneratedRegex("say '(?<id>[^']+)'")]
    private static partial Regex Said();

    // What an author wrote may hold blanks.
    [GeneratedRegex("`[^`]+`")]
    private static partial Regex Ticked();

    [GeneratedRegex(@"\{\{|\}\}|\{%|``|  | ,|\(\)|\( | \)|^\s|\s$|: $|; $")]
    private static partial Regex Hole();
}
