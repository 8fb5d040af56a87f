using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>Coax loses more when it is hot.</summary>
public static class CoaxTemperature
{
    /// <summary>The factor on the loss.</summary>
    public static readonly Formula FactorFormula = new(
        "coax-temperature",
        "Factor on the cable loss for its temperature",
        "k = 1 + 0.00198 (T - 20)",
        new("k", "", "factor on the loss at 20 C"), [new("T", "deg C", "temperature of the cable")],
        "s01-coax-temperature", "0.0011 per degree Fahrenheit from 68 F")
    {
        Method = v => Factor(v[0]),
    };

    /// <summary>The factor on the loss; only for the part of the run that is outdoors.</summary>
    /// <param name="celsius">Temperature of the cable [deg C], -40 to 70; outside throws. A dark jacket on a roof reaches 60 to 70.</param>
    /// <returns>Factor on the loss at 20 degrees.</returns>
    public static double Factor(double celsius)
    {
        if (!(celsius is >= -40 and <= 70)) throw new ArgumentOutOfRangeException(nameof(celsius), celsius,
            "The rule holds from -40 to 70 degrees Celsius.");
        return 1 + 0.0011 * 1.8 * (celsius - 20);
    }
}
