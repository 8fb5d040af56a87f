using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using InstallPacket.Packets.Language;
using InstallPacket.Packets.Themes;
using InstallPacket.Tests;
using UglyToad.PdfPig;

namespace InstallPacket.Cli.Tests;

/// <summary>A packet in a made-up language, and a document that a theme folder adds alone.</summary>
public partial class LanguageTests
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [Fact]
    public void No_text_of_the_words_file_stays_English_in_pages_figures_and_tables()
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
        Assert.True(run.Code == 0, run.Errors + run.Output);
        var vocabulary = english.Ids.Where(Spoken).Select(english.Written).Concat(Formulas().SelectMany(f => f.Texts)).SelectMany(t => WordsOf(Literal(t))).ToHashSet(StringComparer.Ordinal);
        string[] unsaid = [.. english.Ids.Where(id => !Spoken(id)).Select(english.Written)];
        var left = Directory.GetDirectories(shop.Out).Where(d => File.Exists(Path.Combine(d, "plan.json"))).SelectMany(folder => Left(folder, shop.Jobs, vocabulary, unsaid)).Distinct().Order(StringComparer.Ordinal).ToArray();
        Assert.True(left.Length == 0, string.Join("\n", left));
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
        foreach (var (id, _, texts) in Formulas())
        {
            file.Append(CultureInfo.InvariantCulture, $"formulas.{id}.title: {JsonSerializer.Serialize(Foreign(texts[0]), Readable)}\n");
            file.Append(CultureInfo.InvariantCulture, $"formulas.{id}.place: {JsonSerializer.Serialize(Foreign(texts[1]), Readable)}\n");
            file.Append(CultureInfo.InvariantCulture, $"formulas.{id}.result: {JsonSerializer.Serialize(Foreign(texts[2]), Readable)}\n");
            for (var i = 3; i < texts.Length; i++) file.Append(CultureInfo.InvariantCulture, $"formulas.{id}.inputs.{i - 2}: {JsonSerializer.Serialize(Foreign(texts[i]), Readable)}\n");
        }
        return file.ToString();
    }

    // Title, place, meaning of the result and of each input of every formula that a planner may apply.
    private static IEnumerable<(string Id, string[] Signs, string[] Texts)> Formulas() =>
        new[] { typeof(Calc.Sources.Formula).Assembly, typeof(PlanFormulas).Assembly }.SelectMany(a => a.GetTypes()).Where(t => !t.ContainsGenericParameters)
            .SelectMany(t => t.GetFields(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic))
            .Where(f => typeof(Calc.Sources.Formula).IsAssignableFrom(f.FieldType)).Select(f => (Calc.Sources.Formula)f.GetValue(null)!).DistinctBy(f => f.Id)
            .Select(f => (f.Id, (string[])[f.Equation, .. f.Inputs.Append(f.Result).SelectMany(i => new[] { i.Sign, i.Unit })], (string[])[f.Title, f.Place, f.Result.Meaning, .. f.Inputs.Select(i => i.Meaning)]));

    private static string Foreign(string text) => string.Concat(text.Select(c => c switch
    {
        'a' => "áa", 'e' => "éé", 'i' => "íi", 'o' => "óo", 'u' => "úu", 'y' => "ýy", 'A' => "Áa", 'E' => "Éé", 'I' => "Íi", 'O' => "Óo", 'U' => "Úu", _ => c.ToString(),
    }));

    private static bool Spoken(string id) => !id.StartsWith("numbers.", StringComparison.Ordinal) && !id.StartsWith("units.", StringComparison.Ordinal)
        && !id.StartsWith("values.point", StringComparison.Ordinal) && !id.StartsWith("values.level-unit", StringComparison.Ordinal)
        && !id.StartsWith("compass.letters", StringComparison.Ordinal);

    private static IEnumerable<string> Left(string folder, string jobs, HashSet<string> vocabulary, IEnumerable<string> unsaid)
    {
        var names = Names(folder, jobs, unsaid);
        string[] pages = [.. new[] { "*.md", "*.html", "*.csv" }.SelectMany(files => Directory.GetFiles(folder, files)), Path.Combine(folder, "crew.pdf"),
            .. Directory.GetFiles(Path.Combine(folder, "figures"), "*.svg")];
        return pages.SelectMany(page => WordsOf(Seen(page)).Where(w => vocabulary.Contains(w) && !names.Contains(w)).Select(w => $"{Path.GetFileName(folder)}/{Path.GetFileName(page)}: {w}"));
    }

    // Keys are the program's words, not the author's: that a job has a key is no leave to print its English.
    private static readonly HashSet<string> Keys = KeyCatalogue.AllKeys().SelectMany(k => k.Path.Split('.')).ToHashSet(StringComparer.Ordinal);

    // What the author wrote, ids of the plan, and titles of sources are said as they are.
    private static HashSet<string> Names(string folder, string jobs, IEnumerable<string> unsaid)
    {
        string[] files = [.. Directory.GetFiles(Path.Combine(jobs, Path.GetFileName(folder)), "*", SearchOption.AllDirectories),
            .. new[] { "parts", "firms", "kits" }.SelectMany(f => Directory.GetFiles(Path.Combine(jobs, "_shared", f))), .. Directory.GetFiles(Path.Combine(jobs, "_shared", "stations"))];
        var written = files.Where(f => Path.GetExtension(f) is ".yaml" or ".csv").SelectMany(File.ReadAllLines)
            .Select(line => JobKey().Replace(Remark().Replace(line, ""), m => Keys.Contains(m.Groups[1].Value) ? " " : m.Value));
        var sources = Calc.Sources.SourceRegister.All.SelectMany(x => new[] { x.Id, x.Title, x.Publisher, x.Edition });
        var rules = Plans.Codes.CodeFamilies.BuiltIn.All.SelectMany(f => f.Rules.SelectMany(r => new[] { r.Document, r.Edition }).Concat(f.Bonding.SelectMany(r => new[] { r.Document, r.Edition })));
        var tiles = JsonNode.Parse(File.ReadAllText(Path.Combine(folder, "plan.json")))!["siting"]!["ground"]?["tiles"]?.ToJsonString() ?? "";
        var signs = Formulas().SelectMany(f => f.Signs);
        return written.Concat(sources).Concat(rules).Concat(signs).Concat(unsaid).Append(tiles).Append("job.yaml").Append(Path.GetFileName(folder)).SelectMany(WordsOf).ToHashSet(StringComparer.Ordinal);
    }

    // Targets of links, code and the marks of boxes are no words; of a drawing and a page only what is read or read out counts.
    private static string Seen(string page) => Path.GetExtension(page) switch
    {
        ".pdf" => Printed(page),
        ".csv" => File.ReadAllText(page).Replace('_', ' '),
        ".svg" => Markup().Replace(Style().Replace(File.ReadAllText(page), " "), " "),
        ".html" => ReadOut(Style().Replace(Code().Replace(File.ReadAllText(page), " "), " ")),
        _ => Literal(Box().Replace(File.ReadAllText(page), "").Replace("\\`", "'", StringComparison.Ordinal)),
    };

    private static string ReadOut(string html) => WebUtility.HtmlDecode(string.Join(' ', Attribute().Matches(html).Select(m => m.Groups[1].Value).Prepend(Markup().Replace(html, " "))));

    // Code is not told apart from text in a PDF: what the page of text has in backticks is left out.
    private static string Printed(string path)
    {
        using var pdf = PdfDocument.Open(path);
        var code = Backticks().Matches(File.ReadAllText(Path.ChangeExtension(path, ".md"))).SelectMany(m => WordsOf(m.Value)).ToHashSet(StringComparer.Ordinal);
        var words = pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text).Where(w => !WordsOf(w).All(code.Contains));
        return string.Join(' ', words.Append(pdf.Information.Title));
    }

    private static string Literal(string text) => Protected().Replace(text, m => m.Groups["keep"].Success ? " " : m.Value);

    private static IEnumerable<string> WordsOf(string text) => Word().Matches(text).Select(m => m.Value.ToLowerInvariant());

    [GeneratedRegex(@"(?<keep>\{\{.*?\}\}|\{%.*?%\}|\]\([^)]*\)|`[^`]*`)|[^{\]`]+|.", RegexOptions.Singleline)]
    private static partial Regex Protected();

    [GeneratedRegex(@"(?<![\p{L}\d])[A-Za-z]{4,}(?![\p{L}\d])")]
    private static partial Regex Word();

    [GeneratedRegex(@"(^|\s)#.*$")]
    private static partial Regex Remark();

    [GeneratedRegex(@"(?<![\w-])([a-z][\w-]*):(?=\s|$)")]
    private static partial Regex JobKey();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Markup();

    [GeneratedRegex("<code[^>]*>.*?</code>", RegexOptions.Singleline)]
    private static partial Regex Code();

    [GeneratedRegex("(?:alt|title|aria-label)=\"([^\"]*)\"")]
    private static partial Regex Attribute();

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex Backticks();

    [GeneratedRegex("<(style|script)[^>]*>.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("^:::.*$", RegexOptions.Multiline)]
    private static partial Regex Box();

    [GeneratedRegex(@"^language:.*$", RegexOptions.Multiline)]
    private static partial Regex LanguageLine();
}
