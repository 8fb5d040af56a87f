using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>From ultimate wind to the loads that allowable stresses are compared with. Not to be mixed with European partial
/// factors.</summary>
public static class AllowableStress
{
    /// <summary>Share of the ultimate wind load.</summary>
    public const double WindFactor = 0.6;

    /// <summary>The load.</summary>
    public static readonly Formula WindLoadFormula = new(
        "wind-asd-load",
        "Wind load for checks by allowable stress",
        "Fa = 0.6 F",
        new("Fa", "N", "load for the check"), [new("F", "N", "load from the ultimate speed")],
        "asce-7-combinations", "load combinations for allowable stress; holds for pressures and line loads as well", Provenance.Memory)
    {
        Method = v => WindLoad(v[0]),
    };

    /// <summary>The speed that gives the same load.</summary>
    public static readonly Formula SpeedFormula = new(
        "wind-asd-speed",
        "Wind speed that belongs to the load by allowable stress",
        "Va = V sqrt(0.6)",
        new("Va", "m/s", "speed"), [new("V", "m/s", "ultimate speed")],
        "asce-7-combinations", "same load, written as a speed", Provenance.Memory);

    /// <summary>The load for a check by allowable stress, in the unit of the load put in.</summary>
    /// <param name="ultimate">Force [N], line load [N/m] or pressure [Pa] from the ultimate speed, not negative; outside throws.</param>
    /// <returns>Load in the same unit.</returns>
    public static double WindLoad(double ultimate) => WindFactor * Limit.AtLeast(ultimate, 0, "wind load in N, N/m or Pa");

    /// <summary>The speed that gives this load.</summary>
    /// <param name="ultimateMS">Ultimate speed [m/s], not negative; outside throws.</param>
    /// <returns>Speed [m/s].</returns>
    public static double SpeedMS(double ultimateMS) => Math.Sqrt(WindFactor) * Limit.AtLeast(ultimateMS, 0, "wind speed in m/s");
}
