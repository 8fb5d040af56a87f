using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>The ripple that two mismatches make over frequency.</summary>
public static class MismatchRipple
{
    /// <summary>The ripple from peak to peak.</summary>
    public static readonly Formula PeakToPeakFormula = new(
        "mismatch-ripple",
        "Ripple between two mismatches, peak to peak",
        "r = 20 log10((1 + k) / (1 - k)), k = 10^(-(RL1 + RL2) / 20 - A / 10)",
        new("r", "dB", "peak to peak"),
            [new("RL1", "dB", "return loss at one end"), new("RL2", "dB", "return loss at the other end"),
            new("A", "dB", "one-way loss of the cable between")],
        "project-notes", "sum of the direct and the twice reflected wave", Provenance.Derived)
    {
        Method = v => PeakToPeakDb(v[0], v[1], v[2]),
    };

    /// <summary>The size of the twice reflected wave.</summary>
    /// <param name="returnLoss1Db">Return loss at one end [dB], not negative; outside throws.</param>
    /// <param name="returnLoss2Db">Return loss at the other end [dB], not negative; outside throws.</param>
    /// <param name="oneWayLossDb">Loss of the cable between, one way [dB], not negative; outside throws.</param>
    /// <returns>Share of the direct wave.</returns>
    public static double Echo(double returnLoss1Db, double returnLoss2Db, double oneWayLossDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(oneWayLossDb);
        return ReturnLoss.Reflection(returnLoss1Db) * ReturnLoss.Reflection(returnLoss2Db) * Math.Pow(10, -oneWayLossDb / 10);
    }

    /// <summary>The ripple from peak to peak.</summary>
    /// <param name="returnLoss1Db">Return loss at one end [dB], not negative; outside throws.</param>
    /// <param name="returnLoss2Db">Return loss at the other end [dB], not negative; outside throws.</param>
    /// <param name="oneWayLossDb">Loss of the cable between, one way [dB], not negative; outside throws.</param>
    /// <returns>Ripple [dB].</returns>
    public static double PeakToPeakDb(double returnLoss1Db, double returnLoss2Db, double oneWayLossDb)
    {
        var k = Echo(returnLoss1Db, returnLoss2Db, oneWayLossDb);
        return 20 * Math.Log10((1 + k) / (1 - k));
    }
}
