using System.Globalization;
using Fluid;
using Fluid.Ast;
using Fluid.Values;

namespace InstallPacket.Packets.Templates;

/// <summary>
/// Keeps what a template or a text may cost within bounds, so that a theme from a stranger takes neither the machine's memory nor its time:
/// the filters of the engine that are of use to pages, each with a limit of what it takes and gives; a total of characters for a page;
/// no range but between two numbers that are written out.
/// </summary>
internal static class TemplateBounds
{
    /// <summary>Characters of one text, items of one list.</summary>
    public const int LargestValue = 262_144;

    /// <summary>Characters of one page; the longest of the demo jobs has about a twentieth of it.</summary>
    public const int LargestPage = 4_194_304;

    /// <summary>Characters and items that all filters of one page may handle together.</summary>
    private const int LargestWork = 67_108_864;

    private const int LongestRange = 1000;

    private const string Work = "work";

    // What the engine offers beyond these prints dates, other formats and hashes; a width in a format takes gigabytes.
    private static readonly string[] Kept =
    [
        "abs", "append", "at_least", "at_most", "capitalize", "ceil", "compact", "concat", "divided_by", "downcase", "escape", "find",
        "find_index", "first", "floor", "has", "join", "last", "lstrip", "map", "minus", "modulo", "newline_to_br", "plus", "prepend",
        "reject", "remove", "remove_first", "remove_last", "replace", "replace_first", "replace_last", "reverse", "round", "rstrip", "size",
        "slice", "sort", "sort_natural", "split", "strip", "strip_newlines", "sum", "times", "truncate", "truncatewords", "uniq", "upcase",
        "where",
    ];

    /// <summary>Leaves only the engine's filters that pages use, each with its bound.</summary>
    /// <param name="filters">The filters of the engine.</param>
    public static void Keep(FilterCollection filters)
    {
        var kept = new List<(string Name, FilterDelegate Filter)>(Kept.Length);
        foreach (var name in Kept)
            if (filters.TryGetValue(name, out var filter)) kept.Add((name, filter));
        filters.Clear();
        foreach (var (name, filter) in kept) filters.AddFilter(name, Bounded(filter, name));
    }

    /// <summary>A filter with its bound.</summary>
    /// <param name="filter">The filter.</param>
    /// <param name="name">Its name, for what it joins or replaces.</param>
    public static FilterDelegate Bounded(FilterDelegate filter, string name) => async (input, arguments, context) =>
    {
        var size = SizeOf(input);
        for (var i = 0; i < arguments.Count; i++) size += SizeOf(arguments.At(i));
        size += name switch
        {
            "replace" => Replaced(input, arguments),
            "join" or "list" or "ticked" or "names" => Joined(input, arguments),
            _ => 0,
        };
        Charge(size, context);
        var result = await filter(input, arguments, context);
        Charge(SizeOf(result), context);
        return result;
    };

    /// <summary>Whether a template has no range that could be long.</summary>
    /// <param name="template">A parsed template.</param>
    /// <param name="source">Its text.</param>
    /// <exception cref="FluidException">It has one.</exception>
    public static void CheckRanges(IFluidTemplate template, string source)
    {
        if (source.Contains("..", StringComparison.Ordinal)) new RangeCheck().VisitTemplate(template);
    }

    /// <summary>A number of decimals from a filter's argument.</summary>
    /// <exception cref="FormatException">It is not between 0 and 12.</exception>
    public static int Decimals(FluidValue argument) => argument.ToNumberValue() is >= 0 and <= 12 and var decimals ? (int)decimals
        : throw new FormatException($"'{argument.ToStringValue()}' is no number of decimals: 0 to 12");

    private static void Charge(long size, TemplateContext context)
    {
        if (size > LargestValue) throw TooMuch(LargestValue, "a text or a list of it");
        var work = (context.AmbientValues.TryGetValue(Work, out var sofar) ? (long)sofar : 0) + size;
        if (work > LargestWork) throw TooMuch(LargestWork, "what its filters handle");
        context.AmbientValues[Work] = work;
    }

    /// <summary>What is told of a template that grows beyond a bound.</summary>
    public static FluidException TooMuch(int limit, string what) => new(string.Create(CultureInfo.InvariantCulture,
        $"{what} grows beyond {limit} characters or items: shorten the loop"));

    private static long SizeOf(FluidValue value) => value switch
    {
        StringValue s => s.ToStringValue().Length,
        ArrayValue list => list.Values.Count,
        _ => 0,
    };

    // What comes in and out of a replacement: each find may be longer afterwards.
    private static long Replaced(FluidValue input, FilterArguments arguments)
    {
        var (text, sought) = (input.ToStringValue(), arguments.At(0).ToStringValue());
        if (sought.Length == 0) return 0;
        return (long)text.AsSpan().Count(sought) * arguments.At(1).ToStringValue().Length;
    }

    private static long Joined(FluidValue input, FilterArguments arguments) => input is not ArrayValue list ? 0
        : list.Values.Sum(v => (long)SizeOf(v)) + ((long)list.Values.Count * (2 + arguments.At(0).ToStringValue().Length));

    private sealed class RangeCheck : AstVisitor
    {
        public override Statement VisitOtherStatement(Statement statement)
        {
            if (statement is BoundedCapture capture)
                foreach (var inner in capture.Statements) Visit(inner);
            return base.VisitOtherStatement(statement);
        }

        protected override Expression VisitRangeExpression(RangeExpression rangeExpression)
        {
            if (rangeExpression is not { From: LiteralExpression { Value: NumberValue from }, To: LiteralExpression { Value: NumberValue to } }
                || to.ToNumberValue() - from.ToNumberValue() > LongestRange)
                throw new FluidException($"a range '(1..n)' needs two numbers written out, at most {LongestRange} apart");
            return rangeExpression;
        }
    }
}
