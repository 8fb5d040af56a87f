namespace InstallPacket.Packets.Pdf;

/// <summary>Size and margins of a page in points (1/72 inch).</summary>
/// <param name="Width">Width of the paper.</param>
/// <param name="Height">Height of the paper.</param>
/// <param name="Side">Left and right margin: wide enough for a clip board and punched holes.</param>
/// <param name="Top">Margin above the running head.</param>
/// <param name="Bottom">Margin below the running foot.</param>
public sealed record PageFormat(double Width, double Height, double Side = 54, double Top = 34, double Bottom = 32)
{
    /// <summary>US Letter, 8.5 by 11 inches.</summary>
    public static PageFormat Letter { get; } = new(612, 792);

    /// <summary>ISO A4, 210 by 297 millimetres.</summary>
    public static PageFormat A4 { get; } = new(595.28, 841.89);

    /// <summary>Width of the text.</summary>
    public double TextWidth => Width - 2 * Side;
}
