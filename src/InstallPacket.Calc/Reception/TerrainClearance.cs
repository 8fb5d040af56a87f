using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What the ground in front of the receiving antenna costs when the field comes from curves without terrain.</summary>
/// <remarks>Only where somebody supplies the angle. A prediction over the terrain profile has it already.</remarks>
public static class TerrainClearance
{
    /// <summary>Least angle that counts [deg].</summary>
    public const double LeastDeg = 0.55;

    /// <summary>Greatest angle that counts [deg].</summary>
    public const double MostDeg = 40;

    /// <summary>Ground beyond this distance from the receiver does not count [m].</summary>
    public const double ReachM = 16_000;

    /// <summary>The correction of the field.</summary>
    public static readonly Formula CorrectionFormula = new(
        "terrain-clearance",
        "Change of the field by the ground in front of the receiver",
        "g = J(0.036 sqrt f) - J(0.065 theta sqrt f), theta within 0.55 to 40 deg; J(v) = 6.9 + 20 log10(sqrt((v - 0.1)^2 + 1) + v - 0.1)",
        new("g", "dB", "change of the field"), [new("f", "MHz", "frequency"), new("theta", "deg", "clearance angle")],
        "itu-p1546-6", "terrain clearance angle correction")
    {
        Method = v => CorrectionDb(v[0], v[1]),
    };

    /// <summary>The clearance angle.</summary>
    public static readonly Formula<ClearanceAngle> AngleFormula = new Formula(
        "terrain-clearance-angle",
        "Clearance angle at the receiving antenna",
        "theta = largest of atan((h - h0) / d) over the first 16 km, not beyond the transmitter",
        new("theta", "deg", "above the horizontal, without curvature of the earth"),
        [new("h0", "m", "antenna above sea level"), new("h", "m", "ground above sea level at the point that governs"),
            new("d", "m", "its distance")],
        "itu-p1546-6", "definition of the terrain clearance angle")
        .By<ClearanceAngle>((angle, _) => angle.AngleDeg);

    /// <summary>The correction of the field.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], 30 to 4000; outside throws.</param>
    /// <param name="angleDeg">Clearance angle [deg], -90 to 90, otherwise throws; counted within <see cref="LeastDeg"/> to
    /// <see cref="MostDeg"/>.</param>
    /// <returns>Change of the field [dB], hardly above 0.</returns>
    public static double CorrectionDb(double frequencyMHz, double angleDeg)
    {
        var root = Math.Sqrt(Limit.Within(frequencyMHz, 30, 4000, "frequency in MHz"));
        var theta = Math.Clamp(Limit.Within(angleDeg, -90, 90, "clearance angle in degrees"), LeastDeg, MostDeg);
        return KnifeEdge.LossDb(0.036 * root) - KnifeEdge.LossDb(0.065 * theta * root);
    }

    /// <summary>The clearance angle over a profile.</summary>
    /// <param name="profile">Ground from the transmitter, at its start, to the receiver, at its end; a step above <see cref="ReachM"/>
    /// throws.</param>
    /// <param name="antennaM">Receiving antenna above ground [m], not negative; outside throws.</param>
    /// <returns>Angle [deg] and the point that governs.</returns>
    public static ClearanceAngle Angle(TerrainProfile profile, double antennaM)
    {
        ArgumentNullException.ThrowIfNull(profile);
        Limit.Within(profile.StepM, 0, ReachM, "step of the profile in m");
        Limit.AtLeast(antennaM, 0, "antenna height in m");
        var ground = profile.ElevationsM;
        var own = ground[^1] + antennaM;
        var (steepest, steps) = (double.NegativeInfinity, 0);
        for (var i = 1; i < ground.Length && i * profile.StepM <= ReachM; i++)
        {
            var slope = (ground[^(i + 1)] - own) / (i * profile.StepM);
            if (slope > steepest) (steepest, steps) = (slope, i);
        }
        return new(Math.Atan(steepest) * Degrees.PerRadian, own, ground[^(steps + 1)], steps * profile.StepM);
    }
}

/// <summary>The clearance angle and the ground that makes it.</summary>
/// <param name="AngleDeg">Angle above the horizontal [deg], without curvature of the earth; negative over falling ground.</param>
/// <param name="AntennaM">Receiving antenna above sea level [m].</param>
/// <param name="GroundM">Ground above sea level at the point that governs [m].</param>
/// <param name="DistanceM">Distance of that point [m].</param>
public readonly record struct ClearanceAngle(double AngleDeg, double AntennaM, double GroundM, double DistanceM);
