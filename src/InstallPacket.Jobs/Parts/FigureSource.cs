using InstallPacket.Calc.Sources;

namespace InstallPacket.Jobs.Parts;

/// <summary>How a figure of a part is known: <c>memory: trade size</c>.</summary>
/// <param name="Text">As written.</param>
public sealed record FigureSource(string Text)
{
    /// <summary>The mark before the first colon; null when it is none of the known ones.</summary>
    public Provenance? Mark { get; } = ProvenanceWord.Read(Text.Split(':', 2)[0].Trim());

    /// <summary>The document or the remark behind the colon; may be empty.</summary>
    public string Note { get; } = Text.Split(':', 2) is [_, var note] ? note.Trim() : "";

    /// <summary>The mark as printed; <c>unknown</c> without one.</summary>
    public string Word => Mark is { } mark ? ProvenanceWord.Of(mark) : "unknown";
}
