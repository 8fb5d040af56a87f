using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The normal deviate that a share of time or places exceeds, in the rational form that the method prescribes.</summary>
/// <remarks>It differs from the exact quantile by up to 4.5e-4; with the exact one the published results would not be met.</remarks>
public static class ShareQuantile
{
    // Beyond this share the tails are cut.
    private const double LeastShare = 1e-6;

    /// <summary>The inverse complementary normal distribution.</summary>
    public static readonly Formula InverseFormula = new(
        "p1812-share-quantile",
        "Normal deviate exceeded by a share",
        "I(x) = T - (2.515516698 + 0.802853 T + 0.010328 T^2) / (1 + 1.432788 T + 0.189269 T^2 + 0.001308 T^3), T = sqrt(-2 ln x) up to x = 0.5; I(x) = -I(1 - x) above",
        new("I", "", "normal deviate"), [new("x", "", "share, 0 to 1, cut to 1e-6 and 1 - 1e-6")],
        "itu-p1812", "approximation to the inverse cumulative normal distribution");

    /// <summary>The deviate that a share exceeds.</summary>
    /// <param name="share">Share, 0 to 1; cut to 1e-6 and 1 - 1e-6.</param>
    /// <returns>Deviate, falling with the share.</returns>
    public static double Inverse(double share)
    {
        var x = Math.Clamp(share, LeastShare, 1 - LeastShare);
        return x <= 0.5 ? Tail(x) : -Tail(1 - x);
    }

    private static double Tail(double x)
    {
        var t = Math.Sqrt(-2 * Math.Log(x));
        return t - (2.515516698 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    }
}
