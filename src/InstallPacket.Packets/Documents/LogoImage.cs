namespace InstallPacket.Packets.Documents;

/// <summary>The logo of a firm as a page shows it.</summary>
/// <param name="Png">A PNG file of true colour or with a palette, eight bits, opaque.</param>
/// <param name="WidthMm">Width on paper [mm].</param>
/// <param name="HeightMm">Height on paper [mm].</param>
/// <param name="Words">What is read out in its place.</param>
public sealed record LogoImage(byte[] Png, double WidthMm, double HeightMm, string Words)
{
    private const double MostWidthMm = 40;
    private const double MostHeightMm = 12;

    /// <summary>The logo of who prepared a job; null without one.</summary>
    /// <param name="firm">Who.</param>
    /// <exception cref="DocumentException">The picture cannot be unpacked.</exception>
    public static LogoImage? Of(Party firm)
    {
        if (firm.Logo is not { } logo) return null;
        var png = PngPainter.Repainted(logo.Bytes.Span) ?? throw new DocumentException($"{logo.File} cannot be read as a picture; save it again as PNG");
        var scale = Math.Min(MostWidthMm / logo.WidthPx, MostHeightMm / logo.HeightPx);
        return new(png, logo.WidthPx * scale, logo.HeightPx * scale, firm.Name);
    }
}
