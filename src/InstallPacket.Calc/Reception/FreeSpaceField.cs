using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The field with nothing in the way.</summary>
public static class FreeSpaceField
{
    // 1 kW on a half-wave dipole (gain 1.64) at 1 km: E = sqrt(30 x 1.64 x 1000) / 1000 V/m, in dB over 1 uV/m.
    private const double OneKilowattAtOneKmDbuVm = 106.92;

    /// <summary>The free-space field.</summary>
    public static readonly Formula FieldFormula = new(
        "free-space-field",
        "Field strength in free space",
        "E = 106.92 + 10 log10(P) - 20 log10(d)",
        new("E", "dB(uV/m)", "field strength"), [new("P", "kW", "effective radiated power on a dipole"), new("d", "km", "distance")],
        "fcc-curves", "free-space branch (P.1546 rounds the constant to 106.9)")
    {
        Method = v => DbuVm(v[0], v[1]),
    };

    /// <summary>The free-space field.</summary>
    /// <param name="erpKw">Effective radiated power, on a dipole [kW], above 0; outside throws.</param>
    /// <param name="distanceKm">Distance [km], above 0; outside throws.</param>
    /// <returns>Field strength [dB(uV/m)].</returns>
    public static double DbuVm(double erpKw, double distanceKm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(erpKw);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceKm);
        return OneKilowattAtOneKmDbuVm + 10 * Math.Log10(erpKw) - 20 * Math.Log10(distanceKm);
    }
}
