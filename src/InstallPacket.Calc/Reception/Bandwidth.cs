namespace InstallPacket.Calc.Reception;

/// <summary>The noise bandwidth that goes with a transmission system.</summary>
/// <remarks>
/// ATSC 1.0 is counted in the whole 6 MHz channel although its filter is 5.38 MHz wide: the published planning chain pairs its C/N with
/// -106.2 dBm, the noise of 6 MHz, and the two belong together (0.47 dB on the safe side). ATSC 3.0 is counted the same way for the same
/// safety.
/// </remarks>
public static class Bandwidth
{
    private static readonly (string System, double WidthMHz, double NoiseMHz)[] Known =
    [
        ("ATSC 1.0", 6, 6),
        ("ATSC 3.0", 6, 6),
        ("DVB-T", 7, 6.66),
        ("DVB-T", 8, 7.61),
        ("DVB-T2", 7, 6.66),
        ("DVB-T2", 8, 7.61),
        ("ISDB-T", 6, 5.575),
    ];

    /// <summary>The noise bandwidth of a system in a channel.</summary>
    /// <param name="system">Name of the system as in the table of required C/N, for example <c>DVB-T2</c>.</param>
    /// <param name="channelWidthMHz">Width of the channel [MHz].</param>
    /// <returns>Noise bandwidth [MHz], or null when the pair is not known.</returns>
    public static double? NoiseMHz(string system, double channelWidthMHz)
    {
        foreach (var (name, width, noise) in Known)
        {
            if (name == system && width == channelWidthMHz) return noise;
        }
        return null;
    }
}
