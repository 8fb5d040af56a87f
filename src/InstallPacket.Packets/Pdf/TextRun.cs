using InstallPacket.Drawings;

namespace InstallPacket.Packets.Pdf;

/// <summary>A stretch of text set in one face.</summary>
/// <param name="Text">The words; a lone LF is a forced line end.</param>
/// <param name="Type">How it is set.</param>
/// <param name="Target">Where it links to, or null.</param>
internal sealed record TextRun(string Text, PdfType Type, string? Target = null)
{
    public const string LineEnd = "\n";

    public bool IsLineEnd => Text == LineEnd;

    public double Width => Type.Face.Width(Text) * Type.Size;
}

/// <summary>A set line: its runs with their distance from the line's left end.</summary>
/// <param name="Runs">The runs from left to right.</param>
/// <param name="Width">Width without the space after the last word.</param>
internal sealed record TextLine(IReadOnlyList<(double X, TextRun Run)> Runs, double Width)
{
    public static TextLine Empty { get; } = new([], 0);
}
