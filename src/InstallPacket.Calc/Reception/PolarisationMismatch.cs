using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What an antenna loses on a wave that swings in another plane.</summary>
public static class PolarisationMismatch
{
    /// <summary>The loss between two linear polarisations.</summary>
    public static readonly Formula LossFormula = new(
        "polarisation-mismatch",
        "Loss by a turned plane of polarisation",
        "L = -10 log10(cos(a)^2 + sin(a)^2 10^(-X/10))",
        new("L", "dB", "loss"),
            [new("a", "deg", "angle between the planes"), new("X", "dB", "cross-polar ratio of the antenna in that direction")],
        "project-notes", "projection of the field on the antenna", Provenance.Derived)
    {
        Method = v => LossDb(v[0], v[1]),
    };

    /// <summary>The loss of a linear antenna on a circular wave.</summary>
    public static readonly Formula CircularFormula = new(
        "circular-into-linear",
        "Loss of a linear antenna on a circular wave",
        "L = 10 log10(2) where the power counts both planes, 0 where it is given for each plane",
        new("L", "dB", "loss against the power as given"), [new("n", "", "planes that the power counts, 1 or 2")],
        "project-notes", "half of the power swings in either plane", Provenance.Derived);

    /// <summary>The loss between two linear polarisations.</summary>
    /// <param name="angleDeg">Angle between the planes [deg], any turn.</param>
    /// <param name="crossPolarDb">Cross-polar ratio of the antenna [dB], not negative, infinite for an ideal one; outside throws. 16 to 20
    /// dB are usual.</param>
    /// <returns>Loss [dB], at most the cross-polar ratio.</returns>
    public static double LossDb(double angleDeg, double crossPolarDb)
    {
        if (!(crossPolarDb >= 0)) throw new ArgumentOutOfRangeException(nameof(crossPolarDb), crossPolarDb,
            "A cross-polar ratio is not negative.");
        if (!double.IsFinite(angleDeg)) throw new ArgumentOutOfRangeException(nameof(angleDeg), angleDeg, "The angle is no number.");
        var (sin, cos) = Degrees.SinCos(angleDeg);
        return Math.Max(0, -10 * Math.Log10(cos * cos + sin * sin * Math.Pow(10, -crossPolarDb / 10)));
    }

    /// <summary>The loss of a linear antenna on a circular or elliptical wave.</summary>
    /// <param name="powerIsPerPlane">True when the station's power is given for the plane of the antenna, false for the total of
    /// both.</param>
    /// <returns>Loss [dB].</returns>
    public static double CircularDb(bool powerIsPerPlane) => powerIsPerPlane ? 0 : 10 * Math.Log10(2);
}
