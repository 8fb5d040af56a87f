using InstallPacket.Drawings;

namespace InstallPacket.Packets.Pdf;

/// <summary>Rules and frames of a page. Weight tells them apart, so that a black-and-white copy says the same.</summary>
internal static class PdfLook
{
    public static (uint Rgb, double Weight) Hair { get; } = (0xB4BDC1, 0.5);

    public static (uint Rgb, double Weight) Firm { get; } = (Palette.Rgb(Ink.Line), 1.1);
}
