using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Loss over a free path, with what several rays and focusing take off for small shares of time.</summary>
/// <param name="FreeSpaceDb">Basic loss in free space, Lbfs [dB].</param>
/// <param name="BasicDb">Not exceeded for the wanted share of time, Lb0p [dB].</param>
/// <param name="LayeredDb">Not exceeded for the share of time with strong layers, Lb0beta [dB].</param>
public readonly record struct LineOfSightLoss(double FreeSpaceDb, double BasicDb, double LayeredDb)
{
    /// <summary>The loss over a free path.</summary>
    public static readonly Formula BasicFormula = new(
        "p1812-line-of-sight",
        "Loss over a free path for a share of time",
        "Lb0p = 92.4 + 20 log10(f) + 10 log10(D^2 + ((hts - hrs)/1000)^2) + 2.6 (1 - exp(-0.1 (dlt + dlr))) log10(p/50)",
        new("Lb0p", "dB", "basic transmission loss"),
        [new("f", "GHz", "frequency"), new("D", "km", "length of the path"), new("hts", "m", "transmitting antenna above sea level"),
            new("hrs", "m", "receiving antenna above sea level"), new("dlt", "km", "distance of the transmitter's horizon"),
            new("dlr", "km", "distance of the receiver's horizon"), new("p", "%", "share of time")],
        "itu-p1812", "equations (8) to (11)");

    internal static LineOfSightLoss Of(PreparedPath path, double frequencyGHz, double timePercent)
    {
        var rise = (path.Frame.TxAboveSeaM - path.Frame.RxAboveSeaM) / 1000;
        var freeSpace = 92.4 + 20 * Math.Log10(frequencyGHz)
            + 10 * Math.Log10(path.Frame.LengthKm * path.Frame.LengthKm + rise * rise); // (8)
        var q = 2.6 * (1 - Math.Exp(-0.1 * (path.Horizons.TxDistanceKm + path.Horizons.RxDistanceKm)));
        return new(freeSpace, freeSpace + q * Math.Log10(timePercent / 50), freeSpace
            + q * Math.Log10(path.Statistics.LayeredPercent / 50)); // (9) to (11)
    }
}
