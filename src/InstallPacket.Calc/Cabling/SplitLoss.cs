using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>What dividing a signal must cost.</summary>
public static class SplitLoss
{
    /// <summary>The ideal loss of a splitter.</summary>
    public static readonly Formula IdealFormula = new(
        "split-loss",
        "Least loss of an even splitter",
        "A = 10 log10(n)",
        new("A", "dB", "loss to each output"), [new("n", "", "number of outputs")],
        "s07-power-divider", "theoretical split-loss table");

    /// <summary>The ideal loss of an even splitter; real parts lose 0.4 to 1.5 dB more.</summary>
    /// <param name="ways">Number of outputs, at least 1; less throws.</param>
    /// <returns>Loss to each output [dB].</returns>
    public static double IdealDb(int ways)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(ways, 1);
        return 10 * Math.Log10(ways);
    }
}
