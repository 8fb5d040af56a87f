using Markdig.Extensions.CustomContainers;

namespace InstallPacket.Packets.Markdown;

/// <summary>A boxed part of a text, set off by a word and a shape, so that nothing depends on colour.</summary>
/// <param name="Kind">The word after the colons: <c>stop</c>, <c>caution</c> or <c>note</c>.</param>
/// <param name="Label">The word shown, with what follows it on the opening line.</param>
internal sealed record Notice(string Kind, string Label)
{
    /// <exception cref="DocumentException">The word after the colons is none of the three.</exception>
    public static Notice Of(CustomContainer container, PacketDocument document)
    {
        if (container.Info is not ("stop" or "caution" or "note"))
            throw new DocumentException($"document '{document.Name}': there is no box '::: {container.Info}'; use ::: stop, ::: caution or ::: note");
        var label = document.Words.Say("running-heads." + container.Info);
        var subject = container.Arguments?.Trim();
        return new Notice(container.Info, string.IsNullOrEmpty(subject) ? label : $"{label}: {subject}");
    }
}
