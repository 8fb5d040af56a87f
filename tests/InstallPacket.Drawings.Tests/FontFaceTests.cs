using CsCheck;

namespace InstallPacket.Drawings.Tests;

public class FontFaceTests
{
    [Fact]
    public void Every_digit_is_equally_wide()
    {
        foreach (var face in new[] { Fonts.Set.Regular, Fonts.Set.Strong, Fonts.Set.Mono })
            Assert.Single("0123456789".Select(c => face.Width([c])).Distinct());
    }

    [Theory]
    [InlineData("0", 0.497)]
    [InlineData(" ", 0.2)]
    [InlineData("", 0)]
    public void Widths_are_those_of_the_font_file(string text, double width) =>
        Assert.Equal(width, Fonts.Set.Regular.Width(text), 9);

    [Fact]
    public void The_signs_of_the_trade_are_there() =>
        Assert.Null(Fonts.Set.Regular.FirstMissing("°′″Ωµμφπ≤≥−–—×·±√²³½¼¾→←↑↓•…\u00a0\u202f€“”‘’äößéñł"));

    [Fact]
    public void The_width_of_a_text_is_the_sum_of_its_parts() =>
        Gen.Select(Gen.String[Gen.Char[' ', '~'], 0, 20], Gen.String[Gen.Char[' ', '~'], 0, 20])
            .Sample((a, b) => Math.Abs(Fonts.Set.Strong.Width(a + b) - Fonts.Set.Strong.Width(a) - Fonts.Set.Strong.Width(b)) < 1e-9);

    [Fact]
    public void Any_bytes_that_are_no_font_are_refused() =>
        Gen.Byte.Array[0, 400].Sample(bytes => Assert.Throws<InvalidDataException>(() => new FontFace("x.ttf", bytes)));

    [Fact]
    public void A_missing_sign_names_character_font_and_figure()
    {
        var drawing = new Drawing("aim", "t", "d", 10, 10, [new Caption(new(1, 1), "a∠b", 3)]);
        var error = Assert.Throws<MissingGlyphException>(() => PngPainter.Paint(drawing, Fonts.Set, 50));
        Assert.Equal(0x2220, error.CodePoint);
        Assert.StartsWith("figure 'aim': the font 'SourceSans3-Regular' has no glyph for '∠' (U+2220)", error.Message, StringComparison.Ordinal);
    }
}
