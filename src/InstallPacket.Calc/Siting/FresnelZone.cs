using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>The zone around the ray that should stay clear.</summary>
public static class FresnelZone
{
    /// <summary>The order of the first zone.</summary>
    public static readonly Constant First = new("first-fresnel-zone", 1, "itu-p526", Provenance.Read);

    /// <summary>The radius of a Fresnel zone.</summary>
    public static readonly Formula RadiusFormula = new(
        "fresnel-radius",
        "Radius of a Fresnel zone at an obstruction",
        "R = sqrt(n lambda d1 d2 / (d1 + d2)) = 547.53 sqrt(n d1 d2 / ((d1 + d2) f))",
        new("R", "m", "radius"),
        [new("n", "", "order of the zone"), new("f", "MHz", "frequency"), new("d1", "km", "distance to one end"),
            new("d2", "km", "distance to the other end")],
        "itu-p526", "equation (2) of P.526-8; equation (3) rounds the factor to 550") { Method = v =>
            RadiusM((int)v[0], v[1], v[2], v[3]) };

    /// <summary>The radius of a Fresnel zone.</summary>
    /// <param name="order">Order of the zone, 1 for the first.</param>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <param name="distanceToOneEndKm">Distance to one end [km], not negative; outside throws.</param>
    /// <param name="distanceToOtherEndKm">Distance to the other end [km], not negative; outside throws.</param>
    /// <returns>Radius [m].</returns>
    public static double RadiusM(int order, double frequencyMHz, double distanceToOneEndKm, double distanceToOtherEndKm) =>
        Radius(Math.Sqrt(Wavelength.SpeedOfLightMMHz * 1000), order, frequencyMHz, distanceToOneEndKm, distanceToOtherEndKm);

    /// <summary>The radius by the rounded factor 550 of the recommendation's practical form, 0.45 % larger; for comparison with printed
    /// tables.</summary>
    /// <param name="order">Order of the zone, 1 for the first.</param>
    /// <param name="frequencyMHz">Frequency [MHz], above 0; outside throws.</param>
    /// <param name="distanceToOneEndKm">Distance to one end [km], not negative; outside throws.</param>
    /// <param name="distanceToOtherEndKm">Distance to the other end [km], not negative; outside throws.</param>
    /// <returns>Radius [m].</returns>
    public static double RoundedRadiusM(int order, double frequencyMHz, double distanceToOneEndKm, double distanceToOtherEndKm) =>
        Radius(550, order, frequencyMHz, distanceToOneEndKm, distanceToOtherEndKm);

    private static double Radius(double factor, int order, double frequencyMHz, double d1Km, double d2Km)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(order);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequencyMHz);
        ArgumentOutOfRangeException.ThrowIfNegative(d1Km);
        ArgumentOutOfRangeException.ThrowIfNegative(d2Km);
        return d1Km + d2Km == 0 ? 0 : factor * Math.Sqrt(order * d1Km * d2Km / ((d1Km + d2Km) * frequencyMHz));
    }
}
