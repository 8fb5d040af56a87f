using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>A span of cable that hangs through.</summary>
public static class Sag
{
    /// <summary>The length of a sagging span.</summary>
    public static readonly Formula LengthFormula = new(
        "sag-length",
        "Length of a sagging span",
        "L = sqrt(w^2 + 16 h^2) / 2 + w^2 / (8 h) asinh(4 h / w)",
        new("L", "m", "length"), [new("w", "m", "span"), new("h", "m", "dip in the middle")],
        "project-notes", "arc of a parabola", Provenance.Derived)
    {
        Method = v => LengthM(v[0], v[1]),
    };

    /// <summary>The length of a sagging span.</summary>
    /// <param name="spanM">Span [m], above 0; outside throws.</param>
    /// <param name="dipM">Dip in the middle [m], not negative; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double LengthM(double spanM, double dipM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spanM);
        ArgumentOutOfRangeException.ThrowIfNegative(dipM);
        var slope = 4 * dipM / spanM;
        // Below this slope asinh(x)/x loses its digits; the series 1 + x^2/6 is exact there.
        if (slope < 1e-4) return spanM * (1 + slope * slope / 6);
        return spanM / 2 * (Math.Sqrt(1 + slope * slope) + Math.Asinh(slope) / slope);
    }
}
