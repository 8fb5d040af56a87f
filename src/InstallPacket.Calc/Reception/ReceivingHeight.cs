using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What a higher antenna gains in open country.</summary>
public static class ReceivingHeight
{
    /// <summary>The gain with height.</summary>
    public static readonly Formula GainFormula = new(
        "receiving-height-gain",
        "Gain with receiving height, open or rural country",
        "g = K2 log10(h / href), K2 = 3.2 + 6.2 log10(f)",
        new("g", "dB", "change of the field"),
        [new("f", "MHz", "frequency"), new("h", "m", "height of the antenna above ground"),
            new("href", "m", "height for which the field is known")],
        "itu-p1546-6", "receiving height correction, rural case; there href is 10 m, here also the 9.1 m of the FCC curves")
    {
        Method = v => GainDb(v[0], v[1], v[2]),
    };

    /// <summary>The change of the field from one antenna height to another.</summary>
    /// <remarks>
    /// The rural case of the recommendation. Between houses or trees higher than the antenna the true change is larger; above clear line
    /// of sight with
    /// the first Fresnel zone free it is smaller.
    /// </remarks>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 4000; outside throws.</param>
    /// <param name="heightM">Antenna height above ground [m], at least 1; below throws, as in the recommendation.</param>
    /// <param name="referenceM">Height for which the field is known [m], at least 1; below throws.</param>
    /// <returns>Gain [dB], negative below the reference.</returns>
    public static double GainDb(double frequencyMHz, double heightM, double referenceM)
    {
        if (!(frequencyMHz is >= 30 and <= 4000)) throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz,
            "The rule holds from 30 to 4000 MHz.");
        ArgumentOutOfRangeException.ThrowIfLessThan(heightM, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(referenceM, 1);
        return SlopeDbPerDecade(frequencyMHz) * Math.Log10(heightM / referenceM);
    }

    /// <summary>The gain for ten times the height.</summary>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>K2 [dB per decade].</returns>
    public static double SlopeDbPerDecade(double frequencyMHz) => 3.2 + 6.2 * Math.Log10(frequencyMHz);
}
