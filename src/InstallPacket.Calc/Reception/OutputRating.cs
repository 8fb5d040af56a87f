using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What the printed output of an amplifier means for its intercept point and for many channels.</summary>
public static class OutputRating
{
    /// <summary>The intercept point.</summary>
    public static readonly Formula InterceptFormula = new(
        "oip3-from-rating",
        "Output intercept point from a two-tone rating",
        "OIP3 = U + R / 2",
        new("OIP3", "dBm", "output intercept point of third order"),
            [new("U", "dBm", "rated output of each of two tones"), new("R", "dB", "ratio to their products at that output")],
        "project-notes", "products of third order rise three times as fast as the tones", Provenance.Derived);

    /// <summary>The reduction by total power.</summary>
    public static readonly Formula DeratingFormula = new(
        "output-derating",
        "Reduction of a two-channel rating for N channels",
        "D = 10 log10(N - 1)",
        new("D", "dB", "reduction of each channel"), [new("N", "", "channels")],
        "project-notes", "equal total power, the safer rule", Provenance.Derived);

    /// <summary>The reduction by the practice of the trade.</summary>
    public static readonly Formula PracticeDeratingFormula = new(
        "output-derating-practice",
        "Reduction of a two-channel rating for N channels, by practice",
        "D = 7.5 log10(N - 1)",
        new("D", "dB", "reduction of each channel"), [new("N", "", "channels")],
        "project-notes", "long-standing practice with antenna amplifiers, recalled", Provenance.Memory);

    /// <summary>The compression point.</summary>
    public static readonly Formula CompressionFormula = new(
        "compression-from-oip3",
        "Compression point from the intercept point",
        "P1dB = OIP3 - 9.6",
        new("P1dB", "dBm", "output at which the gain falls by 1 dB"), [new("OIP3", "dBm", "output intercept point of third order")],
        "project-notes", "purely cubic amplifier; 10 to 12 dB in practice", Provenance.Memory);

    /// <summary>The intercept point from a rating with two equal tones. A rating with three tones needs a conversion of its own.</summary>
    /// <param name="outputDbm">Rated output of each tone [dBm].</param>
    /// <param name="ratioDb">Ratio to the products at that output [dB], above 0; outside throws.</param>
    /// <returns>Output intercept point of third order [dBm].</returns>
    public static double InterceptDbm(double outputDbm, double ratioDb) =>
        outputDbm + Limit.Between(ratioDb, 0, double.PositiveInfinity, "ratio to the products in dB") / 2;

    /// <summary>The reduction of a two-channel rating by total power.</summary>
    /// <param name="channels">Channels, at least 1; below throws.</param>
    /// <returns>Reduction of each channel [dB]; 0 for one and two.</returns>
    public static double DeratingDb(int channels) => 10 * Decades(channels);

    /// <summary>The reduction of a two-channel rating by the practice of the trade.</summary>
    /// <param name="channels">Channels, at least 1; below throws.</param>
    /// <returns>Reduction of each channel [dB]; 0 for one and two.</returns>
    public static double PracticeDeratingDb(int channels) => 7.5 * Decades(channels);

    /// <summary>The compression point of a purely cubic amplifier.</summary>
    /// <param name="oip3Dbm">Output intercept point of third order [dBm].</param>
    /// <returns>Output [dBm].</returns>
    public static double CompressionDbm(double oip3Dbm) => oip3Dbm - 9.6;

    private static double Decades(int channels)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(channels, 1);
        return Math.Log10(Math.Max(channels - 1, 1));
    }
}
