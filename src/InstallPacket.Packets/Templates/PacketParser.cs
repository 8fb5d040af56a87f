using Fluid;

namespace InstallPacket.Packets.Templates;

/// <summary>The parser of templates and words: Liquid and the tag <c>say</c>.</summary>
internal sealed class PacketParser : FluidParser
{
    public static readonly PacketParser Instance = new();

    private PacketParser() => RegisterParserTag("say", ArgumentsList, SayTag.Write);
}
