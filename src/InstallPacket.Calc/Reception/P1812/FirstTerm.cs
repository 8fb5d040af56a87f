using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The first term of the residue series for diffraction round a smooth sphere of one ground.</summary>
public static class FirstTerm
{
    /// <summary>The first term.</summary>
    public static readonly Formula LossFormula = new(
        "p1812-first-term",
        "First term of diffraction round a sphere",
        "FT = -F(X) - G(bt Y1) - G(bt Y2); X = 21.88 bt (f/a^2)^(1/3) D, Y = 0.9575 bt (f^2/a)^(1/3) h; "
            + "F = 11 + 10 log10(X) - 17.6 X from X = 1.6, -20 log10(X) - 5.6488 X^1.425 below; "
            + "G(B) = 17.6 (B - 1.1)^0.5 - 5 log10(B - 1.1) - 8 above B = 2, 20 log10(B + 0.1 B^3) below, at least 2 + 20 log10(K)",
        new("FT", "dB", "loss"),
        [new("f", "GHz", "frequency"), new("a", "km", "effective radius"), new("D", "km", "length of the path"),
            new("h1", "m", "height of one antenna"),
            new("h2", "m", "height of the other"), new("eps", "", "relative permittivity, land 22, sea 80"),
                new("sigma", "S/m", "conductivity, land 0.003, sea 5")],
        "itu-p1812", "first-term part of spherical-earth diffraction");

    internal static double LandDb(in SmoothEarth path, double radiusKm, RadioWave wave) => LossDb(path, radiusKm, wave, 22, 0.003);

    internal static double SeaDb(in SmoothEarth path, double radiusKm, RadioWave wave) => LossDb(path, radiusKm, wave, 80, 5);

    private static double LossDb(in SmoothEarth path, double radiusKm, RadioWave wave, double permittivity, double conductivity)
    {
        var f = wave.FrequencyGHz;
        var k = Admittance(radiusKm, wave, permittivity, 18 * conductivity / f);
        double k2 = k * k, k4 = k2 * k2;
        var bt = (1 + 1.6 * k2 + 0.67 * k4) / (1 + 4.5 * k2 + 1.53 * k4);
        var x = 21.88 * bt * Math.Cbrt(f / (radiusKm * radiusKm)) * path.LengthKm;
        var perMetre = 0.9575 * bt * Math.Cbrt(f * f / radiusKm);
        return -Distance(x) - Height(bt * perMetre * path.TxM, k) - Height(bt * perMetre * path.RxM, k);
    }

    // Normalised surface admittance of the ground.
    private static double Admittance(double radiusKm, RadioWave wave, double permittivity, double loss)
    {
        var horizontal = 0.036 / Math.Cbrt(radiusKm * wave.FrequencyGHz) * Math.Pow((permittivity - 1) * (permittivity - 1) + loss * loss,
            -0.25);
        return wave.Polarisation == WavePolarisation.Horizontal ? horizontal
            : horizontal * Math.Sqrt(permittivity * permittivity + loss * loss);
    }

    private static double Distance(double x) =>
        x >= 1.6 ? 11 + 10 * Math.Log10(x) - 17.6 * x : -20 * Math.Log10(x) - 5.6488 * Math.Pow(x, 1.425);

    private static double Height(double b, double k)
    {
        var gain = b > 2 ? 17.6 * Math.Sqrt(b - 1.1) - 5 * Math.Log10(b - 1.1) - 8 : 20 * Math.Log10(b + 0.1 * b * b * b);
        return Math.Max(gain, 2 + 20 * Math.Log10(k));
    }
}
