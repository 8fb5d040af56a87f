using Fluid;
using Fluid.Values;
using InstallPacket.Drawings;
using InstallPacket.Jobs;
using InstallPacket.Plans;

namespace InstallPacket.Packets.Language;

/// <summary>The words of a language with the units of a job. Safe to share between threads.</summary>
public sealed class JobWords : IWords
{
    // The engine counts in decimals, which hold no more; a number beyond it is none that a person could use.
    private const double LargestNumber = 1e27;

    // A text is a sentence or a table, not a page.
    private const int MaximumSteps = 20_000;

    private readonly TemplateOptions _options;

    /// <summary>Joins language and units.</summary>
    /// <param name="words">The language.</param>
    /// <param name="usUnits">Feet and inches.</param>
    /// <param name="levelUnit">The unit of levels.</param>
    public JobWords(Words words, bool usUnits, LevelUnit levelUnit)
    {
        Words = words;
        Print = new UnitPrinter(usUnits, levelUnit, words.Numbers);
        Filters = WordFilters.For(this).ToDictionary(f => f.Key, f => TemplateBounds.Bounded((i, a, c) => f.Value(i, a, c), f.Key),
            StringComparer.Ordinal);
        _options = TemplateRenderer.Options();
        _options.MaxSteps = MaximumSteps;
        foreach (var (name, filter) in Filters) _options.Filters.AddFilter(name, filter);
    }

    /// <summary>The language.</summary>
    public Words Words { get; }

    /// <inheritdoc/>
    public string Language => Words.Language;

    /// <inheritdoc/>
    public UnitPrinter Print { get; }

    /// <summary>The filters of pages and words.</summary>
    internal IReadOnlyDictionary<string, FilterDelegate> Filters { get; }

    /// <inheritdoc/>
    public string Say(string id, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var text = Words.Text(id);
        if (text.Plain is { } plain) return plain;
        var context = new TemplateContext(_options, StringComparer.Ordinal);
        context.AmbientValues[SayTag.Words] = Words;
        foreach (var (name, value) in values) context.SetValue(name, ValueOf(value, name));
        try
        {
            using var said = new BoundedWriter(TemplateBounds.LargestValue, "the text");
            text.Template.RenderAsync(said, NullEncoder.Default, context).AsTask().GetAwaiter().GetResult();
            return said.ToString();
        }
        catch (Exception e) when (WordText.IsMistake(e))
        {
            throw text.Wrong(e);
        }
    }

    /// <inheritdoc/>
    public string List(IEnumerable<string> items) => string.Join(Words.Plain("numbers.list-comma"), items);

    /// <inheritdoc/>
    public string Name(string phrase) => Phrases.Say(phrase, Words);

    private static FluidValue ValueOf(object? value, string name) => value switch
    {
        null => ModelValues.Of(null, name),
        string s => new StringValue(s),
        double d when !double.IsFinite(d) || Math.Abs(d) > LargestNumber => ModelValues.Of(null, name),
        double d => NumberValue.Create((decimal)d),
        int i => NumberValue.Create(i),
        bool b => BooleanValue.Create(b),
        IEnumerable<string> list => new ArrayValue([.. list.Select(s => new StringValue(s))]),
        IEnumerable<FindingValues> groups => new ArrayValue([.. groups.Select(g => ModelValues.Of(PlanJson.Values(g), name))]),
        FindingValues group => ModelValues.Of(PlanJson.Values(group), name),
        _ => throw new ArgumentException($"A text cannot name a {value.GetType().Name}.", nameof(value)),
    };
}
