using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>External noise and the noise of the chain together.</summary>
public static class SystemNoise
{
    /// <summary>The system noise figure.</summary>
    public static readonly Formula FigureFormula = new(
        "system-noise-figure",
        "System noise figure at the antenna terminals",
        "Fs = 10 log10(10^(Fa/10) - 1 + 10^(Fc/10))",
        new("Fs", "dB", "system noise figure"),
            [new("Fa", "dB", "external noise figure"), new("Fc", "dB", "noise figure of the chain from the antenna terminals on")],
        "itu-p372", "definition of the system noise factor, lossless antenna, all at 290 K; as in the reference notes", Provenance.Derived)
    {
        Method = v => FigureDb(v[0], v[1]),
    };

    /// <summary>The system noise figure.</summary>
    /// <param name="externalFactorDb">External noise figure [dB over k T0 B].</param>
    /// <param name="chainNoiseFigureDb">Noise figure of the chain, referred to the antenna terminals [dB], not negative; outside
    /// throws.</param>
    /// <returns>Noise figure [dB]; below 0 dB when a quiet sky meets a quiet amplifier.</returns>
    public static double FigureDb(double externalFactorDb, double chainNoiseFigureDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(chainNoiseFigureDb);
        return 10 * Math.Log10(Math.Pow(10, externalFactorDb / 10) - 1 + Math.Pow(10, chainNoiseFigureDb / 10));
    }
}
