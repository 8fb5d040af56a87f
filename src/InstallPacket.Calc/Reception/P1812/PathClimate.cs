using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The air over the centre of the path.</summary>
/// <param name="LatitudeDeg">Latitude of the path's centre [deg], -80 to 80.</param>
/// <param name="DeltaN">Lapse rate of refractivity in the lowest kilometre, as a positive number [N/km], above 0 and below 157.</param>
/// <param name="SeaLevelN0">Refractivity at sea level [N], 250 to 400.</param>
public readonly record struct PathClimate(double LatitudeDeg, double DeltaN = 45, double SeaLevelN0 = 325)
{
    /// <summary>Mean radius of the earth [km].</summary>
    public const double EarthRadiusKm = 6371;

    /// <summary>Effective radius while strong layers rule, three times the earth's [km].</summary>
    public const double LayeredRadiusKm = 3 * EarthRadiusKm;

    /// <summary>The effective radius.</summary>
    public static readonly Formula RadiusFormula = new(
        "p1812-effective-radius",
        "Median effective radius of the earth",
        "ae = 6371 * 157 / (157 - DN)",
        new("ae", "km", "effective radius for half of the time"), [new("DN", "N/km", "lapse rate of refractivity")],
        "itu-p1812", "equations (6), (7a)");

    /// <summary>The effective radius for half of the time.</summary>
    /// <returns>Radius [km].</returns>
    public double MedianRadiusKm() => EarthRadiusKm * (157 / (157 - DeltaN));

    /// <summary>The same climate, when it lies within the limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside.</exception>
    internal PathClimate Checked()
    {
        Limit.Within(LatitudeDeg, -80, 80, "latitude of the path's centre in degrees");
        Limit.Between(DeltaN, 0, 157, "lapse rate of refractivity in N/km");
        Limit.Within(SeaLevelN0, 250, 400, "refractivity at sea level in N");
        return this;
    }
}
