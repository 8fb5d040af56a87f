using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>How uneven the ground of a path is.</summary>
internal static class ItmRoughness
{
    private const int MostTenths = 25;

    /// <summary>The irregularity of the ground.</summary>
    public static readonly Formula IrregularityFormula = new(
        "itm-terrain-irregularity",
        "Irregularity of the ground, delta-h",
        "dh = (Q10 - Q90) / (1 - 0.8 exp(-D / 50000)), Q the heights above a straight line exceeded by 10 and 90 % of the samples",
        new("dh", "m", "irregularity"),
            [new("Q10", "m", "upper height"), new("Q90", "m", "lower height"), new("D", "m", "stretch that counts")],
        "ntia-itm", "terrain irregularity (cited there: ERL 79-ITS 67, 3, inverted)");

    /// <summary>The irregularity seen over a distance.</summary>
    public static readonly Formula AtDistanceFormula = new(
        "itm-irregularity-at-distance",
        "Irregularity of the ground over a distance",
        "dh(x) = dh (1 - 0.8 exp(-x / 50000))",
        new("dh(x)", "m", "irregularity over the distance"), [new("dh", "m", "irregularity of the path"), new("x", "m", "distance")],
        "ntia-itm", "terrain irregularity at a distance (cited there: ERL 79-ITS 67, 3)");

    /// <summary>The spread of heights within the first Fresnel zone.</summary>
    public static readonly Formula SpreadFormula = new(
        "itm-height-spread",
        "Spread of the ground within the reflecting zone",
        "sigma = 0.78 r exp(-0.5 r^(1/4))",
        new("sigma", "m", "standard deviation"), [new("r", "m", "irregularity over the distance")],
        "ntia-itm", "sigma_h (cited there: ERL 79-ITS 67, 3.6a)");

    /// <summary>The irregularity over a distance [m].</summary>
    public static double At(double deltaHM, double distanceM) => deltaHM * (1 - 0.8 * Math.Exp(-distanceM / 50000));

    /// <summary>The spread of heights [m]; the fourth root as two square roots.</summary>
    public static double SpreadM(double roughM) => 0.78 * roughM * Math.Exp(-0.5 * Math.Sqrt(Math.Sqrt(roughM)));

    /// <summary>The irregularity of the ground between two distances.</summary>
    /// <param name="profile">The ground.</param>
    /// <param name="fromM">Start of the stretch that counts [m].</param>
    /// <param name="toM">Its end [m].</param>
    /// <returns>Delta-h [m]; 0 when the stretch holds less than two steps.</returns>
    public static double DeltaHM(TerrainProfile profile, double fromM, double toM)
    {
        double from = fromM / profile.StepM, to = toM / profile.StepM;
        if (to - from < 2) return 0;
        var tenth = Math.Clamp((int)(0.1 * (to - from + 8)), 4, MostTenths);
        Span<double> room = stackalloc double[10 * MostTenths - 5];
        var heights = room[..(10 * tenth - 5)];
        Resample(profile.ElevationsM, from, to, heights);
        Level(heights);
        var (high, low) = Spread(heights, tenth);
        return (high - low) / (1 - 0.8 * Math.Exp(-(toM - fromM) / 50000));
    }

    // Straight lines between samples; the last cell is never left, so nothing is read beyond the end.
    private static void Resample(ReadOnlySpan<double> z, double from, double to, Span<double> heights)
    {
        var step = (to - from) / (heights.Length - 1);
        var lastCell = z.Length - 2;
        for (var j = 0; j < heights.Length; j++)
        {
            var u = from + j * step;
            var i = Math.Min((int)u, lastCell);
            heights[j] = z[i] + (u - i) * (z[i + 1] - z[i]);
        }
    }

    private static void Level(Span<double> heights)
    {
        var last = heights.Length - 1;
        var line = ItmLineFit.Of(heights, 1, 0, last);
        var slope = (line.EndM - line.StartM) / last;
        for (var j = 0; j <= last; j++) heights[j] -= line.StartM + j * slope;
    }

    // The tenth-th from above and from below; the second search needs only what the first left on its lower side.
    private static (double High, double Low) Spread(Span<double> heights, int tenth)
    {
        var highAt = heights.Length - tenth;
        var high = ItmOrder.Smallest(heights, highAt);
        return (high, ItmOrder.Smallest(heights[..highAt], tenth - 1));
    }
}
