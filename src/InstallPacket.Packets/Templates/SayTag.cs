using System.Text.Encodings.Web;
using Fluid;
using Fluid.Ast;
using Fluid.Values;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Templates;

/// <summary>
/// The tag by which a template speaks: <c>{% say 'pages.crew.title' %}</c>, <c>{% say 'steps', s.id %}</c>. The text sees every value that
/// the template sees at this place, and those
/// named after the id. Its own signs are Markdown; values in it are escaped as in a template.
/// </summary>
internal static class SayTag
{
    /// <summary>Where the context holds the language.</summary>
    public const string Words = "words";

    public static async ValueTask<Completion> Write(IReadOnlyList<FilterArgument> arguments, TextWriter output, TextEncoder encoder,
        TemplateContext context)
    {
        var words = context.AmbientValues.TryGetValue(Words, out var found) ? (Words)found
            : throw new FluidException("'say' has no language here");
        var text = words.Text(await Id(arguments, context));
        if (text.Plain is { } plain)
        {
            await output.WriteAsync(plain);
            return Completion.Normal;
        }
        context.EnterChildScope();
        try
        {
            foreach (var named in arguments.Where(a => a.Name is not null)) context.SetValue(named.Name!,
                await named.Expression.EvaluateAsync(context));
            await text.Template.RenderAsync(output, encoder, context);
        }
        catch (Exception e) when (WordText.IsMistake(e))
        {
            throw text.Wrong(e);
        }
        finally
        {
            context.ReleaseScope();
        }
        return Completion.Normal;
    }

    // Several parts are joined by points: say 'hazards', h.id.
    private static async ValueTask<string> Id(IReadOnlyList<FilterArgument> arguments, TemplateContext context)
    {
        var parts = new List<string>();
        foreach (var part in arguments.Where(a =>
            a.Name is null)) parts.Add((await part.Expression.EvaluateAsync(context)).ToStringValue());
        return parts.Count > 0 ? string.Join('.', parts) : throw new FluidException("'say' needs the id of a text");
    }
}
