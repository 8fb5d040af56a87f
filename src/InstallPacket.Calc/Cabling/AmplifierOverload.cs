using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>How far an amplifier stays below its greatest output.</summary>
public static class AmplifierOverload
{
    /// <summary>The margin to overload.</summary>
    public static readonly Formula MarginFormula = new(
        "amplifier-overload",
        "Margin of the amplifier to its greatest total output",
        "M = Pmax - (P + G)",
        new("M", "dB", "margin; 3 dB or more is wanted"),
        [new("P", "dBm", "total power of all channels at the input"), new("G", "dB", "gain"), new("Pmax", "dBm", "greatest total output")],
        "project-notes", "level and gain", Provenance.Derived)
    {
        Method = v => MarginDb(v[0], v[1], v[2]),
    };

    /// <summary>The margin to overload.</summary>
    /// <param name="totalInputDbm">Total power of everything at the input, radio and mobile carriers included [dBm].</param>
    /// <param name="gainDb">Gain [dB].</param>
    /// <param name="maxOutputDbm">Greatest total output [dBm].</param>
    /// <returns>Margin [dB], negative in overload.</returns>
    public static double MarginDb(double totalInputDbm, double gainDb, double maxOutputDbm) => maxOutputDbm - (totalInputDbm + gainDb);
}
