using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Scatter loss at one distance.</summary>
/// <param name="LossDb">Loss [dB]; <see cref="ItmScatter.NotDefinedDb"/> when scatter is not defined.</param>
/// <param name="GainDb">Frequency gain H0 [dB], carried into the next call.</param>
internal readonly record struct ItmScatterAt(double LossDb, double GainDb);

/// <summary>Scatter from the air far beyond the horizon.</summary>
internal static class ItmScatter
{
    /// <summary>Stands for "no scatter here".</summary>
    public const double NotDefinedDb = 1001;

    private const double Sqrt2 = 1.4142135623730951;

    /// <summary>The loss.</summary>
    public static readonly Formula LossFormula = new(
        "itm-scatter",
        "Scatter loss",
        "A = Fs(th x) + 10 log10(f th^4) - 0.1 (Ns - 301) exp(-th x / 40000) + H0",
        new("A", "dB", "loss over free space"),
        [new("th", "rad", "angle between the horizon rays"), new("x", "m", "distance"), new("f", "MHz", "frequency"),
            new("Ns", "N-units", "refractivity at the ground"), new("H0", "dB", "frequency gain")],
        "ntia-itm", "troposcatter loss (cited there: The Algorithm, 4.63)");

    /// <summary>The frequency gain.</summary>
    public static readonly Formula GainFormula = new(
        "itm-scatter-gain",
        "Frequency gain of scatter",
        "H(r) = 10 log10(1 + a / r^4 + b / r^2), straight between whole eta from 1 to 5",
        new("H", "dB", "frequency gain"),
            [new("r", "", "twice the effective height in radians of the wave, times the scatter angle"),
            new("eta", "", "asymmetry of the scatter volume")],
        "ntia-itm", "frequency gain curves (cited there: The Algorithm, 6.13)");

    /// <summary>The attenuation function.</summary>
    public static readonly Formula AttenuationFormula = new(
        "itm-scatter-function",
        "Attenuation function of scatter",
        "Fs = 133.4 + 0.332e-3 t - 10 log10 t up to 10 km; 104.6 + 0.212e-3 t - 2.5 log10 t up to 70 km; 71.8 + 0.157e-3 t + 5 log10 t beyond",
        new("Fs", "dB", "attenuation"), [new("t", "m", "angle times distance")],
        "ntia-itm", "F(theta d) (cited there: The Algorithm, 6.9)");

    /// <summary>Scatter at a distance.</summary>
    /// <param name="terrain">The terrain work.</param>
    /// <param name="wave">The wave.</param>
    /// <param name="distanceM">Distance [m].</param>
    /// <param name="carriedDb">Frequency gain of the call before; -1 at first.</param>
    public static ItmScatterAt At(in ItmTerrain terrain, in ItmWave wave, double distanceM, double carriedDb)
    {
        var gain = carriedDb > 15 ? carriedDb : GainDb(terrain, wave, distanceM, carriedDb);
        if (gain is null) return new ItmScatterAt(NotDefinedDb, carriedDb);
        var bend = distanceM / terrain.EarthRadiusM - terrain.SightRad;
        var reach = bend * distanceM;
        var loss = AttenuationDb(reach) + 10 * Math.Log10(wave.FrequencyMHz * bend * bend * bend * bend)
            - 0.1 * (terrain.SurfaceRefractivity - 301) * Math.Exp(-reach / 40000) + gain.Value;
        return new ItmScatterAt(loss, gain.Value);
    }

    /// <summary>Fs [dB].</summary>
    public static double AttenuationDb(double reachM)
    {
        var log = Math.Log10(reachM);
        if (reachM <= 10e3) return 133.4 + 0.332e-3 * reachM - 10 * log;
        return reachM <= 70e3 ? 104.6 + 0.212e-3 * reachM - 2.5 * log : 71.8 + 0.157e-3 * reachM + 5 * log;
    }

    /// <summary>The curve H(r) for an asymmetry eta [dB].</summary>
    public static double CurveDb(double r, double eta)
    {
        eta = Math.Clamp(eta, 1, 5);
        var whole = (int)eta;
        var part = eta - whole;
        var lower = WholeCurveDb(whole, r);
        return part == 0 ? lower : (1 - part) * lower + part * WholeCurveDb(whole + 1, r);
    }

    private static double WholeCurveDb(int eta, double r)
    {
        var (a, b) = eta switch { 1 => (25, 24), 2 => (80, 45), 3 => (177, 68), 4 => (395, 80), _ => (705, 105) };
        var square = 1 / (r * r);
        return 10 * Math.Log10(1 + a * square * square + b * square);
    }

    // Null where scatter is not defined: both antennas too low for the wavelength.
    private static double? GainDb(in ItmTerrain terrain, in ItmWave wave, double distanceM, double carriedDb)
    {
        ItmEnd tx = terrain.Tx, rx = terrain.Rx;
        double shift = tx.HorizonM - rx.HorizonM, ratio = rx.EffectiveHeightM / tx.EffectiveHeightM;
        if (shift < 0) (shift, ratio) = (-shift, 1 / ratio);
        var angle = tx.HorizonRad + rx.HorizonRad + distanceM / terrain.EarthRadiusM;
        double r1 = 2 * wave.NumberPerM * angle * tx.EffectiveHeightM, r2 = 2 * wave.NumberPerM * angle * rx.EffectiveHeightM;
        if (r1 < 0.2 && r2 < 0.2) return null;
        var skew = (distanceM - shift) / (distanceM + shift);
        // The quotient uses the skew before it is limited.
        var quotient = Math.Clamp(ratio / skew, 0.1, 10);
        skew = Math.Max(0.1, skew);
        var eta = Asymmetry((distanceM - shift) * (distanceM + shift) * angle / (4 * distanceM), terrain.SurfaceRefractivity);
        var mean = (CurveDb(r1, eta) + CurveDb(r2, eta)) / 2;
        var correction = Math.Min(mean, 6 * (0.6 - Math.Log10(Math.Max(eta, 1))) * Math.Log10(skew) * Math.Log10(quotient));
        var gain = Math.Max(mean + correction, 0);
        if (eta < 1) gain = eta * gain + (1 - eta) * LowVolumeDb(r1, r2);
        return gain > 15 && carriedDb >= 0 ? carriedDb : gain;
    }

    // Cited in the source as The Algorithm, 4.66 and 4.67.
    private static double Asymmetry(double crossingM, double ns)
    {
        var height = Math.Min(1.7, crossingM / 8000);
        var square = height * height;
        return crossingM / 1755.6 * (1 + (0.031 - 2.32e-3 * ns + 5.67e-6 * ns * ns) * Math.Exp(-square * square * square));
    }

    private static double LowVolumeDb(double r1, double r2)
    {
        var product = (1 + Sqrt2 / r1) * (1 + Sqrt2 / r2);
        return 10 * Math.Log10(product * product * (r1 + r2) / (r1 + r2 + 2 * Sqrt2));
    }
}
