using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>The length of a wave in air, taken as in vacuum.</summary>
public static class Wavelength
{
    /// <summary>Speed of light [m MHz].</summary>
    public const double SpeedOfLightMMHz = 299.792458;

    /// <summary>The wavelength.</summary>
    public static readonly Formula MetresFormula = new(
        "wavelength", "Wavelength", "lambda = 299.792458 / f", new("lambda", "m", "wavelength"), [new("f", "MHz", "frequency")],
        "bipm-si", "speed of light", Provenance.Memory) { Method = v => Metres(v[0]) };

    /// <summary>The wavelength of a frequency.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Wavelength [m].</returns>
    public static double Metres(double frequencyMHz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        return SpeedOfLightMMHz / frequencyMHz;
    }
}
