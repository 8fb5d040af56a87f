using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>How far the signal stands above the noise.</summary>
public static class CarrierToNoise
{
    /// <summary>The carrier-to-noise ratio.</summary>
    public static readonly Formula RatioFormula = new(
        "carrier-to-noise",
        "Carrier-to-noise ratio",
        "C/N = P - N",
        new("C/N", "dB", "ratio"), [new("P", "dBm", "level of the channel"), new("N", "dBm", "noise referred to the same point")],
        "project-notes", "definition", Provenance.Derived);

    /// <summary>The carrier-to-noise ratio of a level and a noise power at the same point.</summary>
    /// <param name="levelDbm">Level of the channel [dBm].</param>
    /// <param name="noiseDbm">Noise, kTB and noise figure together [dBm].</param>
    /// <returns>Ratio [dB].</returns>
    public static double Db(double levelDbm, double noiseDbm) => levelDbm - noiseDbm;
}
