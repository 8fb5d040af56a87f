using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Loss by scatter in the air, the way round every obstacle.</summary>
/// <remarks>On blocked paths below about 1 km the formula can fall below all others, which is an artefact of the method; see
/// <see cref="PathLoss.ScatterIsSuspect"/>.</remarks>
public static class Troposcatter
{
    /// <summary>The loss by scatter.</summary>
    public static readonly Formula LossFormula = new(
        "p1812-troposcatter",
        "Loss by scatter in the air",
        "Lbs = 190.1 + 25 log10(f) - 2.5 (log10(f/2))^2 + 20 log10(D) + 0.573 theta - 0.15 N0 - 10.125 (log10(50/p))^0.7",
        new("Lbs", "dB", "basic transmission loss"),
        [new("f", "GHz", "frequency"), new("D", "km", "length of the path"), new("theta", "mrad", "angular distance"),
            new("N0", "N", "refractivity at sea level"), new("p", "%", "share of time")],
        "itu-p1812", "section on tropospheric scatter");

    /// <summary>The loss by scatter.</summary>
    /// <param name="frequencyGHz">Frequency [GHz].</param>
    /// <param name="lengthKm">Length of the path [km].</param>
    /// <param name="angleMrad">Angular distance [mrad].</param>
    /// <param name="seaLevelN0">Refractivity at sea level [N].</param>
    /// <param name="timePercent">Share of time [%], up to 50: beyond, the formula has no value and the result is not a number.</param>
    /// <returns>Loss [dB].</returns>
    public static double LossDb(double frequencyGHz, double lengthKm, double angleMrad, double seaLevelN0, double timePercent)
    {
        var octave = Math.Log10(frequencyGHz / 2);
        return 190.1 + 25 * Math.Log10(frequencyGHz) - 2.5 * octave * octave + 20 * Math.Log10(lengthKm)
            + 0.573 * angleMrad - 0.15 * seaLevelN0
            - 10.125 * Math.Pow(Math.Log10(50 / timePercent), 0.7);
    }
}
