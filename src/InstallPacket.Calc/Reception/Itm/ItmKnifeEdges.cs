using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Diffraction over the two horizons as knife edges.</summary>
internal static class ItmKnifeEdges
{
    // 1 / 4 pi as the model rounds it.
    private const double InverseFourPi = 0.0795775;

    /// <summary>One knife edge.</summary>
    public static readonly Formula EdgeFormula = new(
        "itm-knife-edge",
        "Loss over a knife edge",
        "A = 6.02 + 9.11 v - 1.27 v^2 for v < 2.4, else 12.953 + 20 log10(v)",
        new("A", "dB", "loss"), [new("v", "", "diffraction parameter")],
        "ntia-itm", "knife-edge fit (cited there: Technical Note 101, III.24)");

    /// <summary>One edge, from the square of its parameter [dB].</summary>
    public static double EdgeDb(double v2) => v2 < 5.76 ? 6.02 + 9.11 * Math.Sqrt(v2) - 1.27 * v2 : 12.953 + 10 * Math.Log10(v2);

    /// <summary>Both horizons [dB].</summary>
    /// <param name="wave">Wave number [1/m].</param>
    /// <param name="bendRad">Bend of the ray [rad].</param>
    /// <param name="beyondM">Distance beyond both horizons [m].</param>
    /// <param name="txHorizonM">Horizon of the transmitter [m].</param>
    /// <param name="rxHorizonM">Horizon of the receiver [m].</param>
    public static double LossDb(double wave, double bendRad, double beyondM, double txHorizonM, double rxHorizonM)
    {
        var common = InverseFourPi * wave * bendRad * bendRad * beyondM;
        return EdgeDb(common * txHorizonM / (beyondM + txHorizonM)) + EdgeDb(common * rxHorizonM / (beyondM + rxHorizonM));
    }
}
