using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What a half-wave dipole makes of a field.</summary>
public static class DipoleFactor
{
    /// <summary>Gain of a half-wave dipole over an isotropic antenna [dB], as the trade rounds it.</summary>
    public const double DipoleGainDbi = 2.15;

    // (E^2 / 120 pi)(lambda^2 / 4 pi) 1.64 for 1 uV/m at 1 MHz is -75.0706 dBm; rounded as printed, so that the working can be followed by
    // hand.
    private const double AtOneMHz = -75.07;

    /// <summary>The dipole factor.</summary>
    public static readonly Formula KdFormula = new(
        "dipole-factor",
        "Dipole factor: power from a half-wave dipole in a field of 1 uV/m",
        "Kd = -75.07 - 20 log10(f)",
        new("Kd", "dBm - dB(uV/m)", "dipole factor"), [new("f", "MHz", "frequency")],
        "ised-bpr-10", "appendix 8 (published at 69, 194 and 615 MHz); constant from (E^2 / 120 pi)(lambda^2 / 4 pi) 1.64",
            Provenance.Derived);

    /// <summary>The dipole factor.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Kd [dBm less dB(uV/m)].</returns>
    public static double Kd(double frequencyMHz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        return AtOneMHz - 20 * Math.Log10(frequencyMHz);
    }

    /// <summary>Gain over isotropic from gain over a dipole.</summary>
    /// <param name="gainDbd">Gain [dBd].</param>
    /// <returns>Gain [dBi].</returns>
    public static double DbiFromDbd(double gainDbd) => gainDbd + DipoleGainDbi;

    /// <summary>Gain over a dipole from gain over isotropic.</summary>
    /// <param name="gainDbi">Gain [dBi].</param>
    /// <returns>Gain [dBd].</returns>
    public static double DbdFromDbi(double gainDbi) => gainDbi - DipoleGainDbi;
}
