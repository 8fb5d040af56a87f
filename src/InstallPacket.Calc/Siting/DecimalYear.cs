namespace InstallPacket.Calc.Siting;

/// <summary>Dates as the magnetic models count them.</summary>
public static class DecimalYear
{
    /// <summary>The start of a day as a decimal year.</summary>
    /// <param name="date">The day.</param>
    /// <returns>Year + (day of year - 1) / days of the year [yr].</returns>
    public static double Of(DateOnly date) => date.Year + (date.DayOfYear - 1) / (DateTime.IsLeapYear(date.Year) ? 366.0 : 365.0);
}
