using System.Globalization;

namespace InstallPacket.Calc.Sources;

/// <summary>Reads the numbers of embedded tables, always with a decimal point.</summary>
public static class CsvNumber
{
    /// <summary>The number in a cell; a cell that is no number is a broken table and throws.</summary>
    public static double Of(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>The whole number in a cell.</summary>
    public static int Whole(string text) => int.Parse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
}
