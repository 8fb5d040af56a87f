namespace InstallPacket.Drawings.Canvas;

/// <summary>The four faces that every page and figure is set in.</summary>
/// <param name="Regular">Running text.</param>
/// <param name="Strong">Headings, labels, emphasis that must be found at a glance.</param>
/// <param name="Italic">Light emphasis.</param>
/// <param name="Mono">Code, identifiers.</param>
public sealed record FontSet(FontFace Regular, FontFace Strong, FontFace Italic, FontFace Mono)
{
    /// <summary>The face of a label in a figure.</summary>
    /// <param name="caption">The label.</param>
    public FontFace FaceOf(Caption caption) => caption.Strong ? Strong : Regular;

    /// <summary>Refuses a figure with a character that its font cannot draw: an empty box in a plan is worse than no plan.</summary>
    /// <param name="drawing">The figure.</param>
    /// <exception cref="MissingGlyphException">Names the first such character.</exception>
    public void Require(Drawing drawing)
    {
        foreach (var caption in drawing.Shapes.OfType<Caption>())
            Require(FaceOf(caption), caption.Text, $"figure '{drawing.Id}'");
    }

    /// <summary>Refuses a text with a character that the face cannot draw.</summary>
    /// <param name="face">The face it will be set in.</param>
    /// <param name="text">The words.</param>
    /// <param name="place">Where it stands, for the message.</param>
    /// <exception cref="MissingGlyphException">Names the first such character.</exception>
    public static void Require(FontFace face, string text, string place)
    {
        if (face.FirstMissing(text) is { } code) throw new MissingGlyphException(code, face.Name, place);
    }
}
