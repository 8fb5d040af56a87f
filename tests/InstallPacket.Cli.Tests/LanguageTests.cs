using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using InstallPacket.Packets.Language;
using InstallPacket.Packets.Themes;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>A packet in a made-up language, and a document that a theme folder adds alone.</summary>
public partial class LanguageTests
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Words of the plan itself, of findings and formulas among them, are no words of the theme.
    [Fact]
    public void No_text_of_the_words_file_stays_English_in_pages_and_figures()
    {
        using var shop = Workshop.WithDemoJobs();
        var english = Theme.FromFolder(Path.Combine(DemoJobs.Checkout, "theme")).Words("en-US");
        shop.Write("theme/words/zz.yaml", MadeUp(english));
        foreach (var job in Directory.GetDirectories(Path.Combine(shop.Jobs)).Where(d => !Path.GetFileName(d).StartsWith('_')))
        {
            var file = Path.Combine(job, "job.yaml");
            File.WriteAllText(file, LanguageLine().Replace(File.ReadAllText(file), "") + "\nlanguage: zz\n");
        }
        var run = shop.Build("--theme", Path.Combine(shop.Root, "theme"));
        Assert.Equal(0, run.Code);
        var vocabulary = english.Ids.Where(Spoken).SelectMany(id => WordsOf(Literal(english.Written(id)))).ToHashSet(StringComparer.Ordinal);
        var left = Directory.GetDirectories(shop.Out).Where(d => File.Exists(Path.Combine(d, "plan.json"))).SelectMany(folder => Left(folder, vocabulary)).Distinct().Order(StringComparer.Ordinal).ToArray();
        Assert.Equal("", string.Join("\n", left));
    }

    [Fact]
    public void A_theme_folder_alone_adds_a_document_with_its_own_words()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("theme/documents.yaml", "quotation: { title: own.quotation.title, reader: own.quotation.reader, template: quotation, formats: [html, pdf, md] }\n");
        shop.Write("theme/words/en-US.yaml", "own:\n  quotation: { title: Quotation, reader: What it costs, text: \"{{ job.customer.name }}: {{ materials.items.size }} parts\" }\n");
        shop.Write("theme/templates/quotation.md.liquid", "# {% say 'own.quotation.title' %}\n\n{% say 'own.quotation.text' %}\n");
        Assert.Equal(0, shop.Build("--theme", Path.Combine(shop.Root, "theme"), "alder-lane").Code);
        Assert.Matches(@"^# Quotation\n\n.+: \d+ parts\n$", shop.Read("out/alder-lane/quotation.md"));
        Assert.True(File.Exists(Path.Combine(shop.Out, "alder-lane", "quotation.pdf")));
        Assert.Contains("<a href=\"quotation.html\">What it costs</a>", shop.Read("out/alder-lane/index.html"), StringComparison.Ordinal);
    }

    // Every text with accents and a third longer; what Liquid, links and code hold stays.
    private static string MadeUp(Words english)
    {
        var file = new StringBuilder("based-on: en-US\n");
        foreach (var id in english.Ids)
        {
            var text = id == "numbers.decimal" ? "," : Spoken(id) ? Protected().Replace(english.Written(id), m => m.Groups["keep"].Success ? m.Value : Foreign(m.Value)) : english.Written(id);
            file.Append(JsonSerializer.Serialize(id, Readable)).Append(": ").Append(JsonSerializer.Serialize(text, Readable)).Append('\n');
        }
        return file.ToString();
    }

    private static string Foreign(string text) => string.Concat(text.Select(c => c switch
    {
        'a' => "áa", 'e' => "éé", 'i' => "íi", 'o' => "óo", 'u' => "úu", 'y' => "ýy", 'A' => "Áa", 'E' => "Éé", 'I' => "Íi", 'O' => "Óo", 'U' => "Úu", _ => c.ToString(),
    }));

    private static bool Spoken(string id) => !id.StartsWith("numbers.", StringComparison.Ordinal) && !id.StartsWith("units.", StringComparison.Ordinal)
        && !id.StartsWith("tables.", StringComparison.Ordinal) && !id.StartsWith("values.point", StringComparison.Ordinal) && !id.StartsWith("values.level-unit", StringComparison.Ordinal)
        && !id.StartsWith("compass.letters", StringComparison.Ordinal);

    private static IEnumerable<string> Left(string folder, HashSet<string> vocabulary)
    {
        var plan = WordsOf(File.ReadAllText(Path.Combine(folder, "plan.json"))).Concat(WordsOf(Path.GetFileName(folder))).ToHashSet(StringComparer.Ordinal);
        string[] pages = [.. Directory.GetFiles(folder, "*.md"), .. Directory.GetFiles(Path.Combine(folder, "figures"), "*.svg")];
        return pages.SelectMany(page => WordsOf(Seen(page)).Where(w => vocabulary.Contains(w) && !plan.Contains(w)).Select(w => $"{Path.GetFileName(folder)}/{Path.GetFileName(page)}: {w}"));
    }

    // Targets of links, code and the marks of boxes are no words; of a drawing only what is read counts.
    private static string Seen(string page)
    {
        var text = File.ReadAllText(page);
        return page.EndsWith(".svg", StringComparison.Ordinal) ? Markup().Replace(Style().Replace(text, " "), " ") : Literal(Box().Replace(text, ""));
    }

    private static string Literal(string text) => Protected().Replace(text, m => m.Groups["keep"].Success ? " " : m.Value);

    private static IEnumerable<string> WordsOf(string text) => Word().Matches(text).Select(m => m.Value.ToLowerInvariant());

    [GeneratedRegex(@"(?<keep>\{\{.*?\}\}|\{%.*?%\}|\]\([^)]*\)|`[^`]*`)|[^{\]`]+|.", RegexOptions.Singleline)]
    private static partial Regex Protected();

    [GeneratedRegex(@"(?<![\p{L}\d])[A-Za-z]{4,}(?![\p{L}\d])")]
    private static partial Regex Word();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Markup();

    [GeneratedRegex("<style>.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("^:::.*$", RegexOptions.Multiline)]
    private static partial Regex Box();

    [GeneratedRegex(@"^language:.*$", RegexOptions.Multiline)]
    private static partial Regex LanguageLine();
}
