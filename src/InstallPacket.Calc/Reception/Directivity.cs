using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>How directivity is calculated from beamwidths.</summary>
public enum BeamRule
{
    /// <summary>All power in a beam of even strength: the upper bound.</summary>
    UpperBound,

    /// <summary>A usual beam.</summary>
    Usual,

    /// <summary>A beam with side lobes.</summary>
    WithSideLobes,
}

/// <summary>The directivity of an antenna whose beamwidths are known. Its gain is less by the losses.</summary>
public static class Directivity
{
    /// <summary>Directivity from two beamwidths.</summary>
    public static readonly Formula BeamwidthsFormula = new(
        "directivity-beamwidths",
        "Directivity from the beamwidths in two planes",
        "D = 10 log10(k / (E H)), k = 41253 at most, 32400 usually, 26000 with side lobes",
        new("D", "dBi", "directivity"),
            [new("E", "deg", "half-power beamwidth in one plane"), new("H", "deg", "half-power beamwidth in the other plane"),
            new("k", "deg^2", "solid angle factor")],
        "project-notes", "41253 square degrees are the sphere; the other two factors are recalled from antenna handbooks",
            Provenance.Memory);

    /// <summary>Directivity of the pattern model.</summary>
    public static readonly Formula CosineFormula = new(
        "directivity-cosine",
        "Directivity of a power of the cosine",
        "D = 10 log10(2 (n + 1))",
        new("D", "dBi", "directivity"), [new("n", "", "exponent of the power pattern")],
        "project-notes", "integral of the pattern over the forward half space, the same in all planes, nothing to the rear",
            Provenance.Derived);

    /// <summary>Directivity from two beamwidths.</summary>
    /// <param name="onePlaneDeg">Half-power beamwidth in one plane [deg], above 0 and below 180; outside throws.</param>
    /// <param name="otherPlaneDeg">Half-power beamwidth in the other plane [deg], above 0 and below 180; outside throws.</param>
    /// <param name="rule">What kind of beam.</param>
    /// <returns>Directivity [dBi].</returns>
    public static double FromBeamwidthsDbi(double onePlaneDeg, double otherPlaneDeg, BeamRule rule)
    {
        Limit.Between(onePlaneDeg, 0, 180, "beamwidth in degrees");
        Limit.Between(otherPlaneDeg, 0, 180, "beamwidth in degrees");
        return 10 * Math.Log10(SquareDegrees(rule) / (onePlaneDeg * otherPlaneDeg));
    }

    /// <summary>Directivity of the pattern model.</summary>
    /// <param name="exponent">Exponent of the power pattern, not negative, see <see cref="AntennaPattern.Exponent"/>; outside
    /// throws.</param>
    /// <returns>Directivity [dBi].</returns>
    public static double OfCosineDbi(double exponent) => 10 * Math.Log10(2 * (Limit.AtLeast(exponent, 0, "exponent") + 1));

    private static double SquareDegrees(BeamRule rule) => rule switch
    {
        BeamRule.UpperBound => 41253,
        BeamRule.Usual => 32400,
        _ => 26000,
    };
}
