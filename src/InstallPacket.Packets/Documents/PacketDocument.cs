using InstallPacket.Drawings;

namespace InstallPacket.Packets.Documents;

/// <summary>One document of a packet, ready to be written in any form.</summary>
/// <param name="Name">File name without ending: <c>crew</c>, <c>customer</c>, <c>workings</c>.</param>
/// <param name="Title">Title of the document.</param>
/// <param name="Language">BCP 47 language tag.</param>
/// <param name="Markdown">Its text; figures are images with the target <c>figures/ID.svg</c>, alone in a paragraph.</param>
/// <param name="Figures">The drawings that the text may name, by identifier.</param>
/// <param name="Stamp">Words that stand on every page when the plan must not be installed; null otherwise.</param>
/// <param name="Footer">Short text at the foot of every page: job, date, revision.</param>
public sealed record PacketDocument(
    string Name,
    string Title,
    string Language,
    string Markdown,
    IReadOnlyDictionary<string, Drawing> Figures,
    string? Stamp,
    string Footer);
