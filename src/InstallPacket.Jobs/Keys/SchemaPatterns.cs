using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>How single values look, as regular expressions for editors. They let through whatever the reader reads, but for odd spaces.</summary>
internal static class SchemaPatterns
{
    /// <summary>A day.</summary>
    public const string Day = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";

    /// <summary>A bearing with its north.</summary>
    public const string Bearing = @"^[0-9]{1,3}(\.[0-9]{1,6})?\s*deg\s+(true|magnetic)$";

    /// <summary>A path below the own or a shared folder.</summary>
    public const string Path = @"^(?!/)(?!.*\.\.)[^\\:]{1,100}$";

    /// <summary>A name that the author gives.</summary>
    public const string Name = "^[A-Za-z0-9][A-Za-z0-9-]{0,39}$";

    /// <summary>The name of an element with its output.</summary>
    public const string Element = @"^[A-Za-z0-9][A-Za-z0-9-]{0,39}(\.[0-9]{1,3})?$";

    /// <summary>A text that is not empty.</summary>
    public const string Text = @"\S";

    private const string Digits = @"(?:[0-9]{1,9}(?:\.[0-9]{1,12})?(?:[ -][0-9]{1,4}/[0-9]{1,4})?|[0-9]{1,4}/[0-9]{1,4})";
    private const string Seconds = "(?:[0-9]{1,2}(?:\\.[0-9]{1,6})?\\s*(?:[\"\u201D\u2033]|''|s)\\s*)?";

    /// <summary>A latitude or a longitude.</summary>
    /// <param name="latitude">Which of them.</param>
    public static string Coordinate(bool latitude)
    {
        var letter = latitude ? "[NS]" : "[EW]";
        var number = @"[0-9]{1,3}(?:\.[0-9]{1,12})?\s*(?:(?:deg|°)\s*(?:[0-9]{1,2}(?:\.[0-9]{1,8})?\s*(?:['" + "\u2019\u2032" + @"]|min)\s*" + Seconds + ")?)?";
        return $@"^(?:{letter}\s*{number}|{number}{letter})$";
    }

    /// <summary>A value with its unit.</summary>
    /// <param name="dimension">What it measures.</param>
    /// <param name="signed">Whether it may be below zero.</param>
    public static string Quantity(Dimension dimension, bool signed) => $"^{Bare(dimension, signed)}$";

    /// <summary>A wish for stations: any text, but a distance behind <c>all within</c>.</summary>
    public static string Wish => $@"^(?:all within {Bare(Dimension.Length, false)}|(?!all within ).*\S.*)$";

    private static string Bare(Dimension dimension, bool signed)
    {
        var sign = signed ? "[+-]?" : "\\+?";
        var units = string.Join('|', UnitTable.For(dimension).OrderByDescending(u => u.Name.Length).Select(u => Regex.Escape(u.Name).Replace("\\ ", " ", StringComparison.Ordinal)));
        var plain = $@"{sign}{Digits}\s*(?:{units})";
        if (dimension != Dimension.Length) return plain;
        // 14 ft 6 in, 12' 6", 25', 1/8"
        return $@"(?:{plain}|{sign}{Digits}\s*(?:ft\s+|['" + "\u2019\u2032" + $@"]\s*-?\s*)(?:{Digits}\s*(?:in|[""" + "\u201D\u2033" + $@"]))?|{sign}{Digits}\s*[""" + "\u201D\u2033" + "])";
    }

    /// <summary>A string of a form.</summary>
    /// <param name="pattern">The form.</param>
    public static JsonObject Of(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };
}
