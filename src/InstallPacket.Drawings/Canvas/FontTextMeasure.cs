namespace InstallPacket.Drawings.Canvas;

/// <summary>Widths of words in the faces of the theme, so that labels are placed alike in every painter.</summary>
/// <param name="fonts">The faces.</param>
public sealed class FontTextMeasure(FontSet fonts) : ITextMeasure
{
    /// <inheritdoc/>
    public double WidthMm(string text, double sizeMm, bool strong = false) =>
        (strong ? fonts.Strong : fonts.Regular).Width(text) * sizeMm;
}
