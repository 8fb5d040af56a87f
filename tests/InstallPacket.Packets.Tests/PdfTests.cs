using System.Text;
using InstallPacket.Drawings;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace InstallPacket.Packets.Tests;

public class PdfTests
{
    private const string Stamp = "Do not install: the mast stands too near the power line";

    private static readonly byte[] Bytes = PdfDocumentWriter.Write(Sample.Document(Stamp), Sample.Theme, PageFormat.Letter);

    [Fact]
    public void Words_follow_in_reading_order()
    {
        using var pdf = PdfDocument.Open(Bytes);
        var text = Flat(string.Concat(pdf.GetPages().Select(p => p.Text)));
        string[] order = ["Aimtheantennaat47°true", "STOP:Powerlinewithin3m", "Aimandplace", "Rooftilesarewet", "Fixthebracket", "Levelsattheoutlets", "Narrowtable", "Chapter4", "scan21-48"];
        var at = order.Select(w => text.LastIndexOf(w, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, at);
        Assert.Equal(at.Order(), at);
    }

    [Fact]
    public void Every_page_carries_stamp_footer_and_number()
    {
        using var pdf = PdfDocument.Open(Bytes);
        Assert.True(pdf.NumberOfPages > 3);
        foreach (var page in pdf.GetPages())
        {
            var text = Flat(page.Text);
            Assert.Contains(Flat(Stamp), text, StringComparison.Ordinal);
            Assert.Contains(Flat("Job mill-lane · revision 3"), text, StringComparison.Ordinal);
            Assert.Contains($"Page{page.Number}of{pdf.NumberOfPages}", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Nothing_is_printed_outside_the_margins_or_over_the_stamp()
    {
        using var pdf = PdfDocument.Open(Bytes);
        foreach (var page in pdf.GetPages())
        {
            var stamp = page.Letters.Where(l => Math.Abs(l.PointSize - 11.4) < 0.01 && l.StartBaseLine.Y > 690).Min(l => l.StartBaseLine.Y);
            foreach (var letter in page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)))
            {
                Assert.InRange(letter.StartBaseLine.X, PageFormat.Letter.Side - 0.1, page.Width - PageFormat.Letter.Side);
                Assert.InRange(letter.EndBaseLine.X, PageFormat.Letter.Side, page.Width - PageFormat.Letter.Side + 0.5);
                Assert.False(letter.StartBaseLine.Y < stamp && letter.StartBaseLine.Y > stamp - 14, $"'{letter.Value}' touches the stamp");
            }
        }
    }

    [Fact]
    public void Lines_do_not_overlap()
    {
        using var pdf = PdfDocument.Open(Bytes);
        foreach (var page in pdf.GetPages())
        {
            var lines = page.Letters.Where(l => l.PointSize > 8).Select(l => Math.Round(l.StartBaseLine.Y, 1)).Distinct().Order().ToList();
            // The figure places its labels freely; text lines are at least one size apart.
            if (page.Number > 1) Assert.All(lines.Zip(lines.Skip(1)), pair => Assert.True(pair.Second - pair.First > 2));
        }
    }

    [Fact]
    public void Links_and_bookmarks_lead_somewhere()
    {
        using var pdf = PdfDocument.Open(Bytes);
        var links = pdf.GetPages().SelectMany(p => p.GetHyperlinks()).Select(l => l.Uri).ToList();
        Assert.Contains("https://example.org/sheets/yagi", links);
        Assert.Contains("mailto:crew@example.org", links);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Installation: 12 Mill Lane", "Aim and place", "Steps", "Levels at the outlets"], bookmarks!.GetNodes().Select(n => n.Title).Take(4));
    }

    // Rows have no places there, and what leads nowhere must not look like a link.
    [Fact]
    public void A_link_to_a_row_keeps_its_words_alone()
    {
        static byte[] Written(string markdown) => PdfDocumentWriter.Write(Sample.Document() with { Markdown = markdown }, Sample.Theme, PageFormat.A4);
        Assert.Equal(Written("## Head\n\n12 m"), Written("## Head\n\n[](#a.c)[12 m](#a.b)"));
        Assert.NotEqual(Written("## Head\n\n12 m"), Written("## Head\n\n[12 m](#head)"));
    }

    [Fact]
    public void The_structure_tells_language_heads_lists_tables_and_figures()
    {
        using var pdf = PdfDocument.Open(Bytes);
        var tree = new PdfStructure(pdf);
        Assert.Equal("en-US", tree.Language);
        Assert.Equal("Installation: 12 Mill Lane", pdf.Information.Title);
        foreach (var tag in new[] { "Document", "H1", "H2", "H3", "P", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD", "Figure", "Caption", "Link", "Sect", "BlockQuote", "Code" })
            Assert.Contains(tag, tree.Tags);
        Assert.Equal(Sample.Aim.Description, tree.Text(Assert.Single(tree.Of("Figure")), "Alt"));
        Assert.Equal(8, tree.Of("TH").Count());
        Assert.All(tree.Of("TH"), th => Assert.Equal("Column", tree.Text(tree.Dictionary(th, "A")!, "Scope")));
        Assert.Equal(2, tree.Of("Table").Count());
        Assert.Equal(1 + 40 + 1 + 2, tree.Of("TR").Count());
    }

    [Fact]
    public void The_head_of_a_table_stands_on_each_of_its_pages()
    {
        using var pdf = PdfDocument.Open(Bytes);
        var pages = pdf.GetPages().Where(p => Flat(p.Text).Contains("room", StringComparison.Ordinal)).ToList();
        Assert.True(pages.Count >= 2);
        Assert.All(pages, p => Assert.Contains("Outlet", p.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void No_heading_stands_last_on_a_page()
    {
        using var pdf = PdfDocument.Open(Bytes);
        foreach (var page in pdf.GetPages())
        {
            var last = page.Letters.Where(l => l.StartBaseLine.Y > 55 && !string.IsNullOrWhiteSpace(l.Value)).MinBy(l => l.StartBaseLine.Y)!;
            Assert.True(last.PointSize < 11, $"page {page.Number} ends with a heading");
        }
    }

    [Fact]
    public void Words_that_announce_a_table_stay_with_it()
    {
        // However many lines stand before it, some count would leave the announcing line last on its page.
        for (var lines = 30; lines < 60; lines++)
        {
            var markdown = string.Concat(Enumerable.Repeat("line\n\n", lines)) + "The levels are:\n\n| Outlet | Level |\n|---|---|\n| O1 | 60 |\n";
            using var pdf = PdfDocument.Open(PdfDocumentWriter.Write(Sample.Document() with { Markdown = markdown }, Sample.Theme, PageFormat.Letter));
            var page = pdf.GetPages().Single(p => Flat(p.Text).Contains("Thelevelsare:", StringComparison.Ordinal));
            Assert.Contains("Outlet", Flat(page.Text), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Equal_documents_give_equal_bytes_also_in_parallel()
    {
        Parallel.For(0, 12, new ParallelOptions { MaxDegreeOfParallelism = 4 }, _ =>
            Assert.Equal(Bytes, PdfDocumentWriter.Write(Sample.Document(Stamp), Sample.Theme, PageFormat.Letter)));
        Assert.DoesNotContain("CreationDate", Encoding.Latin1.GetString(Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_with_words_of_the_file_format_does_no_harm()
    {
        var odd = Sample.Document() with { Title = "endobj stream\nendstream endobj )(\\ /M(D:1) xref", Markdown = "x" };
        using var pdf = PdfDocument.Open(PdfDocumentWriter.Write(odd, Sample.Theme, PageFormat.A4));
        Assert.Contains("endstream endobj", pdf.Information.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_sign_names_character_and_document()
    {
        var error = Assert.Throws<MissingGlyphException>(() =>
            PdfDocumentWriter.Write(Sample.Document() with { Markdown = "angle ∠" }, Sample.Theme, PageFormat.A4));
        Assert.StartsWith("document 'crew': the font 'fonts/SourceSans3-Regular.ttf' has no glyph for '∠' (U+2220)", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_taller_than_a_page_goes_on_over_the_page()
    {
        var words = string.Join(' ', Enumerable.Range(1, 3000).Select(i => "w" + i));
        using var pdf = PdfDocument.Open(PdfDocumentWriter.Write(
            Sample.Document(Stamp) with { Markdown = $"| a | b |\n|---|---|\n| x | {words} |\n" }, Sample.Theme, PageFormat.A4));
        Assert.True(pdf.NumberOfPages > 1);
        Assert.Contains("w3000", string.Concat(pdf.GetPages().Select(p => p.Text)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("::: caution\n", "\n:::")]
    [InlineData("- ", "")]
    public void A_paragraph_longer_than_a_page_stays_one_paragraph(string before, string after)
    {
        var words = string.Join(' ', Enumerable.Range(1, 2500).Select(i => "w" + i));
        using var pdf = PdfDocument.Open(PdfDocumentWriter.Write(
            Sample.Document() with { Markdown = $"# T\n\n{before}{words}{after}\n" }, Sample.Theme, PageFormat.A4));
        Assert.True(pdf.NumberOfPages > 2);
        Assert.Equal(before.StartsWith(':') ? 2 : 1, new PdfStructure(pdf).Tags.Count(t => t == "P"));
        Assert.Contains("w2500", string.Concat(pdf.GetPages().Select(p => p.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_document_is_a_page_with_its_title()
    {
        using var pdf = PdfDocument.Open(PdfDocumentWriter.Write(Sample.Document() with { Markdown = "" }, Sample.Theme, PageFormat.A4));
        Assert.Contains("12", Assert.Single(pdf.GetPages()).Text, StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
