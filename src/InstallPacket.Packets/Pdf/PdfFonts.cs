using System.Collections.Concurrent;
using InstallPacket.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace InstallPacket.Packets.Pdf;

/// <summary>
/// Hands the theme's faces to the PDF library. Its resolver is one per process, so faces are kept there by the digest of their
/// bytes: two themes in one process do not meet.
/// </summary>
internal sealed class PdfFonts
{
    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);
    private static readonly FaceResolver Resolver = Install();

    private readonly Dictionary<(string Key, double Size), XFont> _fonts = [];
    private readonly Dictionary<uint, XSolidBrush> _brushes = [];

    /// <summary>The face in a size.</summary>
    public XFont Font(FontFace face, double size)
    {
        if (_fonts.TryGetValue((face.Key, size), out var font)) return font;
        Resolver.Add(face);
        return _fonts[(face.Key, size)] = Read(face, size);
    }

    // The library reads more of a font than we do, and meets a table that is missing or too short with whatever comes of it.
    private static XFont Read(FontFace face, double size)
    {
        try
        {
            return new XFont(face.Key, size, XFontStyleEx.Regular, Options);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            throw new DocumentException(
                $"the font '{face.Name}' cannot be put into a PDF: a table of it is missing or damaged. Fetch the file again", e);
        }
    }

    /// <summary>A brush of a colour.</summary>
    public XSolidBrush Brush(uint rgb)
    {
        if (!_brushes.TryGetValue(rgb, out var brush)) _brushes[rgb] = brush = new XSolidBrush(Colour(rgb));
        return brush;
    }

    /// <summary>The library's form of a colour.</summary>
    public static XColor Colour(uint rgb) => XColor.FromArgb((int)(0xFF000000 | rgb));

    private static FaceResolver Install()
    {
        var resolver = new FaceResolver();
        GlobalFontSettings.FontResolver = resolver;
        return resolver;
    }

    private sealed class FaceResolver : IFontResolver
    {
        private readonly ConcurrentDictionary<string, byte[]> _faces = new(StringComparer.OrdinalIgnoreCase);

        public void Add(FontFace face) => _faces.TryAdd(face.Key, face.Bytes);

        public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
            _faces.ContainsKey(familyName) ? new FontResolverInfo(familyName) : null;

        public byte[]? GetFont(string faceName) => _faces.GetValueOrDefault(faceName);
    }
}
