using System.Globalization;
using System.Text;

namespace InstallPacket.Drawings.Canvas;

/// <summary>A text holds a character that the font of the theme cannot draw.</summary>
public sealed class MissingGlyphException : Exception
{
    /// <summary>Names the character, the font and the place.</summary>
    /// <param name="codePoint">The character.</param>
    /// <param name="font">The font file.</param>
    /// <param name="place">The figure or document.</param>
    public MissingGlyphException(int codePoint, string font, string place)
        : base(string.Create(CultureInfo.InvariantCulture,
            $"{place}: the font '{font}' has no glyph for {Show(codePoint)}; write it in other words or add a font to the theme"))
    {
        CodePoint = codePoint;
        Place = place;
    }

    /// <summary>The character as a Unicode code point.</summary>
    public int CodePoint { get; }

    /// <summary>The figure or document that holds it.</summary>
    public string Place { get; }

    private static string Show(int code) =>
        Rune.IsValid(code) && !Rune.IsControl(new Rune(code)) ? $"'{new Rune(code)}' (U+{code:X4})" : $"U+{code:X4}";
}
