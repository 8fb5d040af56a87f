using System.Text;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Tests;

/// <summary>Loading, laying over and speaking the words of a language.</summary>
public class WordsTests
{
    [Fact]
    public void Every_text_of_every_language_can_be_parsed()
    {
        Assert.Equal(["en-GB", "en-US"], Sample.Theme.Languages);
        foreach (var language in Sample.Theme.Languages) Sample.Theme.Words(language).Check();
    }

    [Fact]
    public void A_language_says_what_differs_and_takes_the_rest_from_the_one_it_is_based_on()
    {
        var (us, gb) = (Sample.Theme.Words("en-US"), Sample.Theme.Words("en-GB"));
        Assert.Equal(us.Ids, gb.Ids);
        Assert.Equal("Your television antenna", us.Plain("pages.customer.title"));
        Assert.Equal("Your television aerial", gb.Plain("pages.customer.title"));
        Assert.Equal(us.Plain("pages.crew.chain"), gb.Plain("pages.crew.chain"));
    }

    [Fact]
    public void A_firm_replaces_single_texts_and_adds_its_own()
    {
        var words = With("own/words/en-US.yaml", "pages:\n  crew:\n    chain: What feeds what\nown:\n  hello: Good day\n").Words("en-US");
        Assert.Equal("What feeds what", words.Plain("pages.crew.chain"));
        Assert.Equal("Good day", words.Plain("own.hello"));
        Assert.Equal("Steps", words.Plain("pages.crew.steps"));
    }

    [Theory]
    [InlineData("pages:\n  crew:\n    chian: x\n", "own/words/en-US.yaml(3,12): there is no text 'pages.crew.chian' to replace; the nearest is 'pages.crew.chain'; new texts go below 'own'")]
    [InlineData("pages:\n\tcrew: x\n", "own/words/en-US.yaml(2,1): tab-indent; `installpacket explain tab-indent` says what to do")]
    [InlineData("numbers:\n  decimal: \"{{ x }}\"\n", "own/words/en-US.yaml(2,12): 'numbers.decimal' must not name a value")]
    public void A_mistake_in_an_override_names_file_line_and_column(string yaml, string message) =>
        Assert.Equal(message, Assert.Throws<WordsException>(() => With("own/words/en-US.yaml", yaml).Words("en-US")).Message);

    [Theory]
    [InlineData("own:\n  x: \"{{ bogus }}\"\n", "own/words/en-US.yaml(2,6): 'own.x': ")]
    [InlineData("own:\n  x: \"{{ 1 | bogus }}\"\n", "own/words/en-US.yaml(2,6): 'own.x': ")]
    [InlineData("own:\n  x: \"{% bogus %}\"\n", "own/words/en-US.yaml(2,6): 'own.x': ")]
    public void A_text_that_names_an_unknown_value_filter_or_tag_says_where_it_stands(string yaml, string start) =>
        Assert.StartsWith(start, Assert.Throws<WordsException>(() => In(With("own/words/en-US.yaml", yaml)).Say("own.x")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_text_that_is_not_there_is_an_error_with_the_nearest_id()
    {
        var error = Assert.Throws<WordsException>(() => In(Sample.Theme).Say("stamps.stoped"));
        Assert.Equal("the language en-US has no text 'stamps.stoped'; the nearest is 'stamps.stopped'", error.Message);
        var theme = With("templates/t.md.liquid", "x\n{% say 'stamps.stoped' %}");
        var placed = Assert.Throws<TemplateException>(() => new TemplateRenderer(theme, In(theme)).Render("t", []));
        Assert.StartsWith("templates/t.md.liquid:2: the language en-US has no text", placed.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_language_names_those_that_are_there() =>
        Assert.Equal("the theme has no words for the language 'xx'; it has en-GB, en-US", Assert.Throws<DocumentException>(() => Sample.Theme.Words("xx")).Message);

    [Fact]
    public void Languages_based_on_one_another_are_refused()
    {
        var theme = With("words/a.yaml", "based-on: b\n", ("words/b.yaml", "based-on: a\n"));
        Assert.Contains("in a ring", Assert.Throws<DocumentException>(() => theme.Words("a")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_take_the_signs_and_unit_words_of_the_language()
    {
        var theme = With("words/zz.yaml", "based-on: en-US\nnumbers: { decimal: \",\", minus: \"-\" }\nunits: { m: metros, ft: pies }\ncompass: { letters: { west: O } }\n");
        var metric = new JobWords(theme.Words("zz"), false, LevelUnit.DBuV).Print;
        Assert.Equal("4,25\u00A0metros", metric.Length(4.25));
        Assert.Equal("-3,0\u00A0dB", metric.Margin(-3));
        Assert.Equal("99,05000° O", metric.Coordinate(-99.05, latitude: false));
        Assert.Equal("14\u00A0pies\u00A06\u00A0in", new JobWords(theme.Words("zz"), true, LevelUnit.DBuV).Print.Length(4.42));
    }

    [Fact]
    public void A_date_follows_the_language()
    {
        Assert.Equal("Friday, June 12, 2026", Day("en-US"));
        Assert.Equal("Friday 12 June 2026", Day("en-GB"));

        static string Day(string language)
        {
            var theme = With("templates/t.md.liquid", "{{ '2026-06-12' | day }}");
            return new TemplateRenderer(theme, new JobWords(theme.Words(language), false, LevelUnit.DBuV)).Render("t", []);
        }
    }

    private static JobWords In(Theme theme) => new(theme.Words("en-US"), false, LevelUnit.DBuV);

    private static Theme With(string path, string text, params (string Path, string Text)[] more)
    {
        var files = new Dictionary<string, byte[]>(Sample.Theme.Files) { [path] = Encoding.UTF8.GetBytes(text) };
        foreach (var (morePath, moreText) in more) files[morePath] = Encoding.UTF8.GetBytes(moreText);
        return new Theme(files);
    }
}
