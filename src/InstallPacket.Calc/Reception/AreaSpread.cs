using InstallPacket.Calc.Reception.Itm;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>How far the field at a house may lie from that of curves when nobody looked at the ground between: the area statistics of the
/// Irregular Terrain Model, for a house drawn at random where only the irregularity of the ground is stated.</summary>
public static class AreaSpread
{
    /// <summary>The irregularity of ordinary hilly country [m], taken where nothing is stated. Recalled class of the model.</summary>
    public const double HillsM = 90;

    private const double Standard = 13;
    private const double LightMPerUs = 299.792458;

    /// <summary>Spread between places.</summary>
    public static readonly Formula LocationFormula = new(
        "area-spread-location", "Spread of the field over places, ground unknown",
        "sl = 10 W / (W + 13), W = 2 pi dh (1 - 0.8 exp(-d / 50)) / lambda", new("sl", "dB", "standard deviation"),
        [new("f", "MHz", "frequency"), new("d", "km", "distance"), new("dh", "m", "irregularity of the ground")],
        "ntia-itm", "variability over locations (cited there: The Algorithm, 5.9)", Provenance.Read)
    {
        Method = v => LocationDb(v[0], v[1], v[2]),
    };

    /// <summary>Spread between situations.</summary>
    public static readonly Formula SituationFormula = new(
        "area-spread-situation", "Spread of the field over situations, ground unknown",
        "ss = 5 + 3 exp(-de / 100), de = 130 d / x where d < x, else 130 + d - x, x = (18 h1)^(1/2) + (18 h2)^(1/2) + (575.7e12 / k)^(1/3) / 1000",
        new("ss", "dB", "standard deviation"),
        [new("f", "MHz", "frequency"), new("d", "km", "distance"), new("h1", "m", "height of the transmitter"),
            new("h2", "m", "height of the antenna")],
        "ntia-itm", "variability over situations (cited there: The Algorithm, 5.3 and 5.10); h in m makes the roots km", Provenance.Read)
    {
        Method = v => SituationDb(v[0], v[1], v[2], v[3]),
    };

    /// <summary>Spread between places [dB].</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <param name="distanceKm">Distance [km], above 0; outside throws.</param>
    /// <param name="irregularityM">Irregularity of the ground [m], not negative; outside throws.</param>
    public static double LocationDb(double frequencyMHz, double distanceKm, double irregularityM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceKm);
        var waves = NumberPerM(frequencyMHz) * ItmRoughness.At(Limit.AtLeast(irregularityM, 0, "irregularity in m"), distanceKm * 1000);
        return 10 * waves / (waves + Standard);
    }

    /// <summary>Spread between situations [dB].</summary>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <param name="distanceKm">Distance [km], above 0; outside throws.</param>
    /// <param name="transmitterM">Height of the transmitter [m], not negative; outside throws.</param>
    /// <param name="antennaM">Height of the antenna [m], not negative; outside throws.</param>
    public static double SituationDb(double frequencyMHz, double distanceKm, double transmitterM, double antennaM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceKm);
        var extentKm = Math.Sqrt(18 * Limit.AtLeast(transmitterM, 0, "height in m")) + Math.Sqrt(18 * Limit.AtLeast(antennaM, 0, "height in m"))
            + Math.Cbrt(575.7e12 / NumberPerM(frequencyMHz)) / 1000;
        var effectiveKm = distanceKm < extentKm ? 130 * distanceKm / extentKm : 130 + distanceKm - extentKm;
        return 5 + 3 * Math.Exp(-effectiveKm / 100);
    }

    private static double NumberPerM(double frequencyMHz)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        return 2 * Math.PI * frequencyMHz / LightMPerUs;
    }
}
