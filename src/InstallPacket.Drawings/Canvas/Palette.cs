namespace InstallPacket.Drawings.Canvas;

/// <summary>
/// The inks on white paper, one table for all painters. All are dark enough to be read as text (contrast above 4.5 : 1) and
/// differ in lightness as well as hue; what must not be confused also differs in weight, dash or words.
/// </summary>
public static class Palette
{
    /// <summary>The colour of an ink as 0xRRGGBB.</summary>
    /// <param name="ink">What the mark means.</param>
    public static uint Rgb(Ink ink) => ink switch
    {
        Ink.Line => 0x14191C,
        Ink.Faint => 0x5F6B70,
        Ink.Accent => 0x0B5563,
        Ink.Warning => 0x6E1238,
        Ink.Paper => 0xFFFFFF,
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "unknown ink"),
    };

    /// <summary>The light tint of an ink as 0xRRGGBB; solid, not transparent, so that overlapping shapes stay readable.</summary>
    /// <param name="ink">What the mark means.</param>
    public static uint Tint(Ink ink) => ink switch
    {
        Ink.Line => 0xDDE2E4,
        Ink.Faint => 0xEEF1F2,
        Ink.Accent => 0xCFE3E6,
        Ink.Warning => 0xEBD3DC,
        Ink.Paper => 0xFFFFFF,
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "unknown ink"),
    };

    /// <summary>The colour that fills a closed shape, or null when it is open inside.</summary>
    /// <param name="fill">How it is filled.</param>
    /// <param name="ink">The ink of its outline.</param>
    public static uint? FillRgb(Fill fill, Ink ink) => fill switch
    {
        Fill.None => null,
        Fill.Solid => Rgb(ink),
        Fill.Tint => Tint(ink),
        Fill.Paper => Rgb(Ink.Paper),
        _ => throw new ArgumentOutOfRangeException(nameof(fill), fill, "unknown fill"),
    };
}
