using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>Reflection at a mismatch, in the units of the trade.</summary>
public static class ReturnLoss
{
    /// <summary>The standing wave ratio of a return loss.</summary>
    public static readonly Formula VswrFormula = new(
        "vswr", "Standing wave ratio", "S = (1 + r) / (1 - r), r = 10^(-RL/20)",
        new("S", "", "standing wave ratio"), [new("RL", "dB", "return loss")],
        "project-notes", "definition of reflection", Provenance.Derived);

    /// <summary>The power lost by a reflection.</summary>
    public static readonly Formula MismatchFormula = new(
        "mismatch-loss", "Loss by a mismatch", "A = -10 log10(1 - r^2), r = 10^(-RL/20)",
        new("A", "dB", "power that does not enter"), [new("RL", "dB", "return loss")],
        "project-notes", "definition of reflection", Provenance.Derived);

    /// <summary>The share of voltage reflected.</summary>
    /// <param name="returnLossDb">Return loss [dB], not negative; outside throws.</param>
    /// <returns>Reflection, 0 to 1.</returns>
    public static double Reflection(double returnLossDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(returnLossDb);
        return Math.Pow(10, -returnLossDb / 20);
    }

    /// <summary>The standing wave ratio of a return loss.</summary>
    /// <param name="returnLossDb">Return loss [dB], not negative; outside throws.</param>
    /// <returns>Ratio, at least 1; infinite at 0 dB.</returns>
    public static double Vswr(double returnLossDb)
    {
        var r = Reflection(returnLossDb);
        return (1 + r) / (1 - r);
    }

    /// <summary>The return loss of a standing wave ratio.</summary>
    /// <param name="vswr">Ratio, at least 1; below throws.</param>
    /// <returns>Return loss [dB]; infinite at 1.</returns>
    public static double FromVswr(double vswr)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(vswr, 1);
        return -20 * Math.Log10((vswr - 1) / (vswr + 1));
    }

    /// <summary>The power lost by a reflection.</summary>
    /// <param name="returnLossDb">Return loss [dB], above 0 (infinite allowed); outside throws.</param>
    /// <returns>Loss [dB].</returns>
    public static double MismatchLossDb(double returnLossDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(returnLossDb);
        var r = Reflection(returnLossDb);
        return -10 * Math.Log10(1 - r * r) + 0.0;
    }
}
