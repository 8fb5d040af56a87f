using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>The length to cut.</summary>
public static class PieceLength
{
    /// <summary>Rounding to the cutting step.</summary>
    public static readonly Formula RoundUpFormula = new(
        "piece-length",
        "Length to cut, rounded up",
        "l = step x ceiling(L / step)",
        new("l", "m", "length to cut"), [new("L", "m", "length with all allowances"), new("step", "m", "cutting step")],
        "project-notes", "trade habit of rounding up to the next step", Provenance.CommonPractice)
    {
        Method = v => RoundUpM(v[0], v[1]),
    };

    /// <summary>The cutting step in feet [m]: half a foot.</summary>
    public static readonly Constant UsStep = new("cutting-step-us", 0.5 * Length.MetresPerFoot, "project-notes", Provenance.CommonPractice);

    /// <summary>The cutting step in metres [m].</summary>
    public static readonly Constant MetricStep = new("cutting-step-metric", 0.1, "project-notes", Provenance.CommonPractice);

    /// <summary>Rounds a length up to the next step.</summary>
    /// <param name="lengthM">Length with all allowances [m], not negative; outside throws.</param>
    /// <param name="stepM">Cutting step [m], above 0; outside throws.</param>
    /// <returns>Length to cut [m].</returns>
    public static double RoundUpM(double lengthM, double stepM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(lengthM);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stepM);
        // A length that is a whole number of steps must not gain one by binary rounding: a millionth of a step does not count.
        return Math.Ceiling(lengthM / stepM - 1e-6) * stepM;
    }
}
