using InstallPacket.Drawings;

namespace InstallPacket.Packets.Pdf;

/// <summary>How a piece of text is set: face, size, distance of base lines, colour.</summary>
/// <param name="Face">The face.</param>
/// <param name="Size">Size in points.</param>
/// <param name="Leading">Distance of base lines in points.</param>
/// <param name="Rgb">Colour.</param>
internal sealed record PdfType(FontFace Face, double Size, double Leading, uint Rgb)
{
    private const double BaselineShare = 0.33;

    /// <summary>Depth of the base line below the top of its line: the lower-case letters stand in the middle of the leading.</summary>
    public double Baseline => Leading / 2 + Size * BaselineShare;
}

/// <summary>The scale of sizes of a document, from the theme's faces.</summary>
/// <param name="Fonts">The faces.</param>
internal sealed record PdfTypes(FontSet Fonts)
{
    public PdfType Body { get; } = new(Fonts.Regular, 10.2, 14.4, Palette.Rgb(Ink.Line));

    public PdfType Table { get; } = new(Fonts.Regular, 9.4, 12.4, Palette.Rgb(Ink.Line));

    public PdfType TableHead { get; } = new(Fonts.Strong, 9, 11.8, Palette.Rgb(Ink.Line));

    public PdfType Caption { get; } = new(Fonts.Strong, 9.2, 12.4, Palette.Rgb(Ink.Faint));

    public PdfType Code { get; } = new(Fonts.Mono, 8.6, 12, Palette.Rgb(Ink.Line));

    public PdfType NoticeLabel { get; } = new(Fonts.Strong, 10.6, 14.4, Palette.Rgb(Ink.Line));

    public PdfType Stamp { get; } = new(Fonts.Strong, 11.4, 14.4, Palette.Rgb(Ink.Line));

    public PdfType Running { get; } = new(Fonts.Regular, 8.4, 11, Palette.Rgb(Ink.Faint));

    /// <summary>Headings; those below the third level look like it.</summary>
    public PdfType Heading(int level) => level switch
    {
        1 => new(Fonts.Strong, 21, 25, Palette.Rgb(Ink.Line)),
        2 => new(Fonts.Strong, 14.6, 18.4, Palette.Rgb(Ink.Accent)),
        _ => new(Fonts.Strong, 11.4, 15, Palette.Rgb(Ink.Line)),
    };
}
