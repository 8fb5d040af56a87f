using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>What a tap takes from the line that passes it.</summary>
public static class TapThroughLoss
{
    /// <summary>The ideal through loss of a tap.</summary>
    public static readonly Formula IdealFormula = new(
        "tap-through-loss",
        "Least through loss of a tap",
        "A = -10 log10(1 - 10^(-T/10))",
        new("A", "dB", "loss from input to output"), [new("T", "dB", "tap value")],
        "project-notes", "power that is tapped off is missing in the line", Provenance.Derived);

    /// <summary>The ideal through loss of a tap; real parts lose 0.3 to 0.9 dB more.</summary>
    /// <param name="tapDb">Tap value [dB], above 0; outside throws.</param>
    /// <returns>Loss from input to output [dB].</returns>
    public static double IdealDb(double tapDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tapDb);
        return -10 * Math.Log10(1 - Math.Pow(10, -tapDb / 10));
    }
}
