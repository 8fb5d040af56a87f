using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Loss along ducts and by reflection from layers, in its parts.</summary>
/// <param name="LowFrequencyDb">Loss of coupling at low frequencies, Alf [dB].</param>
/// <param name="TxShieldingDb">Shielding by the ground near the transmitter, Ast [dB].</param>
/// <param name="RxShieldingDb">Shielding by the ground near the receiver, Asr [dB].</param>
/// <param name="CouplingDb">Loss of coupling to the duct, Af [dB].</param>
/// <param name="TimeDb">Part that depends on the share of time, Ap [dB].</param>
/// <param name="BasicDb">Basic loss, Lba [dB].</param>
public readonly record struct DuctingLoss(double LowFrequencyDb, double TxShieldingDb, double RxShieldingDb, double CouplingDb,
    double TimeDb, double BasicDb)
{
    /// <summary>The loss along ducts.</summary>
    public static readonly Formula BasicFormula = new(
        "p1812-ducting",
        "Loss along ducts and by reflection from layers",
        "Lba = Af + 5e-5 ae f^(1/3) theta1 + Ap; Af = 102.45 + 20 log10(f) + 20 log10(dlt + dlr) + Alf + Ast + Asr + Act + Acr; "
            + "Ap = -12 + (1.2 + 3.7e-3 D) log10(p/beta) + 12 (p/beta)^Gamma",
        new("Lba", "dB", "basic transmission loss"),
        [new("f", "GHz", "frequency"), new("D", "km", "length of the path"), new("dlt", "km", "distance of the transmitter's horizon"),
            new("dlr", "km", "distance of the receiver's horizon"), new("ae", "km", "median effective radius"),
                new("theta1", "mrad", "angular distance with limited horizon angles"),
            new("p", "%", "share of time"), new("beta", "%", "share of time with ducts")],
        "itu-p1812", "equations (46) to (56)");

    /// <summary>The loss along ducts.</summary>
    /// <param name="path">The path's ducting part.</param>
    /// <param name="frequencyGHz">Frequency [GHz].</param>
    /// <param name="timePercent">Share of time [%].</param>
    /// <returns>Loss and parts.</returns>
    public static DuctingLoss Of(DuctingPath path, double frequencyGHz, double timePercent)
    {
        ArgumentNullException.ThrowIfNull(path);
        var h = path.Horizons;
        var low = frequencyGHz < 0.5 ? 45.375 - 137 * frequencyGHz + 92.5 * frequencyGHz * frequencyGHz : 0;
        var shieldT = ShieldingDb(h.TxElevationMrad, h.TxDistanceKm, frequencyGHz);
        var shieldR = ShieldingDb(h.RxElevationMrad, h.RxDistanceKm, frequencyGHz);
        var coupling = 102.45 + 20 * Math.Log10(frequencyGHz) + 20 * Math.Log10(h.TxDistanceKm + h.RxDistanceKm)
            + low + shieldT + shieldR + path.TxCoastDb + path.RxCoastDb; // (47)
        var ratio = timePercent / path.DuctedPercent;
        var time = -12 + (1.2 + 3.7e-3 * path.LengthKm) * Math.Log10(ratio) + 12 * Math.Pow(ratio, path.Gamma); // (53)
        var perMrad = 5e-5 * path.MedianRadiusKm * Math.Cbrt(frequencyGHz); // (51)
        return new(low, shieldT, shieldR, coupling, time, coupling + perMrad * path.AngleMrad + time); // (46), (50)
    }

    private static double ShieldingDb(double elevationMrad, double horizonKm, double frequencyGHz)
    {
        var excess = elevationMrad - 0.1 * horizonKm;
        return excess > 0
            ? 20 * Math.Log10(1 + 0.361 * excess * Math.Sqrt(frequencyGHz * horizonKm)) + 0.264 * excess * Math.Cbrt(frequencyGHz)
            : 0;
    }
}
