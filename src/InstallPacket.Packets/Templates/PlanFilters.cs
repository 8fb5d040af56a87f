using System.Globalization;
using Fluid;
using Fluid.Values;
using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Packets.Templates;

/// <summary>The filters by which templates print the plan's numbers: each takes the plan's own unit and prints the job's.</summary>
internal static class PlanFilters
{
    /// <summary>Filters for the units of one job. A value that is null prints as <c>unknown</c>.</summary>
    public static IReadOnlyDictionary<string, Func<FluidValue, FilterArguments, TemplateContext, FluidValue>> For(UnitPrinter printer)
    {
        var filters = new Dictionary<string, Func<FluidValue, FilterArguments, TemplateContext, FluidValue>>(StringComparer.Ordinal);
        void Number(string name, Func<double, string> print) => filters[name] = (input, _, _) => Text(input.IsNil() ? "unknown" : print((double)input.ToNumberValue()));
        Number("length", printer.Length);
        Number("at_least", printer.AtLeast);
        Number("cable", printer.Cable);
        Number("small", printer.Small);
        Number("drill", printer.Drill);
        Number("distance", printer.Distance);
        Number("height", printer.Height);
        Number("bearing", UnitPrinter.Bearing);
        Number("angle", UnitPrinter.Angle);
        Number("level", printer.Level);
        Number("level_number", printer.LevelNumber);
        Number("ratio", UnitPrinter.Ratio);
        Number("margin", UnitPrinter.Margin);
        Number("chance", UnitPrinter.Chance);
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
        Number("latitude", v => UnitPrinter.Coordinate(v, latitude: true));
        Number("longitude", v => UnitPrinter.Coordinate(v, latitude: false));
        Number("turn", Turn);
        Number("declination", v => UnitText.Number(Math.Abs(v), 1) + "° " + (v < 0 ? "W" : "E"));
        Number("figure", Significant);
        filters["fixed"] = (input, arguments, _) => Text(input.IsNil() ? "unknown" : UnitText.Number((double)input.ToNumberValue(), (int)arguments.At(0).ToNumberValue()));
        filters["day"] = (input, _, _) => Text(DateOnly.ParseExact(input.ToStringValue(), "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture));
        filters["marked"] = (input, _, _) => Text(Marked(input.ToStringValue()));
        return filters;
    }

    // The encoder trims what it takes for a whole value; here the blanks beside a name must stay.
    private static string Escaped(string part) =>
        part.Trim().Length == 0 ? part : (part[0] == ' ' ? " " : "") + MarkdownEncoder.Instance.Encode(part.Trim()) + (part[^1] == ' ' ? " " : "");

    // Findings set names in backticks; those become code, everything else is escaped as any value.
    private static string Marked(string text)
    {
        var parts = text.Split('`');
        return string.Concat(parts.Select((part, i) => i % 2 == 0 || i == parts.Length - 1 ? Escaped(part)
            : "`" + part.ReplaceLineEndings(" ").Replace("|", "\\|") + "`"));
    }

    /// <summary>A number with six significant digits at least, without exponent.</summary>
    private static string Significant(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return UnitText.Number(value, 0);
        var decimals = Math.Clamp(5 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        var text = UnitText.Number(value, decimals);
        return text.Contains('.') ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Turn(double degrees) =>
        Math.Abs(degrees) < 0.5 ? "straight at it" : UnitText.Number(Math.Abs(degrees), 0) + "° " + (degrees < 0 ? "left" : "right");

    // What a filter prints is the program's own text, so that a minus or a plus in front stays as it is.
    private static StringValue Text(string text) => new(text, encode: false);
}
