using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Text;

/// <summary>Reads coordinates, bearings and plain numbers.</summary>
internal static partial class Direction
{
    /// <summary>Degrees, north and east positive, from decimal degrees (<c>44.29 N</c>, <c>N 44.29</c>) or degrees, minutes and seconds
    /// (<c>44°17'24" N</c>); null when it does not read.</summary>
    public static object? Coordinate(string text, bool latitude)
    {
        var match = CoordinateForm().Match(text.Trim());
        if (!match.Success || !PlainNumber(match.Groups["number"].Value, out var value)) return null;
        if (match.Groups["first"].Success == match.Groups["last"].Success || !Parts(match, ref value)) return null;
        var letter = (match.Groups["first"].Success ? match.Groups["first"] : match.Groups["last"]).Value[0];
        if (value < 0 || value > (latitude ? 90 : 180) || !(latitude ? "NS" : "EW").Contains(letter)) return null;
        return letter is 'S' or 'W' ? -value : value;
    }

    // Adds minutes and seconds; false when a part in front of another is no whole number, or one is 60 and more.
    private static bool Parts(Match match, ref double value)
    {
        if (!match.Groups["minutes"].Success) return true;
        if (value != Math.Floor(value) || !PlainNumber(match.Groups["minutes"].Value, out var minutes)) return false;
        var seconds = 0.0;
        if (match.Groups["seconds"].Success && (minutes != Math.Floor(minutes) || !PlainNumber(match.Groups["seconds"].Value, out seconds))) return false;
        value += (minutes / 60) + (seconds / 3600);
        return minutes < 60 && seconds < 60;
    }

    /// <summary>A bearing with its north; null when it does not read.</summary>
    public static object? Bearing(string text)
    {
        var match = BearingForm().Match(text.Trim());
        if (!match.Success || !PlainNumber(match.Groups["number"].Value, out var value) || value < 0 || value > 360) return null;
        return match.Groups["north"].Value == "true" ? Calc.Quantities.Bearing.FromTrue(value)
            : Calc.Quantities.Bearing.FromMagnetic(value);
    }

    /// <summary>A plain decimal number: digits, an optional sign, an optional dot.</summary>
    public static bool PlainNumber(string text, out double value)
    {
        value = 0;
        return NumberForm().IsMatch(text) && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
    }

    [GeneratedRegex(@"^((?<first>[NSEW])\s*)?(?<number>[0-9]{1,3}(\.[0-9]{1,12})?)\s*((deg|°)\s*((?<minutes>[0-9]{1,2}(\.[0-9]{1,8})?)\s*(['’′]|min)\s*"
        + @"((?<seconds>[0-9]{1,2}(\.[0-9]{1,6})?)\s*([""”″]|''|s)\s*)?)?)?(?<last>[NSEW])?\z", RegexOptions.ExplicitCapture)]
    private static partial Regex CoordinateForm();

    [GeneratedRegex(@"^(?<number>[0-9]{1,3}(\.[0-9]{1,6})?)\s*deg\s+(?<north>true|magnetic)\z", RegexOptions.ExplicitCapture)]
    private static partial Regex BearingForm();

    [GeneratedRegex(@"^[+-]?[0-9]{1,15}(\.[0-9]{1,15})?\z")]
    private static partial Regex NumberForm();
}
