using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>A straight line laid through a stretch of ground.</summary>
/// <param name="StartM">Its height at the first sample of the whole profile [m].</param>
/// <param name="EndM">Its height at the last sample of the whole profile [m].</param>
internal readonly record struct ItmLineFit(double StartM, double EndM)
{
    /// <summary>The line.</summary>
    public static readonly Formula FitFormula = new(
        "itm-line-fit",
        "Straight line through a stretch of ground",
        "Y0 = mean - B c, Yn = mean + B (n - c); B = 12 sum(z (i - c)) / ((m^2 + 2) m), c = b - m / 2, m = b - a, end points at half weight",
        new("Y0", "m", "height of the line at the start"),
        [new("z", "m", "samples a to b"), new("c", "", "centre, in steps"), new("m", "", "steps of the stretch"),
            new("n", "", "steps of the profile")],
        "ntia-itm", "linear least squares fit");

    /// <summary>Fits between two distances.</summary>
    /// <remarks>The trapezoid rule with the divisor m^2 + 2, as published; ordinary regression gives another line.</remarks>
    /// <param name="z">Samples of the whole profile [m].</param>
    /// <param name="stepM">Step [m].</param>
    /// <param name="fromM">Start of the stretch [m].</param>
    /// <param name="toM">End of the stretch [m].</param>
    public static ItmLineFit Of(ReadOnlySpan<double> z, double stepM, double fromM, double toM)
    {
        var n = z.Length - 1;
        // The start rounds down and the end rounds up to whole samples.
        var a = (int)Math.Max(fromM / stepM, 0);
        var b = n - (int)Math.Max(n - toM / stepM, 0);
        if (b <= a)
        {
            a = Math.Max(a - 1, 0);
            b = n - Math.Max(n - (b + 1), 0);
        }
        double m = b - a, c = b - m / 2;
        var sum = (z[a] + z[b]) / 2;
        var moment = (z[a] - z[b]) / 2 * (-m / 2);
        var arm = a - c;
        foreach (var height in z[(a + 1)..b])
        {
            arm += 1;
            sum += height;
            moment += height * arm;
        }
        var mean = sum / m;
        var slope = moment * 12 / ((m * m + 2) * m);
        return new ItmLineFit(mean - slope * c, mean + slope * (n - c));
    }
}
