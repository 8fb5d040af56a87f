using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>How much of the path is sea and land, and how often strong layers form over it.</summary>
/// <param name="SeaFraction">Share of the path over sea, omega, 0 to 1.</param>
/// <param name="LongestLandKm">Longest stretch of land, coastal land included [km].</param>
/// <param name="LongestInlandKm">Longest stretch of inland [km].</param>
/// <param name="Tau">Weight of the inland stretch, 0 to 1.</param>
/// <param name="Mu1">Weakening of layers by land, 0 to 1.</param>
/// <param name="LayeredPercent">Share of time with lapse rates above 100 N/km in the lowest 100 m, beta0 [%]; always below 50.</param>
public sealed record PathStatistics(double SeaFraction, double LongestLandKm, double LongestInlandKm, double Tau, double Mu1,
    double LayeredPercent)
{
    /// <summary>The share of time with strong layers.</summary>
    public static readonly Formula LayeredFormula = new(
        "p1812-layered-time",
        "Share of time with strong layers near the ground",
        "beta0 = 10^(-0.015 |phi| + 1.67) mu1 mu4 up to 70 deg, 4.17 mu1 mu4 above; mu1 = min(1, (10^(-dtm/(16 - 6.6 tau)) + 10^(-5 (0.496 + 0.354 tau)))^0.2); "
            + "mu4 = mu1^(-0.935 + 0.0176 |phi|), mu1^0.3 above; tau = 1 - exp(-4.12e-4 dlm^2.41)",
        new("beta0", "%", "share of an average year"),
        [new("phi", "deg", "latitude of the path's centre"), new("dtm", "km", "longest stretch of land"),
            new("dlm", "km", "longest stretch of inland")],
        "itu-p1812", "equations (2) to (5)");

    /// <summary>The statistics of a profile.</summary>
    /// <param name="profile">The profile.</param>
    /// <param name="latitudeDeg">Latitude of the path's centre [deg].</param>
    /// <returns>Shares, stretches and the time with strong layers.</returns>
    public static PathStatistics Of(ZonedProfile profile, double latitudeDeg)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var sea = Runs(profile, static z => z == RadioZone.Sea).Total / profile.LengthKm;
        var land = Runs(profile, static z => z is RadioZone.CoastalLand or RadioZone.Inland).Longest;
        var inland = Runs(profile, static z => z == RadioZone.Inland).Longest;
        return Of(sea, land, inland, latitudeDeg);
    }

    /// <summary>The statistics of known stretches.</summary>
    /// <param name="seaFraction">Share of the path over sea, 0 to 1.</param>
    /// <param name="landKm">Longest stretch of land [km].</param>
    /// <param name="inlandKm">Longest stretch of inland [km].</param>
    /// <param name="latitudeDeg">Latitude of the path's centre [deg].</param>
    /// <returns>The same with the time of strong layers.</returns>
    public static PathStatistics Of(double seaFraction, double landKm, double inlandKm, double latitudeDeg)
    {
        var tau = 1 - Math.Exp(-4.12e-4 * Math.Pow(inlandKm, 2.41)); // (3)
        var mu1 = Math.Min(1, Math.Pow(Math.Pow(10, -landKm / (16 - 6.6 * tau)) + Math.Pow(10, -5 * (0.496 + 0.354 * tau)), 0.2)); // (2)
        var phi = Math.Abs(latitudeDeg);
        var mu4 = Math.Pow(mu1, phi <= 70 ? -0.935 + 0.0176 * phi : 0.3); // (4)
        var beta0 = (phi <= 70 ? Math.Pow(10, -0.015 * phi + 1.67) : 4.17) * mu1 * mu4; // (5)
        return new(seaFraction, landKm, inlandKm, tau, mu1, beta0);
    }

    // A run of points reaches half a step beyond its first and its last point, except at the ends of the path.
    private static (double Total, double Longest) Runs(ZonedProfile profile, Func<RadioZone, bool> belongs)
    {
        ReadOnlySpan<double> d = profile.DistancesKm;
        ReadOnlySpan<RadioZone> zones = profile.Zones;
        double total = 0, longest = 0;
        for (var a = 0; a < d.Length; a++)
        {
            if (!belongs(zones[a])) continue;
            var b = a;
            while (b + 1 < d.Length && belongs(zones[b + 1])) b++;
            var length = d[b] - d[a];
            if (b < d.Length - 1) length += (d[b + 1] - d[b]) / 2;
            if (a > 0) length += (d[a] - d[a - 1]) / 2;
            total += length;
            longest = Math.Max(longest, length);
            a = b;
        }
        return (total, longest);
    }
}
