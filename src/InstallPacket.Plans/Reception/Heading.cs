using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans;

/// <summary>What a station would give at the noisiest outlet if the antenna pointed to some heading.</summary>
/// <param name="SignalDbm">Power at the antenna terminals for 90 % of the time.</param>
/// <param name="NoiseDbm">Noise there, with interference.</param>
/// <param name="MarginDb">Margin for 90 % of the time.</param>
/// <param name="Chance">Chance of reception, 0 to 1.</param>
internal readonly record struct HeadingMargin(double SignalDbm, double NoiseDbm, double MarginDb, double Chance);

/// <summary>Tries headings.</summary>
internal sealed class HeadingView(AntennaView antenna, ChainNoise chain)
{
    public HeadingMargin At(Arrival a, double headingDeg)
    {
        var signal = Power(a, a.FieldDbuvM, headingDeg);
        var noise = a.ThermalNoiseDbm + SystemNoise.FigureDb(a.ExternalNoiseDb, chain.WorstDb(a.Channel.CentreMHz));
        var margin = signal - noise - a.RequiredCnDb;
        return new(signal, noise, margin, Probability.OfMargin(margin + a.MedianDbuvM - a.FieldDbuvM, a.Spread.TotalDb));
    }

    /// <summary>Power of a field at the antenna terminals [dBm].</summary>
    public double Power(Arrival a, double fieldDbuvM, double headingDeg) =>
        FieldToPower.Dbm(fieldDbuvM, antenna.GainDbd(a.Channel.CentreMHz, Bearing.Turn(headingDeg, a.BearingTrueDeg)), a.Channel.CentreMHz);
}
