using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Siting;

/// <summary>Turns a bearing of the author into a true one.</summary>
internal static class TrueBearing
{
    /// <summary>The true bearing [deg]; a magnetic one needs the declination, which is 0 when no model covers the date (a finding says
    /// so).</summary>
    public static double Of(Bearing bearing, CompassPlan compass) =>
        bearing.North == North.True ? bearing.Degrees : Bearing.Wrap(bearing.Degrees + (compass.DeclinationDeg ?? 0));
}
