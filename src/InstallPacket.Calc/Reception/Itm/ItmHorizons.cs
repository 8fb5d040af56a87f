using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>What each end of a path sees first: the other end, or the ground between.</summary>
/// <param name="TxRad">Angle of the transmitter's horizon above its level [rad].</param>
/// <param name="RxRad">Angle of the receiver's horizon above its level [rad].</param>
/// <param name="TxM">Distance of the transmitter's horizon [m]; the whole path when it sees the receiver.</param>
/// <param name="RxM">Distance of the receiver's horizon [m]; the whole path when it sees the transmitter.</param>
public readonly record struct ItmHorizons(double TxRad, double RxRad, double TxM, double RxM)
{
    // The product form of the comparison may stray from the published quotient form by rounding, some 1e-15 rad; within this slack the
    // quotient decides.
    private const double SlackRad = 1e-9;

    /// <summary>The horizon of the transmitter.</summary>
    public static readonly Formula HorizonFormula = new(
        "itm-horizon",
        "Angle of the radio horizon",
        "theta = max over the ground and the far end of (z - y) / x - x / (2 ae)",
        new("theta", "rad", "angle above level"),
        [new("z", "m", "ground, or the far antenna"), new("y", "m", "own antenna above sea level"), new("x", "m", "distance"),
            new("ae", "m", "effective earth radius")],
        "ntia-itm", "horizons of a profile (cited there: Technical Note 101, 6.15)");

    /// <summary>Scans a profile from both ends.</summary>
    /// <param name="profile">The ground, transmitter first.</param>
    /// <param name="txHeightM">Transmitting antenna above ground [m].</param>
    /// <param name="rxHeightM">Receiving antenna above ground [m].</param>
    /// <param name="earthRadiusM">Effective earth radius [m].</param>
    /// <returns>Both horizons.</returns>
    public static ItmHorizons Of(TerrainProfile profile, double txHeightM, double rxHeightM, double earthRadiusM)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var z = profile.ElevationsM;
        double d = profile.LengthM, s = profile.StepM, twoAe = 2 * earthRadiusM, bend = 1 / twoAe;
        double y1 = z[0] + txHeightM, y2 = z[^1] + rxHeightM;
        double theta1 = (y2 - y1) / d - d / twoAe, theta2 = (y1 - y2) / d - d / twoAe;
        double d1 = d, d2 = d;
        // Running sums, not i s: the last bit decides which points the fits of the effective heights take in. Strictly greater: the first
        // of equals wins.
        double x = 0, rest = d;
        for (var i = 1; i < z.Length - 1; i++)
        {
            x += s;
            rest -= s;
            // Divisions are dear and few points raise a horizon, so a product sorts out the others.
            if (z[i] - y1 > (theta1 - SlackRad + x * bend) * x)
            {
                var t1 = (z[i] - y1) / x - x / twoAe;
                if (t1 > theta1) (theta1, d1) = (t1, x);
            }
            if (z[i] - y2 > (theta2 - SlackRad + rest * bend) * rest)
            {
                var t2 = (z[i] - y2) / rest - rest / twoAe;
                if (t2 > theta2) (theta2, d2) = (t2, rest);
            }
        }
        return new ItmHorizons(theta1, theta2, d1, d2);
    }
}
