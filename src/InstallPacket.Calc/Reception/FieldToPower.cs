using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>From field strength to power at the antenna terminals.</summary>
public static class FieldToPower
{
    /// <summary>The power at the antenna terminals.</summary>
    public static readonly Formula PowerFormula = new(
        "field-to-power",
        "Power at the antenna terminals",
        "P = E + G - 20 log10(f) - 75.07",
        new("P", "dBm", "power into a matched load"),
        [new("E", "dB(uV/m)", "field strength"), new("G", "dBd", "antenna gain over a dipole"), new("f", "MHz", "frequency")],
        "project-notes", "P = (E^2 / 120 pi)(lambda^2 / 4 pi) G in decibels", Provenance.Derived)
    {
        Method = v => Dbm(v[0], v[1], v[2]),
    };

    /// <summary>The power at the antenna terminals, in a matched load.</summary>
    /// <param name="fieldDbuVm">Field strength [dB(uV/m)].</param>
    /// <param name="gainDbd">Antenna gain in the direction of the transmitter [dBd].</param>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <returns>Power [dBm].</returns>
    public static double Dbm(double fieldDbuVm, double gainDbd, double frequencyMHz) => fieldDbuVm + gainDbd
        + DipoleFactor.Kd(frequencyMHz);
}
