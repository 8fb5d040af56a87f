using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Fluid;
using Fluid.Values;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Templates;

/// <summary>
/// Renders the theme's templates over a model. Every value is escaped for Markdown unless the template says <c>md_raw</c>, which is
/// meant for text of the program itself, never for words of a job. Unknown names and filters are errors.
/// </summary>
public sealed partial class TemplateRenderer
{
    private const int MaximumSteps = 500_000;
    private const int MaximumRecursion = 20;
    // Said of too many steps and of too many templates in one another alike.
    private const string EngineLimit = "The maximum ";
    private const string UndefinedVariable = "Undefined variable";

    private readonly Theme _theme;
    private readonly TemplateOptions _options;
    private readonly Words? _words;
    private readonly ConcurrentDictionary<string, IFluidTemplate> _parsed = new(StringComparer.Ordinal);

    /// <summary>Prepares the templates of a theme.</summary>
    /// <param name="theme">The theme.</param>
    /// <param name="words">The language and units of the pages; null when the templates do not speak.</param>
    public TemplateRenderer(Theme theme, JobWords? words = null)
    {
        _theme = theme;
        _words = words?.Words;
        _options = Options();
        _options.FileProvider = new ThemeTemplates(theme);
        _options.DefaultFileExtension = ThemeTemplates.Ending;
        if (words is null) return;
        foreach (var (name, filter) in words.Filters) _options.Filters.AddFilter(name, filter);
    }

    /// <summary>How templates and words are rendered: strict, and the same on every machine.</summary>
    internal static TemplateOptions Options()
    {
        var options = new TemplateOptions
        {
            StrictVariables = true,
            StrictFilters = true,
            CultureInfo = CultureInfo.InvariantCulture,
            TimeZone = TimeZoneInfo.Utc,
            Now = () => DateTimeOffset.UnixEpoch,
            MaxSteps = MaximumSteps,
            MaxRecursion = MaximumRecursion,
            // Two names that differ in case are two values, as in the JSON beside the page.
            ModelNamesComparer = StringComparer.Ordinal,
        };
        TemplateBounds.Keep(options.Filters);
        options.Filters.AddFilter("md_raw", (input, _, _) => new StringValue(input.ToStringValue(), encode: false));
        // The built-in one does not see a null of the model as missing.
        options.Filters.AddFilter("default", (input, arguments, _) =>
            input.ToBooleanValue() && input.ToStringValue().Length > 0 ? input : arguments.At(0));
        return options;
    }

    /// <summary>Renders a template.</summary>
    /// <param name="name">Its name in the theme without folder and ending.</param>
    /// <param name="model">The values by name.</param>
    /// <returns>Markdown, lines ended by LF.</returns>
    /// <exception cref="TemplateException">The template has a mistake, or asks for a value that is not there.</exception>
    public string Render(string name, JsonObject model)
    {
        var template = _parsed.GetOrAdd(name, Parse);
        var context = new TemplateContext(_options, StringComparer.Ordinal);
        if (_words is not null) context.AmbientValues[SayTag.Words] = _words;
        foreach (var (key, value) in model) context.SetValue(key, ModelValues.Of(value, key));
        try
        {
            using var page = new BoundedWriter(TemplateBounds.LargestPage, "the page");
            template.RenderAsync(page, MarkdownEncoder.Instance, context).AsTask().GetAwaiter().GetResult();
            return page.ToString();
        }
        catch (WordsException e) when (e.Id is { } id)
        {
            var (file, line) = Locate(name, id);
            throw new TemplateException(file, line, e.Message, e);
        }
        catch (UnknownNameException e)
        {
            var (file, line) = Locate(name, e.Name);
            throw new TemplateException(file, line, e.Message, e);
        }
        catch (Exception e) when (e is FileNotFoundException || WordText.IsMistake(e))
        {
            throw Explain(name, e, model);
        }
    }

    private IFluidTemplate Parse(string name)
    {
        var source = _theme.Template(name) ?? throw new DocumentException($"the theme has no file '{Theme.TemplatePath(name)}'");
        if (PacketParser.Instance.Parse(source, out var error) is { } template) return template;
        var place = Place().Match(error);
        int? line = place.Success ? int.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture) : null;
        throw new TemplateException(Theme.TemplatePath(name), line, error, new FluidException(error));
    }

    private TemplateException Explain(string name, Exception cause, JsonObject model)
    {
        var word = Quoted().Match(cause.Message);
        var (file, line) = word.Success ? Locate(name, word.Groups[1].Value) : (Theme.TemplatePath(name), null);
        var message = cause.Message.StartsWith(UndefinedVariable, StringComparison.Ordinal) ? UnknownMember(word.Groups[1].Value, model)
            : cause.Message.StartsWith(EngineLimit, StringComparison.Ordinal)
                ? string.Create(CultureInfo.InvariantCulture, $"it takes more than {MaximumSteps} steps, or renders itself: shorten the loop")
            : cause is OutOfMemoryException ? "a loop or a text in it grows beyond the memory that a packet may take"
            : cause.Message;
        return new TemplateException(file, line, message, cause);
    }

    // For a member of a text, number or list the engine names a class of its own instead of the member.
    private static string UnknownMember(string word, JsonObject model) => word.StartsWith("Fluid.", StringComparison.Ordinal)
        ? "a member is asked of a text, number, truth value or list that has none of that name"
            : new UnknownNameException(word, word, model.Select(p => p.Key)).Message;

    /// <summary>The engine does not say where it stood, so the word is looked up: first in the template, then in those it may
    /// render.</summary>
    private (string File, int? Line) Locate(string name, string word)
    {
        foreach (var candidate in _theme.TemplateNames.Where(n => n != name).Prepend(name))
        {
            var found = Regex.Match(_theme.Template(candidate) ?? "", WordInTag(word),
                RegexOptions.Singleline | RegexOptions.CultureInvariant);
            if (found.Success)
                return (Theme.TemplatePath(candidate), 1 + _theme.Template(candidate)!.AsSpan(0, found.Groups[1].Index).Count('\n'));
        }
        return (Theme.TemplatePath(name), null);
    }

    private static string WordInTag(string word) => $@"\{{[{{%](?:(?![}}%]\}}).)*?(?<![\w-])({Regex.Escape(word)})(?![\w-])";

    [GeneratedRegex(@"\((\d+):\d+\)")]
    private static partial Regex Place();

    [GeneratedRegex("'([^']+)'")]
    private static partial Regex Quoted();
}
