using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The field strength at which a reference installation just works.</summary>
public static class PlanningThreshold
{
    /// <summary>The threshold field.</summary>
    public static readonly Formula FieldFormula = new(
        "planning-threshold",
        "Threshold field of a reference installation",
        "E = C/N - Kd - G + L + Nt + Ns",
        new("E", "dB(uV/m)", "threshold field"),
        [new("C/N", "dB", "required carrier-to-noise ratio"), new("Kd", "dBm - dB(uV/m)", "dipole factor at the frequency"),
            new("G", "dBd", "antenna gain"),
            new("L", "dB", "loss of the downlead"), new("Nt", "dBm", "thermal noise"), new("Ns", "dB", "noise figure of the receiver")],
        "ised-bpr-10", "appendix 8; its term Ka is the change of Kd with frequency");

    /// <summary>The change of the UHF threshold with frequency.</summary>
    public static readonly Formula DipoleAdjustmentFormula = new(
        "dipole-adjustment",
        "Dipole adjustment of the UHF threshold",
        "Ka = 20 log10(615 / f)",
        new("Ka", "dB", "to be subtracted from the threshold at 615 MHz"), [new("f", "MHz", "frequency")],
        "ised-bpr-10", "appendix 8");

    /// <summary>The threshold field from its parts.</summary>
    /// <param name="requiredCnDb">Required carrier-to-noise ratio [dB].</param>
    /// <param name="dipoleFactorDb">Dipole factor at the frequency [dBm less dB(uV/m)], see <see cref="DipoleFactor.Kd"/>.</param>
    /// <param name="antennaGainDbd">Antenna gain [dBd].</param>
    /// <param name="downleadLossDb">Loss of the downlead [dB].</param>
    /// <param name="thermalNoiseDbm">Thermal noise in the channel [dBm].</param>
    /// <param name="noiseFigureDb">Noise figure of the receiver [dB].</param>
    /// <returns>Field strength [dB(uV/m)].</returns>
    public static double FieldDbuVm(
        double requiredCnDb, double dipoleFactorDb, double antennaGainDbd, double downleadLossDb, double thermalNoiseDbm,
            double noiseFigureDb) =>
        requiredCnDb - dipoleFactorDb - antennaGainDbd + downleadLossDb + thermalNoiseDbm + noiseFigureDb;

    /// <summary>The dipole adjustment of the UHF threshold.</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Ka [dB].</returns>
    public static double DipoleAdjustmentDb(double frequencyMHz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        return 20 * Math.Log10(615 / frequencyMHz);
    }
}
