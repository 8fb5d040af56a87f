using System.Text.RegularExpressions;

namespace InstallPacket.Jobs.Keys;

/// <summary>What somebody may have meant with a comma in a number: decimals, or groups of three digits.</summary>
internal static partial class DecimalComma
{
    /// <summary>The text with a dot in place of its comma; null when that does not read.</summary>
    /// <param name="text">What is written.</param>
    /// <param name="reads">Whether a text reads.</param>
    public static string? Dotted(string text, Func<string, bool> reads) =>
        text.Count(c => c == ',') == 1 && text.Replace(',', '.') is var dotted && reads(dotted) ? dotted : null;

    /// <summary>The text without the commas between groups of three digits; null when there are none, or when that does not read.</summary>
    /// <param name="text">What is written.</param>
    /// <param name="reads">Whether a text reads.</param>
    public static string? Grouped(string text, Func<string, bool> reads) =>
        Groups().IsMatch(text) && text.Replace(",", "", StringComparison.Ordinal) is var whole && reads(whole) ? whole : null;

    [GeneratedRegex(@"^[+-]?[1-9][0-9]{0,2}(,[0-9]{3})+(?![0-9,])")]
    private static partial Regex Groups();
}
