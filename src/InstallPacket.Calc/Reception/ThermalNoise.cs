using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The noise that no receiver can be without.</summary>
public static class ThermalNoise
{
    /// <summary>Reference temperature of noise figures [K].</summary>
    public const double ReferenceK = 290;

    private const double Boltzmann = 1.380649e-23;

    /// <summary>The thermal noise power.</summary>
    public static readonly Formula PowerFormula = new(
        "thermal-noise",
        "Thermal noise in the channel",
        "N = 10 log10(k T B) + 30, k = 1.380649e-23 J/K",
        new("N", "dBm", "noise power"), [new("B", "MHz", "noise bandwidth"), new("T", "K", "temperature")],
        "ised-bpr-10", "appendix 8 prints -106.2 dBm for 6 MHz; the constant k is that of the SI", Provenance.Derived)
    {
        Method = v => Dbm(v[0], v[1]),
    };

    /// <summary>The thermal noise power.</summary>
    /// <param name="bandwidthMHz">Noise bandwidth [MHz], above 0; outside throws.</param>
    /// <param name="temperatureK">Temperature [K], above 0; outside throws.</param>
    /// <returns>Power [dBm].</returns>
    public static double Dbm(double bandwidthMHz, double temperatureK)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bandwidthMHz);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(temperatureK);
        return 10 * Math.Log10(Boltzmann * temperatureK * bandwidthMHz * 1e6) + 30;
    }
}
