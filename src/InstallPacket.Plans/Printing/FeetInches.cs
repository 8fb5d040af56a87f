using System.Globalization;

namespace InstallPacket.Plans.Printing;

/// <summary>Prints lengths as feet, inches and fractions.</summary>
internal static class FeetInches
{
    private const double MetresPerInch = 0.0254;

    /// <summary>Feet and whole inches; below one foot whole inches alone.</summary>
    public static string Write(double metres)
    {
        var sign = metres < 0 ? "\u2212" : "";
        var inches = (long)Math.Round(Math.Abs(metres) / MetresPerInch, MidpointRounding.AwayFromZero);
        if (inches == 0) return "0\u00A0in";
        var (feet, rest) = (inches / 12, inches % 12);
        var text = feet == 0 ? $"{rest}\u00A0in" : rest == 0 ? $"{feet}\u00A0ft" : $"{feet}\u00A0ft\u00A0{rest}\u00A0in";
        return sign + text;
    }

    /// <summary>Inches with a fraction in lowest terms.</summary>
    public static string Fraction(double metres, int denominator)
    {
        var parts = (long)Math.Round(metres / MetresPerInch * denominator, MidpointRounding.AwayFromZero);
        var (whole, top, bottom) = (parts / denominator, parts % denominator, (long)denominator);
        while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
        var fraction = top == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{top}/{bottom}");
        var text = whole == 0 && top > 0 ? fraction : top == 0 ? whole.ToString(CultureInfo.InvariantCulture) : $"{whole} {fraction}";
        return text + "\u00A0in";
    }
}
