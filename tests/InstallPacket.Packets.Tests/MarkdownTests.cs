using CsCheck;

namespace InstallPacket.Packets.Tests;

public class MarkdownTests
{
    [Theory]
    [InlineData("https://example.org/a?b=c:d", true)]
    [InlineData("mailto:a@example.org", true)]
    [InlineData("#aim", true)]
    [InlineData("customer.html#top", true)]
    [InlineData("figures/aim.svg", true)]
    [InlineData("javascript:alert(1)", false)]
    [InlineData("JaVaScript:alert(1)", false)]
    [InlineData("java\tscript:alert(1)", false)]
    [InlineData("javascript%3Aalert(1)", false)]
    [InlineData("data:text/html,x", false)]
    [InlineData("file:///etc/passwd", false)]
    [InlineData("//example.org", false)]
    [InlineData("/etc/passwd", false)]
    [InlineData("../other/crew.html", false)]
    [InlineData("a/%2e%2e/b", false)]
    [InlineData("..\\b", false)]
    [InlineData("https:", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Only_harmless_targets_are_linked(string? target, bool allowed) => Assert.Equal(allowed, LinkTarget.IsAllowed(target));

    [Fact]
    public void Any_text_is_written_in_both_forms_or_refused_with_a_reason() =>
        Gen.String[Gen.Char["#-*_`[]()!<>|:\\ \n1.ax>+~&;{}="], 0, 60].Sample(text =>
        {
            var document = Sample.Document() with { Markdown = text };
            try
            {
                var html = HtmlDocumentWriter.Write(document, Sample.Theme);
                Assert.StartsWith("%PDF", System.Text.Encoding.ASCII.GetString(PdfDocumentWriter.Write(document, Sample.Theme, PageFormat.A4), 0, 4), StringComparison.Ordinal);
                Assert.EndsWith("</html>\n", html, StringComparison.Ordinal);
            }
            catch (Exception e) when (e is DocumentException or MissingGlyphException)
            {
                Assert.StartsWith("document 'crew'", e.Message, StringComparison.Ordinal);
            }
        }, iter: 400, threads: 2);
}
