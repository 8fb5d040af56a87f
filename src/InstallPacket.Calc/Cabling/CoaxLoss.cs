using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>The loss of a run of cable.</summary>
public static class CoaxLoss
{
    /// <summary>The loss of a run.</summary>
    public static readonly Formula LossFormula = new(
        "coax-loss",
        "Loss of a run of cable",
        "A = a / 100 x L x k",
        new("A", "dB", "loss of the run, connectors apart"),
        [new("a", "dB/100 m", "loss per length at 20 C"), new("L", "m", "length"), new("k", "", "factor for temperature")],
        "project-notes", "loss grows with length", Provenance.Derived)
    {
        Method = v => Db(v[0], v[1], v[2]),
    };

    /// <summary>The loss of a run, without its connectors.</summary>
    /// <param name="alphaDbPer100M">Loss per length at 20 degrees [dB per 100 m], not negative; outside throws.</param>
    /// <param name="lengthM">Length [m], not negative; outside throws.</param>
    /// <param name="factor">Factor for temperature, see <see cref="CoaxTemperature.Factor"/>.</param>
    /// <returns>Loss [dB].</returns>
    public static double Db(double alphaDbPer100M, double lengthM, double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(alphaDbPer100M);
        ArgumentOutOfRangeException.ThrowIfNegative(lengthM);
        ArgumentOutOfRangeException.ThrowIfNegative(factor);
        return alphaDbPer100M / 100 * lengthM * factor;
    }
}
