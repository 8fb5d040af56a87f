namespace InstallPacket.Packets.Tests;

public class HtmlTests
{
    [Theory]
    [InlineData("<!doctype html>\n<html lang=\"en-US\">")]
    [InlineData("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")]
    [InlineData("<title>Installation: 12 Mill Lane</title>")]
    [InlineData("<a class=\"skip\" href=\"#content\">")]
    [InlineData("<nav aria-label=\"Contents\">")]
    [InlineData("<li><a href=\"#aim-and-place\">Aim and place</a></li>")]
    [InlineData("<main id=\"content\"")]
    [InlineData("<h2 id=\"levels-at-the-outlets\">Levels at the outlets</h2>")]
    [InlineData("<div class=\"table\" role=\"region\" tabindex=\"0\" aria-label=\"Table 1: Levels at the outlets\">")]
    [InlineData("<th scope=\"col\" class=\"num\">Level (dBm)</th>")]
    [InlineData("<td class=\"num\">−51.1</td>")]
    [InlineData("<label class=\"task\"><input type=\"checkbox\" checked><span>Put up the ladder 1 : 4 and tie it</span></label>")]
    [InlineData("<figcaption>Aim of the antenna</figcaption>")]
    [InlineData("<title id=\"aim-title\">Aim of the antenna</title>")]
    [InlineData("<section class=\"notice stop\" aria-label=\"STOP: Power line within 3 m\">")]
    [InlineData("<aside class=\"notice caution\" aria-label=\"Caution\">\n<p class=\"notice-label\"><strong>Caution</strong></p>")]
    [InlineData("<p>Job mill-lane · revision 3 · 2025-03-14</p>")]
    public void The_page_is_built_of_landmarks_and_labelled_parts(string part) =>
        Assert.Contains(part, Write(Sample.Document()), StringComparison.Ordinal);

    [Fact]
    public void The_page_asks_for_nothing_outside_its_folder()
    {
        var page = Write(Sample.Document());
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(\"http", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" src=", page, StringComparison.OrdinalIgnoreCase);
        foreach (var font in Sample.Theme.WebFonts.Keys.Where(k => k.EndsWith(".woff2", StringComparison.Ordinal)))
            Assert.Contains($"url(\"{font}\")", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stamp_stands_above_everything_else()
    {
        var page = Write(Sample.Document("Do not <install>"));
        Assert.Contains("<p class=\"stamp\"><strong>Do not &lt;install&gt;</strong></p>", page, StringComparison.Ordinal);
        Assert.Contains("<body class=\"stamped\">", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<p class=\"stamp\">", Write(Sample.Document()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;")]
    [InlineData("a <b onclick=x>b</b>", "a &lt;b onclick=x&gt;b&lt;/b&gt;")]
    [InlineData("[x](javascript:alert(1))", "<p>x</p>")]
    [InlineData("<javascript:alert(1)>", "<p>javascript:alert(1)</p>")]
    [InlineData("[a **b**](../../x.html) c", "<p>a <strong>b</strong> c</p>")]
    [InlineData("Owner: Bob {onclick=\"alert(1)\"}", "<p>Owner: Bob {onclick=&quot;alert(1)&quot;}</p>")]
    [InlineData("# Bob {onclick=\"alert(1)\"}", "Bob {onclick=&quot;alert(1)&quot;}</h1>")]
    [InlineData("[x](https://example.org/\"onmouseover=\"a)", "href=\"https://example.org/&quot;onmouseover=&quot;a\"")]
    [InlineData("[x]: javascript:alert(1)\n\n[x]", "<p>x</p>")]
    [InlineData("[](#a.b)x", "<p><span id=\"a.b\"></span>x</p>")]
    [InlineData("[](#a\"b)x", "<p><span id=\"a&quot;b\"></span>x</p>")]
    [InlineData("`<i>` ::x::", "<p><code>&lt;i&gt;</code> ::x::</p>")]
    public void Hostile_text_stays_text(string markdown, string expected) =>
        Assert.Contains(expected, Write(Sample.Document() with { Markdown = markdown }), StringComparison.Ordinal);

    [Theory]
    [InlineData("![x](figures/absent.svg)", "document 'crew' has no figure 'absent'")]
    [InlineData("![x](https://example.org/x.png)", "an image must stand alone in its paragraph and name figures/ID.svg, not 'https://example.org/x.png'")]
    [InlineData("see ![x](figures/aim.svg)", "an image must stand alone")]
    [InlineData("::: danger\nx\n:::", "there is no box '::: danger'")]
    public void What_a_packet_cannot_hold_is_refused_by_name(string markdown, string message)
    {
        var document = Sample.Document() with { Markdown = markdown };
        Assert.Contains(message, Assert.Throws<DocumentException>(() => Write(document)).Message, StringComparison.Ordinal);
        Assert.Contains(message, Assert.Throws<DocumentException>(() => PdfDocumentWriter.Write(document, Sample.Theme, PageFormat.A4)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_without_a_heading_shows_the_title() =>
        Assert.Contains("<h1>Installation: 12 Mill Lane</h1>", Write(Sample.Document() with { Markdown = "words" }), StringComparison.Ordinal);

    private static string Write(PacketDocument document) => HtmlDocumentWriter.Write(document, Sample.Theme);
}
