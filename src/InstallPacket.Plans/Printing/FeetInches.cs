using System.Globalization;

namespace InstallPacket.Plans.Printing;

/// <summary>Prints lengths as feet, inches and fractions.</summary>
internal static class FeetInches
{
    private const double MetresPerInch = 0.0254;

    /// <summary>Feet and whole inches; below one foot whole inches alone.</summary>
    public static string Write(double metres, NumberWords words)
    {
        var sign = metres < 0 ? words.Minus : "";
        var inches = (long)Math.Round(Math.Abs(metres) / MetresPerInch, MidpointRounding.AwayFromZero);
        var (foot, inch) = ("\u00A0" + words.Unit("ft"), "\u00A0" + words.Unit("in"));
        if (inches == 0) return "0" + inch;
        var (feet, rest) = (inches / 12, inches % 12);
        var text = feet == 0 ? $"{rest}{inch}" : rest == 0 ? $"{feet}{foot}" : $"{feet}{foot}\u00A0{rest}{inch}";
        return sign + text;
    }

    /// <summary>Inches with a fraction in lowest terms.</summary>
    public static string Fraction(double metres, int denominator, NumberWords words)
    {
        var parts = (long)Math.Round(metres / MetresPerInch * denominator, MidpointRounding.AwayFromZero);
        var (whole, top, bottom) = (parts / denominator, parts % denominator, (long)denominator);
        while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
        var fraction = top == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{top}/{bottom}");
        var text = whole == 0 && top > 0 ? fraction : top == 0 ? whole.ToString(CultureInfo.InvariantCulture) : $"{whole} {fraction}";
        return text + "\u00A0" + words.Unit("in");
    }
}
