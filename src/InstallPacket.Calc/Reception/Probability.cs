using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>From a margin and its spread to a chance.</summary>
public static class Probability
{
    /// <summary>The chance that a margin holds.</summary>
    public static readonly Formula MarginFormula = new(
        "chance-of-margin",
        "Chance that the margin holds",
        "P = Phi(M / sigma)",
        new("P", "", "chance, 0 to 1"), [new("M", "dB", "margin of the median"), new("sigma", "dB", "spread of all independent parts")],
        "project-notes", "normal distribution of levels in dB", Provenance.Derived)
    {
        Method = v => OfMargin(v[0], v[1]),
    };

    /// <summary>The spread of independent parts.</summary>
    public static readonly Formula SigmaFormula = new(
        "combined-spread",
        "Spread of independent parts",
        "sigma = sqrt(sum of sigma_i^2)",
        new("sigma", "dB", "combined spread"), [new("sigma_i", "dB", "spread of each part")],
        "project-notes", "sum of variances", Provenance.Derived);

    /// <summary>The deviate of a share.</summary>
    public static readonly Formula QuantileFormula = new(
        "normal-quantile",
        "Normal deviate that a share does not exceed",
        "x such that Phi(x) = p",
        new("x", "", "deviate, in standard deviations"), [new("p", "", "share, 1e-6 to 1 - 1e-6")],
        "project-notes", "inverse of the normal distribution, by Newton's method", Provenance.Derived);

    /// <summary>The standard normal distribution function.</summary>
    /// <remarks>Power series phi(x) (x + x^3/3 + x^5/15 + ...), good to 1e-15 in the absolute sense.</remarks>
    /// <param name="x">Any number.</param>
    /// <returns>Probability of a value up to x, 0 to 1.</returns>
    public static double Normal(double x)
    {
        if (double.IsNaN(x)) return x;
        if (Math.Abs(x) > 8.3) return x > 0 ? 1 : 0;
        double term = x, sum = x;
        for (var k = 3; Math.Abs(term) > 1e-18 * Math.Abs(sum); k += 2)
        {
            term *= x * x / k;
            sum += term;
        }
        return Math.Clamp(0.5 + sum * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI), 0, 1);
    }

    /// <summary>The normal deviate that a share does not exceed, good to 1e-9.</summary>
    /// <param name="share">Share, 1e-6 to 1 - 1e-6; outside throws.</param>
    /// <returns>Deviate: negative below one half, 0 at it.</returns>
    public static double Quantile(double share)
    {
        Limit.Within(share, 1e-6, 1 - 1e-6, "share");
        // The rational form starts within 4.5e-4, so that each step squares a small error: three reach the end of the digits.
        var x = -ShareQuantile.Inverse(share);
        for (var step = 0; step < 3; step++) x -= (Normal(x) - share) * Math.Sqrt(2 * Math.PI) * Math.Exp(x * x / 2);
        return x;
    }

    /// <summary>The chance that a margin holds.</summary>
    /// <param name="marginDb">Margin of the median [dB].</param>
    /// <param name="sigmaDb">Spread [dB], above 0; outside throws.</param>
    /// <returns>Chance, 0 to 1.</returns>
    public static double OfMargin(double marginDb, double sigmaDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sigmaDb);
        return Normal(marginDb / sigmaDb);
    }

    /// <summary>The spread of independent parts together.</summary>
    /// <param name="sigmasDb">Spread of each part [dB].</param>
    /// <returns>Combined spread [dB].</returns>
    public static double CombinedSigmaDb(IEnumerable<double> sigmasDb)
    {
        ArgumentNullException.ThrowIfNull(sigmasDb);
        return Math.Sqrt(sigmasDb.Sum(s => s * s));
    }
}
