using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>A smooth stand-in for the pattern of a directional antenna.</summary>
public static class AntennaPattern
{
    /// <summary>The gain off the axis.</summary>
    public static readonly Formula RelativeGainFormula = new(
        "antenna-pattern",
        "Antenna gain off its axis",
        "g = max(10 n log10(cos(a)), -FB) for a < 90 deg, else -FB; n = log10(0.5) / log10(cos(w / 2))",
        new("g", "dB", "gain relative to the axis"),
        [new("a", "deg", "angle from the axis"), new("w", "deg", "half-power beamwidth"), new("FB", "dB", "front-to-back ratio")],
        "project-notes", "cosine-power model", Provenance.Derived)
    {
        Method = v => RelativeGainDb(v[0], v[1], v[2]),
    };

    /// <summary>The gain relative to the axis.</summary>
    /// <param name="offAxisDeg">Angle from the axis [deg], any sign and turn.</param>
    /// <param name="halfPowerBeamwidthDeg">Half-power beamwidth [deg], above 0 and below 180; outside throws.</param>
    /// <param name="frontToBackDb">Front-to-back ratio [dB], not negative; outside throws.</param>
    /// <returns>Gain [dB], 0 on the axis and never below minus the front-to-back ratio.</returns>
    public static double RelativeGainDb(double offAxisDeg, double halfPowerBeamwidthDeg, double frontToBackDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(frontToBackDb);
        var angle = Math.Abs(Math.IEEERemainder(offAxisDeg, 360));
        if (angle >= 90) return -frontToBackDb;
        var n = Exponent(halfPowerBeamwidthDeg);
        return Math.Max(10 * n * Math.Log10(Math.Cos(Degrees.ToRadians(angle))), -frontToBackDb) + 0.0;
    }

    /// <summary>The exponent of the cosine for a beamwidth.</summary>
    /// <param name="halfPowerBeamwidthDeg">Half-power beamwidth [deg], above 0 and below 180; outside throws.</param>
    /// <returns>Exponent of the power pattern.</returns>
    public static double Exponent(double halfPowerBeamwidthDeg)
    {
        if (!(halfPowerBeamwidthDeg is > 0 and < 180))
            throw new ArgumentOutOfRangeException(nameof(halfPowerBeamwidthDeg), halfPowerBeamwidthDeg,
                "A beamwidth lies between 0 and 180 degrees.");
        return Math.Log(0.5) / Math.Log(Math.Cos(Degrees.ToRadians(halfPowerBeamwidthDeg / 2)));
    }
}
