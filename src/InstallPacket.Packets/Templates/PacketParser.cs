using Fluid;
using Fluid.Ast;
using Parlot.Fluent;

namespace InstallPacket.Packets.Templates;

/// <summary>The parser of templates and words: Liquid and the tag <c>say</c>.</summary>
internal sealed class PacketParser : FluidParser
{
    public static readonly PacketParser Instance = new();

    private PacketParser()
    {
        RegisterParserTag("say", ArgumentsList, SayTag.Write);
        RegisteredTags["capture"] = RegisteredTags["capture"].Then<Statement>(s => new BoundedCapture((CaptureStatement)s));
    }

    /// <summary>Parses a template or a text.</summary>
    /// <param name="source">Liquid.</param>
    /// <param name="error">What is wrong with it.</param>
    /// <returns>The parsed template; null when there is a mistake in it.</returns>
    public IFluidTemplate? Parse(string source, out string error)
    {
        if (!this.TryParse(source, out var template, out error)) return null;
        try
        {
            TemplateBounds.CheckRanges(template, source);
            return template;
        }
        catch (FluidException e)
        {
            error = e.Message;
            return null;
        }
    }
}
