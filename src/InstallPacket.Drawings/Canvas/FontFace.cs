using System.Buffers.Binary;
using System.Security.Cryptography;

namespace InstallPacket.Drawings.Canvas;

/// <summary>
/// One TrueType file of the theme: its bytes, and the few tables needed to know how wide a text is and whether every
/// character has a glyph. Reading them here keeps measuring free of native code, thread-safe and the same for all painters.
/// </summary>
public sealed class FontFace
{
    private readonly ushort[] _glyphs = new ushort[0x10000];
    private readonly Dictionary<int, ushort> _beyondFirstPlane = [];
    private readonly ushort[] _advances;
    private readonly double _unitsPerEm;

    /// <summary>Reads the tables of a font file.</summary>
    /// <param name="name">Name for messages: the file name.</param>
    /// <param name="bytes">The whole TrueType file.</param>
    /// <exception cref="InvalidDataException">The bytes are not a TrueType font with a Unicode character map.</exception>
    public FontFace(string name, byte[] bytes)
    {
        Name = name;
        Bytes = bytes;
        Key = Convert.ToHexStringLower(SHA256.HashData(bytes))[..16];
        try
        {
            var tables = FontTables.Of(name, bytes);
            _unitsPerEm = U16(bytes, tables["head"] + 18);
            _advances = Advances(bytes, tables["hhea"], tables["hmtx"]);
            ReadCharacterMap(bytes, tables["cmap"]);
        }
        catch (Exception e) when (e is KeyNotFoundException or ArgumentOutOfRangeException or IndexOutOfRangeException)
        {
            throw new InvalidDataException($"font '{name}' is not a TrueType file with a Unicode character map", e);
        }
    }

    /// <summary>Name for messages: the file name.</summary>
    public string Name { get; }

    /// <summary>The whole file.</summary>
    public byte[] Bytes { get; }

    /// <summary>A short digest of the bytes: two faces with the same key are the same font.</summary>
    public string Key { get; }

    /// <summary>Whether the font draws this character.</summary>
    /// <param name="codePoint">Unicode code point.</param>
    public bool Has(int codePoint) => GlyphOf(codePoint) != 0;

    /// <summary>Width of a text at size 1; multiply by the size. Without kerning, as our painters draw.</summary>
    /// <param name="text">The words.</param>
    public double Width(ReadOnlySpan<char> text)
    {
        long units = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var code = (int)text[i];
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                code = char.ConvertToUtf32(text[i], text[++i]);
            units += _advances[Math.Min(GlyphOf(code), _advances.Length - 1)];
        }
        return units / _unitsPerEm;
    }

    /// <summary>The first character of a text that this font cannot draw.</summary>
    /// <param name="text">The words.</param>
    /// <returns>Its code point, or null when the whole text can be drawn.</returns>
    public int? FirstMissing(string text)
    {
        foreach (var rune in text.EnumerateRunes())
            if (!Has(rune.Value)) return rune.Value;
        return null;
    }

    private int GlyphOf(int codePoint) =>
        codePoint < _glyphs.Length ? _glyphs[codePoint] : _beyondFirstPlane.GetValueOrDefault(codePoint);

    private static ushort[] Advances(byte[] bytes, int hhea, int hmtx)
    {
        // Glyphs after the last stored one share its width; Width() clamps the index instead of storing them.
        var advances = new ushort[U16(bytes, hhea + 34)];
        for (var i = 0; i < advances.Length; i++) advances[i] = U16(bytes, hmtx + i * 4);
        return advances;
    }

    private void ReadCharacterMap(byte[] bytes, int cmap)
    {
        var found = false;
        for (var i = 0; i < U16(bytes, cmap + 2); i++)
        {
            var entry = cmap + 4 + i * 8;
            var (platform, encoding) = (U16(bytes, entry), U16(bytes, entry + 2));
            if (platform != 0 && !(platform == 3 && encoding is 1 or 10)) continue;
            var table = cmap + (int)U32(bytes, entry + 4);
            if (U16(bytes, table) == 4) { ReadSegments(bytes, table); found = true; }
            else if (U16(bytes, table) == 12) { ReadGroups(bytes, table); found = true; }
        }
        if (!found) throw new InvalidDataException($"font '{Name}' has no Unicode character map");
    }

    // cmap format 4: segments of the first plane.
    private void ReadSegments(byte[] bytes, int table)
    {
        var twice = U16(bytes, table + 6);
        for (var s = 0; s < twice; s += 2)
        {
            int end = U16(bytes, table + 14 + s), start = U16(bytes, table + 16 + twice + s);
            int delta = U16(bytes, table + 16 + 2 * twice + s), rangeAt = table + 16 + 3 * twice + s;
            int range = U16(bytes, rangeAt);
            for (var c = start; c <= end && c != 0xFFFF; c++)
            {
                var glyph = range == 0 ? c + delta : U16(bytes, rangeAt + range + 2 * (c - start));
                if (range != 0 && glyph != 0) glyph += delta;
                _glyphs[c] = (ushort)glyph;
            }
        }
    }

    // cmap format 12: groups over all planes.
    private void ReadGroups(byte[] bytes, int table)
    {
        for (var g = 0; g < U32(bytes, table + 12); g++)
        {
            var at = table + 16 + g * 12;
            uint start = U32(bytes, at), end = U32(bytes, at + 4), glyph = U32(bytes, at + 8);
            for (var c = start; c <= end && c <= 0x10FFFF; c++)
            {
                if (c < _glyphs.Length) _glyphs[c] = (ushort)(glyph + c - start);
                else _beyondFirstPlane[(int)c] = (ushort)(glyph + c - start);
            }
        }
    }

    private static ushort U16(byte[] bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at, 2));

    private static uint U32(byte[] bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at, 4));
}
