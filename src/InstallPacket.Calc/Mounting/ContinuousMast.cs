using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A mast held at two or more points: the foot or a bracket, further brackets, rings of guys.</summary>
/// <param name="SupportsM">Heights of the supports above the mast's foot, rising [m].</param>
/// <param name="FreeM">Free length above the highest one [m].</param>
/// <param name="TopN">Force of the antennas at the top [N].</param>
/// <param name="LineLoadNPerM">Wind along the mast [N/m].</param>
public sealed record HeldMast(IReadOnlyList<double> SupportsM, double FreeM, double TopN, double LineLoadNPerM);

/// <summary>What such a mast hands to its supports.</summary>
/// <param name="MomentsNm">Moment at each support [N m], hogging positive.</param>
/// <param name="SpanMomentsNm">Largest sagging moment of each span [N m], 0 where there is none.</param>
/// <param name="ReactionsN">Force at each support [N], positive against the wind.</param>
public sealed record HeldMastForces(IReadOnlyList<double> MomentsNm, IReadOnlyList<double> SpanMomentsNm, IReadOnlyList<double> ReactionsN)
{
    /// <summary>The largest moment anywhere [N m].</summary>
    public double GreatestNm => Math.Max(MomentsNm.Max(Math.Abs), SpanMomentsNm.Max());
}

/// <summary>
/// The theorem of three moments for a mast of one tube on supports that do not give. A ring of guys gives a little: the moment below it is
/// then larger and the pull of the
/// guys smaller than calculated.
/// </summary>
public static class ContinuousMast
{
    /// <summary>The moments at the supports.</summary>
    public static readonly Formula<double> MomentsFormula = new Formula(
        "mast-three-moments",
        "Moment of a mast held at several points, at a support",
        "M(i-1) L(i) + 2 M(i) (L(i) + L(i+1)) + M(i+1) L(i+1) = w (L(i)^3 + L(i+1)^3) / 4; M = 0 at the foot, F a + w a^2 / 2 at the highest support",
        new("M", "N m", "moment at the support"),
        [new("z", "m", "height of the support"), new("F", "N", "force at the top"), new("a", "m", "free length"),
            new("w", "N/m", "line load")],
        "project-notes", "mechanics of beams, rigid supports (theorem of three moments)", Provenance.Derived)
        .By<double>((moment, _) => moment);

    /// <summary>The force at a support.</summary>
    public static readonly Formula<double> ReactionFormula = new Formula(
        "mast-support-force",
        "Force of a mast held at several points, at a support",
        "R(i) = w (L(i) + L(i+1)) / 2 + (M(i) - M(i-1)) / L(i) + (M(i) - M(i+1)) / L(i+1); above the highest support F + w a",
        new("R", "N", "force, positive against the wind"),
        [new("z", "m", "height of the support"), new("F", "N", "force at the top"), new("a", "m", "free length"),
            new("w", "N/m", "line load")],
        "project-notes", "mechanics of beams, rigid supports", Provenance.Derived)
        .By<double>((reaction, _) => reaction);

    /// <summary>Moments and forces of a mast.</summary>
    /// <param name="mast">Two supports at least, rising; lengths above 0 to 100 m; outside throws.</param>
    public static HeldMastForces Of(HeldMast mast)
    {
        var spans = Spans(mast);
        var (a, w) = (Limit.Within(mast.FreeM, 0, 100, "free length in m"), Limit.AtLeast(mast.LineLoadNPerM, 0, "line load in N/m"));
        var top = Limit.AtLeast(mast.TopN, 0, "force on the mast in N");
        var moments = Moments(spans, w, top * a + w * a * a / 2);
        return new(moments, [.. spans.Select((l, i) => SpanMoment(l, w, moments[i], moments[i + 1]))],
            [.. moments.Select((_, i) => Reaction(i, spans, moments, w, top + w * a))]);
    }

    private static double[] Spans(HeldMast mast)
    {
        Limit.AtLeast(mast.SupportsM.Count, 2, "count of supports");
        return [.. mast.SupportsM.Skip(1).Zip(mast.SupportsM, (upper, lower) =>
            Limit.Between(upper - lower, 0, 100, "distance of supports in m"))];
    }

    // Three unknowns an equation, solved from the foot upwards and back (the matrix is tridiagonal and dominated by its diagonal).
    private static double[] Moments(double[] spans, double w, double topNm)
    {
        var n = spans.Length;
        var moments = new double[n + 1];
        moments[n] = topNm;
        var (ratio, shift) = (new double[n], new double[n]);
        for (var i = 1; i < n; i++)
        {
            var (below, above) = (spans[i - 1], spans[i]);
            var pivot = 2 * (below + above) - below * ratio[i - 1];
            ratio[i] = above / pivot;
            shift[i] = (w * (Cube(below) + Cube(above)) / 4 - below * shift[i - 1]) / pivot;
        }
        for (var i = n - 1; i > 0; i--) moments[i] = shift[i] - ratio[i] * moments[i + 1];
        return moments;
    }

    private static double Reaction(int i, double[] spans, double[] m, double w, double above)
    {
        var lower = i > 0 ? w * spans[i - 1] / 2 + (m[i] - m[i - 1]) / spans[i - 1] : 0;
        var upper = i < spans.Length ? w * spans[i] / 2 + (m[i] - m[i + 1]) / spans[i] : above;
        return lower + upper;
    }

    private static double SpanMoment(double length, double w, double low, double high)
    {
        if (w <= 0) return 0;
        // Sagging is largest where the shear is nil.
        var at = Math.Clamp(length / 2 + (low - high) / (w * length), 0, length);
        return Math.Max(0, w * at * (length - at) / 2 - low * (1 - at / length) - high * at / length);
    }

    private static double Cube(double x) => x * x * x;
}
