using System.Globalization;
using Fluid;
using Fluid.Values;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Templates;

/// <summary>The filters by which templates print the plan's numbers: each takes the plan's own unit and prints the job's.</summary>
internal static class WordFilters
{
    /// <summary>Filters for the language and units of one job. A value that is null prints as the language's word for what nobody
    /// knows.</summary>
    public static IReadOnlyDictionary<string, Func<FluidValue, FilterArguments, TemplateContext, FluidValue>> For(JobWords say)
    {
        var (printer, words) = (say.Print, say.Words);
        var filters = new Dictionary<string, Func<FluidValue, FilterArguments, TemplateContext, FluidValue>>(StringComparer.Ordinal);
        void Number(string name, Func<double, string> print) => filters[name] = (input, _, _) =>
            Text(input.IsNil() ? printer.Words.Unknown : print((double)input.ToNumberValue()));
        Number("length", printer.Length);
        Number("at_least", printer.AtLeast);
        Number("cable", printer.Cable);
        Number("small", printer.Small);
        Number("drill", printer.Drill);
        Number("distance", printer.Distance);
        Number("height", printer.Height);
        Number("bearing", printer.Bearing);
        Number("angle", printer.Angle);
        Number("level", printer.Level);
        Number("level_number", printer.LevelNumber);
        Number("ratio", printer.Ratio);
        Number("margin", printer.Margin);
        Number("chance", printer.Chance);
        Number("temperature", printer.Temperature);
        Number("torque", printer.Torque);
        Number("force", printer.Force);
        Number("moment", printer.Moment);
        Number("mass", printer.Mass);
        filters["capitalize_first"] = (input, _, _) => new StringValue(Capital(input.ToStringValue()));
        Number("stress", printer.Stress);
        Number("speed", printer.Speed);
        Number("pressure", printer.Pressure);
        Number("wind_area", printer.WindArea);
        Number("latitude", v => printer.Coordinate(v, latitude: true));
        Number("longitude", v => printer.Coordinate(v, latitude: false));
        Number("turn", v => Turn(v, say));
        Number("declination", v => say.Say("compass.declination", ("deg", printer.Number(Math.Abs(v), 1)), ("east", v >= 0)));
        Number("figure", v => Significant(v, printer));
        filters["fixed"] = (input, arguments, _) =>
            Text(input.IsNil() ? printer.Words.Unknown
            : printer.Number((double)input.ToNumberValue(), TemplateBounds.Decimals(arguments.At(0))));
        filters["day"] = (input, _, _) => Text(Day(input.ToStringValue(), say));
        filters["list"] = (input, arguments, _) => new StringValue(Joined(input, arguments.At(0).ToStringValue(), words));
        filters["ticked"] = (input, _, _) => new StringValue(Ticked(input, words));
        filters["name"] = (input, _, _) => new StringValue(Phrases.Say(input.ToStringValue(), words));
        filters["names"] = (input, arguments, _) => new StringValue(Names(input, arguments.At(0).ToStringValue(), words));
        filters["provenance"] = (input, _, _) => new StringValue(Provenance(input.ToStringValue(), words));
        filters["number"] = (input, arguments, _) => Text(input.IsNil() ? printer.Words.Unknown
            : printer.Write((double)input.ToNumberValue(), TemplateBounds.Decimals(arguments.At(0)), arguments.At(1).ToStringValue()));
        Number("whole", v => printer.Number(v, 0));
        filters["word"] = (input, arguments, _) => new StringValue(input.IsNil()
            ? printer.Words.Unknown : words.Plain($"values.{arguments.At(0).ToStringValue()}.{input.ToStringValue()}"));
        filters["place"] = (input, arguments, _) =>
            Text($"[](#{arguments.At(0).ToStringValue()}){MarkdownEncoder.Instance.Encode(input.ToStringValue())}");
        filters["marked"] = (input, _, _) => Text(Marked(input.ToStringValue()));
        return filters;
    }

    // The encoder trims what it takes for a whole value; here the blanks beside a name must stay.
    private static string Escaped(string part) =>
        part.Trim().Length == 0 ? part : (part[0] == ' ' ? " " : "") + MarkdownEncoder.Instance.Encode(part.Trim())
            + (part[^1] == ' ' ? " " : "");

    // Findings set names in backticks; those become code, everything else is escaped as any value.
    private static string Marked(string text)
    {
        var parts = text.Split('`');
        return string.Concat(parts.Select((part, i) => i % 2 == 0 || i == parts.Length - 1 ? Escaped(part)
            : "`" + part.ReplaceLineEndings(" ").Replace("|", "\\|") + "`"));
    }

    /// <summary>A number with six significant digits at least, without exponent.</summary>
    private static string Significant(double value, UnitPrinter printer)
    {
        if (value == 0 || !double.IsFinite(value)) return printer.Number(value, 0);
        var decimals = Math.Clamp(5 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        var text = printer.Number(value, decimals);
        return decimals > 0 ? text.TrimEnd('0').TrimEnd(printer.Words.Decimal.ToCharArray()) : text;
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Turn(double degrees, JobWords say) => Math.Abs(degrees) < 0.5 ? say.Say("compass.straight")
        : say.Say(degrees < 0 ? "compass.left" : "compass.right", ("deg", say.Print.Number(Math.Abs(degrees), 0)));

    private static string Day(string iso, JobWords say)
    {
        var day = DateOnly.ParseExact(iso, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var weekday = day.DayOfWeek == DayOfWeek.Sunday ? 7 : (int)day.DayOfWeek;
        return say.Say("dates.day", ("weekday", say.Say(Of("dates.weekdays", weekday))), ("day", day.Day),
            ("month", say.Say(Of("dates.months", day.Month))), ("year", day.Year));

        static string Of(string section, int number) => string.Create(CultureInfo.InvariantCulture, $"{section}.{number}");
    }

    // Names in a list, or in a text that joins them by commas.
    private static string Names(FluidValue input, string joiner, Words words)
    {
        var items = input is ArrayValue list ? list.Values.Select(v => v.ToStringValue()) : input.ToStringValue().Split(", ");
        return string.Join(words.Plain("numbers.list-" + (joiner.Length == 0 ? "comma" : joiner)),
            items.Select(i => Phrases.Say(i, words)));
    }

    // A provenance may be followed by the source: "memory: guidance of the trade".
    private static string Provenance(string text, Words words)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var id = "values.provenance." + (colon < 0 ? text : text[..colon]);
        return words.Has(id) ? words.Plain(id) + (colon < 0 ? "" : text[colon..]) : text;
    }

    // A list takes the joiner of the language: "comma" unless another is named.
    private static string Joined(FluidValue list, string joiner, Words words) =>
        list is ArrayValue items ? Joined([.. items.Values.Select(v => v.ToStringValue())], joiner, words) : list.ToStringValue();

    // "or" and "and" stand before the last one, commas before the others.
    private static string Joined(string[] items, string joiner, Words words)
    {
        var last = words.Plain("numbers.list-" + (joiner.Length == 0 ? "comma" : joiner));
        return joiner is not ("or" or "and") || items.Length < 2 ? string.Join(last, items)
            : string.Join(words.Plain("numbers.list-comma"), items[..^1]) + last + items[^1];
    }

    // Names as the author wrote them, each in backticks as file text is.
    private static string Ticked(FluidValue list, Words words) =>
        list is ArrayValue items ? Joined([.. items.Values.Select(v => $"`{v.ToStringValue()}`")], "", words) : $"`{list.ToStringValue()}`";

    // What a filter prints is the program's own text, so that a minus or a plus in front stays as it is.
    private static StringValue Text(string text) => new(text, encode: false);
}
