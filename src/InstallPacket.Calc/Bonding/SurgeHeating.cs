using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>How hot a copper conductor gets in a surge that is too short for heat to leave it.</summary>
public static class SurgeHeating
{
    /// <summary>From 20 C to the melting point of copper, 1085 C [K]; recalled.</summary>
    public const double MeltingRiseK = 1065;

    private const double PerK = 3.92e-3;
    private const double OhmM = 17.8e-9;
    private const double DensityKgM3 = 8920;
    private const double HeatJKgK = 385;

    /// <summary>The rise.</summary>
    public static readonly Formula RiseFormula = new(
        "surge-heating",
        "Rise of temperature of copper in a surge",
        "dT = (exp((W/R) a r0 / (A^2 g c)) - 1) / a; a = 3.92e-3 /K, r0 = 17.8e-9 ohm m, g = 8920 kg/m3, c = 385 J/(kg K)",
        new("dT", "K", "rise of temperature"), [new("W/R", "J/ohm", "specific energy"), new("A", "mm2", "cross-section")],
        "iec-62305-1", "annex D, recalled; one published rise is met by it", Provenance.Memory)
    {
        Method = v => RiseK(v[0], v[1] * 1e-6),
    };

    /// <summary>The rise of temperature. Above <see cref="MeltingRiseK"/> the conductor melts and the number only says by how
    /// much.</summary>
    /// <param name="energyJPerOhm">Specific energy [J/ohm], 0 to 1e7; outside throws.</param>
    /// <param name="areaM2">Cross-section [m2], above 0 to 0.001; outside throws.</param>
    /// <returns>Rise [K].</returns>
    public static double RiseK(double energyJPerOhm, double areaM2)
    {
        Limit.Within(energyJPerOhm, 0, 1e7, "specific energy in J/ohm");
        var share = energyJPerOhm * PerK * OhmM / (Limit.Between(areaM2, 0, 1e-3, "cross-section in m2") * areaM2 * DensityKgM3 * HeatJKgK);
        return Math.Min(1e9, (Math.Exp(Math.Min(share, 100)) - 1) / PerK);
    }
}
