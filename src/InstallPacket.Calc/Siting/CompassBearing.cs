using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>From the true bearing to the number on the compass.</summary>
public static class CompassBearing
{
    private static readonly string[] Points =
        ["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"];

    /// <summary>The magnetic bearing.</summary>
    public static readonly Formula MagneticFormula = new(
        "magnetic-bearing",
        "Magnetic bearing, as an undisturbed compass shows it",
        "M = T - D, folded into 0 <= M < 360",
        new("M", "deg", "clockwise from magnetic north"),
        [new("T", "deg", "true bearing"), new("D", "deg", "declination, east positive")],
        "usgs-bearings", "method 2") { Method = v => MagneticFromTrue(v[0], v[1]) };

    /// <summary>The magnetic bearing of a direction.</summary>
    /// <param name="trueDeg">True bearing [deg], any turn.</param>
    /// <param name="declinationDeg">Declination [deg], east positive.</param>
    /// <returns>Magnetic bearing [deg], 0 &lt;= value &lt; 360.</returns>
    public static double MagneticFromTrue(double trueDeg, double declinationDeg) => Bearing.Wrap(trueDeg - declinationDeg);

    /// <summary>The true bearing of a compass reading.</summary>
    /// <param name="magneticDeg">Magnetic bearing [deg], any turn.</param>
    /// <param name="declinationDeg">Declination [deg], east positive.</param>
    /// <returns>True bearing [deg], 0 &lt;= value &lt; 360.</returns>
    public static double TrueFromMagnetic(double magneticDeg, double declinationDeg) => Bearing.Wrap(magneticDeg + declinationDeg);

    /// <summary>Rounds a bearing for print, so that 359.98 becomes 0.0 and not 360.0.</summary>
    /// <param name="deg">Bearing [deg].</param>
    /// <param name="decimals">Decimals to keep, 0 to 10.</param>
    /// <returns>Rounded bearing [deg], 0 &lt;= value &lt; 360.</returns>
    public static double RoundForPrint(double deg, int decimals) =>
        Bearing.Wrap(Math.Round(Bearing.Wrap(deg), decimals, MidpointRounding.AwayFromZero));

    /// <summary>The nearest of the sixteen points of the compass, always from a true bearing.</summary>
    /// <param name="trueDeg">True bearing [deg].</param>
    /// <returns>Letters, for example <c>NNE</c>.</returns>
    public static string SixteenPoint(double trueDeg) => Points[(int)Math.Floor((Bearing.Wrap(trueDeg) + 11.25) / 22.5) % 16];
}
