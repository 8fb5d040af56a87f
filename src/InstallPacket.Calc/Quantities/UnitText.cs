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
    /// <summary>Reads <c>4.5 m</c>, <c>14 ft 6 in</c>, <c>6 1/2 in</c>, <c>1/4 in</c>, <c>-83 dBm</c> and the like.</summary>
    /// <param name="text">What the author wrote.</param>
    /// <param name="dimension">What it must measure.</param>
    public static UnitReading Read(string text, Dimension dimension)
    {
        var rest = text.Trim();
        double total = 0;
        var negative = false;
        var unit = "";
        var parts = 0;
        while (rest.Length > 0 || parts == 0)
        {
            var match = Part().Match(rest);
            if (!match.Success || (parts > 0 && match.Groups["sign"].Length > 0)) return new(0, UnitProblem.NotANumber, rest);
            unit = match.Groups["unit"].Value.Trim();
            if (unit.Length == 0) return new(0, UnitProblem.UnitMissing, "");
            var known = UnitTable.For(dimension).FirstOrDefault(u => u.Name == unit);
            if (known is null || (parts > 0 && !MayFollow(dimension, unit))) return new(0, UnitProblem.UnitUnknown, unit);
            var value = Number(match) * known.Factor + known.Offset;
            total += negative ? -value : value;
            negative |= parts == 0 && match.Groups["sign"].Value == "-"; // "-1 ft 6 in" is below zero as a whole
            rest = rest[match.Length..].Trim();
            parts++;
        }
        return new(total, UnitProblem.None, unit);
    }

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

    // Only feet may be followed by a second part, and only by inches: "14 ft 6 in".
    private static bool MayFollow(Dimension dimension, string unit) => dimension == Dimension.Length && unit == "in";

    private static double Number(Match match)
    {
        static double Parse(string s) => double.Parse(s, NumberStyles.Float, CultureInfo.InvariantCulture);
        var sign = match.Groups["sign"].Value == "-" ? -1 : 1;
        var whole = match.Groups["whole"].Success ? Parse(match.Groups["whole"].Value) : 0;
        if (!match.Groups["top"].Success) return sign * whole;
        return sign * (whole + Parse(match.Groups["top"].Value) / Math.Max(1, Parse(match.Groups["bottom"].Value)));
    }

    [GeneratedRegex(
        @"^(?<sign>[+-])?(?:(?<whole>\d{1,9}(?:\.\d{1,12})?)(?:[ -](?<top>\d{1,4})/(?<bottom>\d{1,4}))?|(?<top>\d{1,4})/(?<bottom>\d{1,4}))(?:\s*(?<unit>dB/100 (?:m|ft)|lbf (?:ft|in)|N m|[A-Za-z%]+[23]?))?(?![^\s])",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Part();
}
