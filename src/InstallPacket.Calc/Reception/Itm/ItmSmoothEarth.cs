using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Diffraction over three rounded stretches of earth. What belongs to the ends does not change with distance and is
/// kept.</summary>
/// <param name="Wave">Frequency and ground.</param>
/// <param name="Reach">Sum of the normalised distances of both ends.</param>
/// <param name="HeightGainDb">Sum of both height gains [dB].</param>
internal readonly record struct ItmSmoothEarth(ItmWave Wave, double Reach, double HeightGainDb)
{
    // Earth of the 4/3 kind for which the series was tabulated [m].
    private const double ReferenceRadiusM = 4.0 / 3 * 6370e3;

    /// <summary>Diffraction over the rounded earth.</summary>
    public static readonly Formula LossFormula = new(
        "itm-smooth-earth",
        "Diffraction over the rounded earth (three radii)",
        "A = G(X0) - F(X1, K1) - F(X2, K2) - 20, G = 0.05751 X - 10 log10(X)",
        new("A", "dB", "loss"),
        [new("X0", "", "normalised distance of the whole"), new("X1", "", "of the transmitter"), new("X2", "", "of the receiver"),
            new("K1", "", "ground parameter of the transmitter"), new("K2", "", "of the receiver")],
        "ntia-itm", "smooth-earth diffraction after Vogler (cited there: The Algorithm, 4.20)");

    /// <summary>The height gain.</summary>
    public static readonly Formula HeightGainFormula = new(
        "itm-height-gain",
        "Height gain over the rounded earth",
        "F = 2.5e-5 X^2 / K - 8.686 w - 15, w = -ln K, for X < 200; 0.05751 X - 4.343 ln X beyond; 17.372 ln X - 117 where X w^3 > 5495",
        new("F", "dB", "height gain"), [new("X", "", "normalised distance"), new("K", "", "ground parameter")],
        "ntia-itm", "height gain function after Vogler");

    public static ItmSmoothEarth Of(in ItmWave wave, in ItmEnd tx, in ItmEnd rx)
    {
        var impedance = wave.Impedance.Magnitude;
        var (x1, f1) = End(wave.CubeRoot, impedance, tx);
        var (x2, f2) = End(wave.CubeRoot, impedance, rx);
        return new ItmSmoothEarth(wave, x1 + x2, f1 + f2);
    }

    /// <summary>The loss [dB], NaN where the series is not defined.</summary>
    /// <param name="bendRad">Bend of the ray [rad].</param>
    /// <param name="beyondM">Distance beyond both horizons [m].</param>
    public double LossDb(double bendRad, double beyondM)
    {
        var (scale, _) = Scale(Wave.CubeRoot, Wave.Impedance.Magnitude, beyondM / bendRad);
        var x0 = scale * beyondM / 1000 + Reach;
        // Over a very good conductor with a close high horizon the ends outweigh the middle. The published program makes free space of the
        // missing logarithm, behind a wall; a NaN leads to a refusal.
        if (!(x0 > 0)) return double.NaN;
        return 0.05751 * x0 - 10 * Math.Log10(x0) - HeightGainDb - 20;
    }

    /// <summary>The height gain F(X, K) [dB].</summary>
    public static double HeightGain(double x, double k)
    {
        if (x < 200)
        {
            var w = -Math.Log(k);
            if (k < 1e-5 || x * w * w * w > 5495) return x > 1 ? 17.372 * Math.Log(x) - 117 : -117;
            return 2.5e-5 * x * x / k - 8.686 * w - 15;
        }
        var log = Math.Log(x);
        var far = 0.05751 * x - 4.343 * log;
        if (x >= 2000) return far;
        var weight = 0.0134 * x * Math.Exp(-0.005 * x);
        return (1 - weight) * far + weight * (17.372 * log - 117);
    }

    private static (double X, double F) End(double cubeRoot, double impedance, in ItmEnd end)
    {
        var radius = end.HorizonM * end.HorizonM / (2 * end.EffectiveHeightM);
        var (scale, k) = Scale(cubeRoot, impedance, radius);
        var x = scale * end.HorizonM / 1000;
        return (x, HeightGain(x, k));
    }

    // Normalised distance per kilometre, B C^2 f^(1/3), and ground parameter K of a stretch with this radius.
    private static (double Scale, double K) Scale(double cubeRoot, double impedance, double radiusM)
    {
        var c = Math.Cbrt(ReferenceRadiusM / radiusM);
        var k = 0.017778 * c / (cubeRoot * impedance);
        return ((1.607 - k) * c * c * cubeRoot, k);
    }
}
