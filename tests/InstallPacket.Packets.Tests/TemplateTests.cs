using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using InstallPacket.Packets.Language;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Tests;

public class TemplateTests
{
    private static readonly JsonObject Model = JsonNode.Parse("""
        {"site":{"name":"12 Mill *Lane*","lat":52.5,"note":null,"wet":true},"runs":[{"id":"r1","length_m":4.25},{"id":"r2","length_m":3}],"big":1e3,"level":"-83 dBm","gain":"+3 dB","list":"1. first","heading":"# x"}
        """)!.AsObject();

    [Theory]
    [InlineData("{{ site.lat }} {{ big }} {% if site.wet %}wet{% endif %}{{ site.note }}", "52.5 1000 wet")]
    [InlineData("{% for run in runs %}{{ run.id }}={{ run.length_m }};{% endfor %}", "r1=4.25;r2=3;")]
    [InlineData("{{ runs.size }} {{ runs[1].id }}", "2 r2")]
    [InlineData("{{ site.name }}", @"12 Mill \*Lane\*")]
    [InlineData("{{ site.name | upcase }}", @"12 MILL \*LANE\*")]
    [InlineData("{{ site.name | md_raw }}", "12 Mill *Lane*")]
    [InlineData("{% capture c %}{{ site.name }}{% endcapture %}{{ c }}", @"12 Mill \*Lane\*")]
    [InlineData("{% if site.note == nil %}none{% endif %}", "none")]
    [InlineData("{% if nil == site.note %}none{% endif %}{% if site.note != nil %}some{% endif %}", "none")]
    [InlineData("{{ site.note | default: 'x' }}{% unless site.note %}y{% endunless %}{% if site.note == blank %}z{% endif %}", "xyz")]
    [InlineData("{% for run in site.note %}x{% endfor %}{% assign n = site.note %}{% if n %}x{% else %}y{% endif %}", "y")]
    [InlineData("{{ level }} {{ gain }} {{ list }} {{ heading }}", @"-83 dBm +3 dB 1\. first \# x")]
    public void Values_print_escaped_and_in_invariant_form(string template, string expected) =>
        Assert.Equal(expected, Render(template, Model));

    [Theory]
    [InlineData("a\n\n{{ site.nam }}", "templates/t.md.liquid:3: unknown value 'site.nam'; known here: lat, name, note, wet")]
    [InlineData("{% for run in runs %}\n{{ run.lenght_m }}{% endfor %}", "templates/t.md.liquid:2: unknown value 'runs[0].lenght_m'; known here: id, length_m")]
    [InlineData("\n{{ sight }}", "templates/t.md.liquid:2: unknown value 'sight'; known here: big, gain, heading, level, list, runs, site")]
    [InlineData("{{ site.name.bogus }}", "templates/t.md.liquid: a member is asked of a text, number, truth value or list that has none of that name")]
    [InlineData("{{ site.note.x }}", "templates/t.md.liquid:1: unknown value 'site.note.x'; the value before it is empty")]
    [InlineData("\n\n{% if site.nme %}x{% endif %}", "templates/t.md.liquid:3: unknown value 'site.nme'; known here: lat, name, note, wet")]
    public void An_unknown_value_is_told_with_file_line_and_path(string template, string message) =>
        Assert.Equal(message, Assert.Throws<TemplateException>(() => Render(template, Model)).Message);

    [Theory]
    [InlineData("\n{{ site.name | bogus }}", "bogus", 2)]
    [InlineData("{{ site.name | raw }}", "raw", 1)]
    [InlineData("x\n{% bogus %}", "bogus", 2)]
    public void An_unknown_filter_or_tag_is_told_with_file_and_line(string template, string word, int line)
    {
        var error = Assert.Throws<TemplateException>(() => Render(template, Model));
        Assert.Contains(word, error.Message, StringComparison.Ordinal);
        Assert.Equal(line, error.Line);
    }

    [Fact]
    public void A_part_is_found_in_the_theme_and_its_mistakes_carry_its_name()
    {
        var theme = With(("t", "{% for run in runs %}{% render 'part', run: run %}{% endfor %}"), ("part", "\n- {{ run.id }} {{ run.bogus }}"));
        var error = Assert.Throws<TemplateException>(() => new TemplateRenderer(theme).Render("t", Model));
        Assert.StartsWith("templates/part.md.liquid:2: unknown value 'runs[0].bogus'", error.Message, StringComparison.Ordinal);
        var good = With(("t", "{% render 'part', run: runs[0] %}"), ("part", "<{{ run.id }}>"));
        Assert.Equal("<r1>", new TemplateRenderer(good).Render("t", Model));
    }

    [Theory]
    [InlineData("{% render '../../secret' %}")]
    [InlineData("{% include '/etc/passwd' %}")]
    [InlineData("{% render 'absent' %}")]
    public void A_part_outside_the_theme_is_refused(string template) =>
        Assert.Throws<TemplateException>(() => Render(template, Model));

    [Theory]
    [InlineData("{% for i in (1..2100000) %}x{% endfor %}")]
    [InlineData("{% render 't' %}")]
    public void A_template_without_end_is_stopped(string template) =>
        Assert.Throws<TemplateException>(() => Render(template, Model));

    [Fact]
    public void A_template_prints_numbers_in_the_units_of_the_job()
    {
        var words = new JobWords(Sample.Theme.Words("en-US"), false, LevelUnit.DBuV);
        Assert.Equal("4.25\u00A0m", new TemplateRenderer(With(("t", "{{ runs[0].length_m | length }}")), words).Render("t", Model));
    }

    [Theory]
    [InlineData("{{ v }}")]
    [InlineData("- {{ v }}")]
    [InlineData("# {{ v }}")]
    [InlineData("| {{ v }} |\n|---|")]
    [InlineData("> {{ v }}")]
    [InlineData("::: note\n{{ v }}\n:::")]
    [InlineData("1. {{ v }}")]
    public void Any_text_comes_back_as_the_same_words_wherever_a_template_puts_it(string template)
    {
        var renderer = new TemplateRenderer(With(("t", template)));
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["#+-=:.)(12 *_`~|<>[]!&;\\{}$^\"'/ax\n\t@h"], 0, 12]).Sample(
            value => Folded(Told(MarkdownReader.Read(renderer.Render("t", new JsonObject { ["v"] = value })))) is var words && words == Folded(value)
                ? true : throw new InvalidOperationException($"'{Folded(value)}' came back as '{words}'"),
            iter: 3000, threads: 2);
    }

    private static string Told(MarkdownDocument tree)
    {
        var words = new StringBuilder();
        foreach (var inline in tree.Descendants<Inline>())
        {
            if (inline is LiteralInline literal) words.Append(literal.Content.AsSpan());
            else if (inline is LineBreakInline or (not ContainerInline and not LiteralInline) or EmphasisInline or LinkInline) words.Append($"[{inline.GetType().Name}]");
        }
        foreach (var block in tree.Descendants<Block>())
            if (block is FencedCodeBlock or CodeBlock or ThematicBreakBlock) words.Append($"[{block.GetType().Name}]");
        return words.ToString();
    }

    // Markdown itself drops NUL; the encoder folds it like every control character.
    private static string Folded(string text) =>
        string.Join(' ', string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c)).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static string Render(string template, JsonObject model) => new TemplateRenderer(With(("t", template))).Render("t", model);

    private static Theme With(params (string Name, string Text)[] templates)
    {
        var files = new Dictionary<string, byte[]>(Sample.Theme.Files);
        foreach (var (name, text) in templates) files[$"templates/{name}.md.liquid"] = Encoding.UTF8.GetBytes(text);
        return new Theme(files);
    }
}
