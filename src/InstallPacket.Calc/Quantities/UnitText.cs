using System.Globalization;
using System.Text.RegularExpressions;

namespace InstallPacket.Calc.Quantities;

/// <summary>Why a written value could not be read.</summary>
public enum UnitProblem
{
    /// <summary>It was read.</summary>
    None,

    /// <summary>No number at the start.</summary>
    NotANumber,

    /// <summary>A bare number where a unit is needed.</summary>
    UnitMissing,

    /// <summary>A unit that does not measure this.</summary>
    UnitUnknown,
}

/// <summary>The outcome of reading a written value.</summary>
/// <param name="Value">The value in the stored unit of its dimension; 0 when there is a problem.</param>
/// <param name="Problem">What went wrong.</param>
/// <param name="Unit">The unit as the author wrote it (the last one of a compound).</param>
public readonly record struct UnitReading(double Value, UnitProblem Problem, string Unit);

/// <summary>Reads and prints values with units: dot decimals, no thousands marks, unit always written.</summary>
public static partial class UnitText
{
    /// <summary>Reads <c>4.5 m</c>, <c>14 ft 6 in</c>, <c>6 1/2 in</c>, <c>1/4 in</c>, <c>-83 dBm</c> and the like; lengths with the signs of feet
    /// and inches too: <c>25'</c>, <c>1/8"</c>, <c>12' 6"</c>. Only feet may have a second part, and only inches; a sign in front holds for
    /// both.</summary>
    /// <param name="text">What the author wrote.</param>
    /// <param name="dimension">What it must measure.</param>
    public static UnitReading Read(string text, Dimension dimension)
    {
        var rest = (dimension == Dimension.Length ? InWords(text) : text).Trim();
        var negative = rest.StartsWith('-');
        double total = 0;
        var unit = "";
        for (var parts = 0; rest.Length > 0 || parts == 0; parts++)
        {
            var match = Part().Match(rest);
            if (!match.Success || Bottom(match) == 0 || (parts > 0 && match.Groups["sign"].Success)) return new(0, UnitProblem.NotANumber,
                rest);
            var before = unit;
            unit = match.Groups["unit"].Value.Trim();
            rest = rest[match.Length..].Trim();
            if (unit.Length == 0) return WithoutUnit(rest);
            var known = UnitTable.For(dimension).FirstOrDefault(u => u.Name == unit);
            if (known is null || (parts > 0 && (parts > 1 || before != "ft" || unit != "in"))) return new(0, UnitProblem.UnitUnknown, unit);
            var value = Number(match) * known.Factor + known.Offset;
            total += parts > 0 && negative ? -value : value;
        }
        return new(total, UnitProblem.None, unit);
    }

    // 12' 6-1/2" is 12 ft 6-1/2 in. Drawings also write 12'-6".
    private static string InWords(string text) => InchSign().Replace(FootSign().Replace(text, " ft "), " in");

    [GeneratedRegex(@"(?<=[0-9])\s?['’′](?:\s*-?\s*(?=[0-9])|(?=\s*$))")]
    private static partial Regex FootSign();

    [GeneratedRegex(@"(?<=[0-9])\s?[""”″](?=\s*$)")]
    private static partial Regex InchSign();

    /// <summary>Prints a value with fixed decimals, the minus sign of typography, and its unit.</summary>
    public static string Write(double value, int decimals, string unit)
    {
        var number = Number(value, decimals);
        return unit.Length == 0 ? number : number + "\u00A0" + unit;
    }

    /// <summary>Prints a number with fixed decimals; a rounded zero never carries a minus sign.</summary>
    public static string Number(double value, int decimals)
    {
        if (!double.IsFinite(value)) return "unknown";
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        if (rounded == 0) rounded = 0;
        return rounded.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace('-', '\u2212');
    }

    private static UnitReading WithoutUnit(string rest) =>
        rest.Length == 0 ? new(0, UnitProblem.UnitMissing, "")
        : char.IsAsciiDigit(rest[0]) ? new(0, UnitProblem.NotANumber, rest)
        : new(0, UnitProblem.UnitUnknown, rest.Split(' ')[0]);

    private static double Bottom(Match match) => match.Groups["bottom"].Success
        ? double.Parse(match.Groups["bottom"].Value, CultureInfo.InvariantCulture) : 1;

    private static double Number(Match match)
    {
        static double Parse(string s) => double.Parse(s, NumberStyles.Float, CultureInfo.InvariantCulture);
        var sign = match.Groups["sign"].Value == "-" ? -1 : 1;
        var whole = match.Groups["whole"].Success ? Parse(match.Groups["whole"].Value) : 0;
        if (!match.Groups["top"].Success) return sign * whole;
        return sign * (whole + Parse(match.Groups["top"].Value) / Bottom(match));
    }

    [GeneratedRegex(
        @"^(?<sign>[+-])?(?:(?<whole>[0-9]{1,9}(?:\.[0-9]{1,12})?)(?:[ -](?<top>[0-9]{1,4})/(?<bottom>[0-9]{1,4}))?|(?<top>[0-9]{1,4})/(?<bottom>[0-9]{1,4}))(?:\s*(?<unit>dB/100 (?:m|ft)|ohm/(?:km|1000 ft)|ohm c?m|/(?:km|mi)2/year|m/s|km/h|lbf/ft2|lbf (?:ft|in)|N m|[A-Za-z%]+[23]?))?(?![^\s])",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Part();
}
