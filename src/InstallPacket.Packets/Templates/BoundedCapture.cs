using System.Text.Encodings.Web;
using Fluid;
using Fluid.Ast;
using Fluid.Values;

namespace InstallPacket.Packets.Templates;

/// <summary>The tag <c>capture</c> with a bound, which the engine's own has not.</summary>
/// <param name="capture">What the engine parsed.</param>
internal sealed class BoundedCapture(CaptureStatement capture) : TagStatement(capture.Statements)
{
    public override async ValueTask<Completion> WriteToAsync(TextWriter writer, TextEncoder encoder, TemplateContext context)
    {
        using var text = new BoundedWriter(TemplateBounds.LargestValue, $"the text captured as '{capture.Identifier}'");
        foreach (var statement in Statements)
            if (await statement.WriteToAsync(text, encoder, context) is not Completion.Normal and var completion) return completion;
        context.SetValue(capture.Identifier, new StringValue(text.ToString(), encode: false));
        return Completion.Normal;
    }
}
