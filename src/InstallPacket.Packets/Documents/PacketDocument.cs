using System.Collections.ObjectModel;
using InstallPacket.Drawings;

namespace InstallPacket.Packets.Documents;

/// <summary>One document of a packet, ready to be written in any form.</summary>
/// <param name="Name">File name without ending.</param>
/// <param name="Title">Title of the document.</param>
/// <param name="Markdown">Its text; figures are images with the target <c>figures/ID.svg</c>, alone in a paragraph.</param>
/// <param name="Figures">The drawings that the text may name, by identifier.</param>
/// <param name="Stamp">Words that stand on every page when the plan must not be installed; null otherwise.</param>
/// <param name="Footer">Short text at the foot of every page: job, date, revision.</param>
/// <param name="Words">What the writers themselves say, in the language of the document.</param>
public sealed record PacketDocument(
    string Name,
    string Title,
    string Markdown,
    IReadOnlyDictionary<string, Drawing> Figures,
    string? Stamp,
    string Footer,
    IWords Words)
{
    /// <summary>Places of the page that the cells of a row come from, from its second cell on, by the place of the row; null where a cell
    /// has none.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string?>> RowLinks { get; init; } = ReadOnlyDictionary<string,
        IReadOnlyList<string?>>.Empty;

    /// <summary>Logo of the firm over its first words, or null.</summary>
    public LogoImage? Logo { get; init; }

    /// <summary>BCP 47 language tag.</summary>
    public string Language => Words.Language;
}
