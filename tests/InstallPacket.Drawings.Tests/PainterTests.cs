using System.Buffers.Binary;
using System.Xml.Linq;
using CsCheck;

namespace InstallPacket.Drawings.Tests;

public class PainterTests
{
    private static readonly Drawing Small = new(
        "aim", "Aim <1>", "One line & \"two\" words.", 40, 20.5,
        [
            new Polyline([new(1, 2), new(3.14159, -0.001)], new Pen(Ink.Accent, 0.5, Dash.Dashed)),
            new Polyline([new(0, 0), new(1, 0), new(1, 1)], new Pen(Ink.Line), Closed: true, Fill.Tint),
            new Circle(new(5, 5), 2, new Pen(Ink.Warning, 0), Fill.Solid),
            new Caption(new(5, 6), "47° <true>", 3.5, Ink.Faint, Anchor.Middle, Strong: true, TurnDeg: -90),
        ]);

    [Fact]
    public void The_svg_of_a_page_is_written_to_the_letter() =>
        Assert.Equal("""
            <svg xmlns="http://www.w3.org/2000/svg" class="figure" role="img" aria-labelledby="aim-title aim-desc" viewBox="0 0 40 20.5">
            <title id="aim-title">Aim &lt;1&gt;</title>
            <desc id="aim-desc">One line &amp; &quot;two&quot; words.</desc>
            <polyline class="pen pen-accent dashed" stroke-width="0.5" points="1,2 3.14,0"/>
            <polygon class="pen pen-line tint-line" stroke-width="0.25" points="0,0 1,0 1,1"/>
            <circle class="pen solid-warning" cx="5" cy="5" r="2"/>
            <text class="solid-faint strong" x="5" y="6" font-size="3.5" text-anchor="middle" transform="rotate(-90 5 6)">47° &lt;true&gt;</text>
            </svg>

            """.ReplaceLineEndings("\n"), SvgPainter.Paint(Small));

    [Fact]
    public void The_svg_file_brings_its_own_colours_and_size()
    {
        var svg = XDocument.Parse(SvgPainter.PaintFile(Small)).Root!;
        Assert.Equal("40mm", svg.Attribute("width")!.Value);
        var style = svg.Elements().Single(e => e.Name.LocalName == "style").Value;
        Assert.Contains(".pen-accent{stroke:var(--ink-accent,#0b5563)}", style, StringComparison.Ordinal);
        Assert.Contains(".dashed{stroke-dasharray:2.4 1.2}", style, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_words_give_well_formed_svg() =>
        Gen.String[Gen.Char['\0', '\ud7ff'], 0, 30].Sample(words =>
        {
            var caption = new Caption(new(1, 1), words, 3);
            var svg = XDocument.Parse(SvgPainter.PaintFile(new Drawing("a", words, words, 10, 10, [caption])));
            Assert.Equal(words.Count(c => !char.IsControl(c)), svg.Root!.Elements().Last().Value.Count(c => c != ' ') + words.Count(c => c == ' '));
        });

    [Fact]
    public void The_picture_has_the_size_of_the_sheet_and_repeats_its_bytes()
    {
        var png = PngPainter.Paint(Small, Fonts.Set, 254);
        Assert.Equal(400u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(16)));
        Assert.Equal(205u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(20)));
        var empty = PngPainter.Paint(Small with { Shapes = [] }, Fonts.Set, 254);
        Assert.True(png.Length > 2 * empty.Length);
        Parallel.For(0, 8, _ => Assert.Equal(png, PngPainter.Paint(Small, Fonts.Set, 254)));
    }

    [Fact]
    public void The_picture_is_a_sound_file_of_its_pixels()
    {
        var (chunks, rows) = Read(PngPainter.Paint(Small, Fonts.Set, 254));
        Assert.Equal(0xCBF43926u, InstallPacket.Calc.Checksums.Crc32.Of("123456789"u8)); // the check value of the polynomial
        Assert.Equal(["IHDR", "PLTE", "IDAT", "IEND"], chunks.Keys);
        Assert.Equal([8, 3, 0, 0, 0], chunks["IHDR"][8..]);
        Assert.Equal(205 * (1 + 400), rows.Length);
        Assert.All(Enumerable.Range(0, 205), y => Assert.Equal(0, rows[y * 401]));
        byte[] Colour(int x, int y) => chunks["PLTE"][(3 * rows[y * 401 + 1 + x])..][..3];
        Assert.Equal([0x14, 0x19, 0x1C], Colour(0, 0)); // the corner lies on a line, in the ink of lines
        Assert.Contains(Enumerable.Range(0, 400), x => Colour(x, 100) is [255, 255, 255]);
    }

    [Fact]
    public void Colours_that_cover_most_stay_and_soft_edges_move_by_half_a_step_at_most()
    {
        // 40 greys of 100 pixels down to 61, then nothing but the 16 steps.
        byte[] Grey(int g) => [(byte)g, (byte)g, (byte)(g + 1), 0];
        byte[] pixels = [.. Enumerable.Range(0, 40).SelectMany(g => Enumerable.Repeat(Grey(5 * g), 100 - g)).SelectMany(p => p)];
        var width = pixels.Length / 4;
        var (chunks, rows) = Read(PngFile.Of(pixels, width, 1, pixels.Length));
        Assert.All(Enumerable.Range(0, width), x =>
        {
            var entry = chunks["PLTE"][(3 * rows[1 + x])..][..3];
            var most = pixels[4 * x] / 5 < 32 ? 0 : 8;
            Assert.All(Enumerable.Range(0, 3), c => Assert.InRange(entry[c] - pixels[4 * x + c], -most, most));
        });
    }

    [Fact]
    public void A_picture_with_more_colours_than_a_palette_holds_keeps_them_all()
    {
        byte[] pixels = [.. Enumerable.Range(0, 4096).SelectMany(i => new byte[] { (byte)(i % 16 * 17), (byte)(i / 16 % 16 * 17), (byte)(i / 256 * 17), 0 })];
        var (chunks, rows) = Read(PngFile.Of(pixels, 64, 64, 256));
        Assert.Equal([8, 2, 0, 0, 0], chunks["IHDR"][8..]);
        Assert.All(Enumerable.Range(0, 4096), i => Assert.True(rows.AsSpan(i / 64 * 193 + 1 + i % 64 * 3, 3).SequenceEqual(pixels.AsSpan(4 * i, 3))));
    }

    // The chunks of a file, each checked, and the unpacked rows.
    private static (Dictionary<string, byte[]> Chunks, byte[] Rows) Read(byte[] png)
    {
        var chunks = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            var named = png.AsSpan(at + 4, 4 + length);
            Assert.Equal(BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 8 + length)), InstallPacket.Calc.Checksums.Crc32.Of(named));
            chunks.Add(System.Text.Encoding.ASCII.GetString(named[..4]), named[4..].ToArray());
            at += 12 + length;
        }
        Assert.Equal([0xAE, 0x42, 0x60, 0x82], png[^4..]); // the known end of every PNG file
        using var rows = new MemoryStream();
        using (var zlib = new System.IO.Compression.ZLibStream(new MemoryStream(chunks["IDAT"]), System.IO.Compression.CompressionMode.Decompress)) zlib.CopyTo(rows);
        return (chunks, rows.ToArray());
    }

    [Fact]
    public void A_sheet_without_size_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PngPainter.Paint(Small with { WidthMm = 0 }, Fonts.Set, 100));

    [Fact]
    public void Inks_are_dark_enough_to_be_read_on_paper_and_on_their_tints()
    {
        foreach (var ink in Enum.GetValues<Ink>().Where(i => i != Ink.Paper))
        {
            Assert.True(Contrast(Palette.Rgb(ink), 0xFFFFFF) >= 4.5, $"{ink} on paper");
            Assert.True(Contrast(Palette.Rgb(ink), Palette.Tint(ink)) >= 4.5, $"{ink} on its tint");
        }
    }

    // Contrast ratio of WCAG 2.2.
    private static double Contrast(uint a, uint b)
    {
        double la = Luminance(a), lb = Luminance(b);
        return (Math.Max(la, lb) + 0.05) / (Math.Min(la, lb) + 0.05);
    }

    private static double Luminance(uint rgb) =>
        0.2126 * Linear(rgb >> 16) + 0.7152 * Linear(rgb >> 8) + 0.0722 * Linear(rgb);

    private static double Linear(uint channel)
    {
        var c = (channel & 0xFF) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
