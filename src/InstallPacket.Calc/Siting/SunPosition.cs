using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>Where the sun stands.</summary>
/// <param name="AzimuthDeg">True bearing of the sun [deg], 0 &lt;= value &lt; 360.</param>
/// <param name="ElevationDeg">Elevation of its centre without the bending of air [deg].</param>
/// <param name="RefractedElevationDeg">Elevation as seen through air [deg].</param>
public sealed record SunAngles(double AzimuthDeg, double ElevationDeg, double RefractedElevationDeg);

/// <summary>The sun's place in the sky, to check a bearing without a compass.</summary>
public static class SunPosition
{
    private const double MinutesPerDay = 1440;

    /// <summary>The sun's true bearing.</summary>
    public static readonly Formula<DateTimeOffset> AzimuthFormula = new Formula(
        "sun-azimuth",
        "True bearing of the sun",
        "az = atan2(sin HA, cos HA sin lat - tan dec cos lat) + 180; HA = (UTC minutes + EoT + 4 lon) / 4 - 180",
        new("az", "deg", "clockwise from true north"),
        [new("lat", "deg", "latitude"), new("lon", "deg", "longitude, east positive"), new("t", "h UTC", "time of day")],
        "noaa-solar", "solar calculator equations", Provenance.Memory).By<DateTimeOffset>((instant, v) =>
            At(v[0], v[1], instant).AzimuthDeg);

    /// <summary>The sun seen from a place at an instant; good to 0.02 degrees from 1950 to 2050.</summary>
    /// <param name="latDeg">Latitude [deg], -90 to 90; outside throws.</param>
    /// <param name="lonDeg">Longitude [deg], east positive.</param>
    /// <param name="instant">The instant; its offset is taken into account.</param>
    /// <returns>Bearing and elevation.</returns>
    public static SunAngles At(double latDeg, double lonDeg, DateTimeOffset instant)
    {
        if (!(Math.Abs(latDeg) <= 90)) throw new ArgumentOutOfRangeException(nameof(latDeg), latDeg,
            "A latitude lies between -90 and 90 degrees.");
        var utc = instant.UtcDateTime;
        var julianDay = (utc - DateTime.UnixEpoch).TotalDays + 2440587.5;
        var (declination, equationOfTimeMin) = Sun((julianDay - 2451545) / 36525);
        var solarMinutes = utc.TimeOfDay.TotalMinutes + equationOfTimeMin + 4 * lonDeg;
        solarMinutes -= MinutesPerDay * Math.Floor(solarMinutes / MinutesPerDay);
        var (sinHour, cosHour) = Degrees.SinCos(solarMinutes / 4 - 180);
        var (sinLat, cosLat) = Degrees.SinCos(latDeg);
        var (sinDec, cosDec) = Math.SinCos(declination);
        var elevation = Math.Asin(Math.Clamp(sinLat * sinDec + cosLat * cosDec * cosHour, -1, 1)) * Degrees.PerRadian;
        var azimuth = Math.Atan2(sinHour, cosHour * sinLat - sinDec / cosDec * cosLat) * Degrees.PerRadian + 180;
        return new SunAngles(Bearing.Wrap(azimuth), elevation, elevation + RefractionDeg(elevation));
    }

    // Declination [rad] and equation of time [min] at T centuries from 2000.
    private static (double Declination, double EquationOfTimeMin) Sun(double t)
    {
        var l0 = Degrees.ToRadians(280.46646 + t * (36000.76983 + 0.0003032 * t));
        var m = Degrees.ToRadians(357.52911 + t * (35999.05029 - 0.0001537 * t));
        var e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
        var centre = Math.Sin(m) * (1.914602 - t * (0.004817 + 0.000014 * t))
            + Math.Sin(2 * m) * (0.019993 - 0.000101 * t) + 0.000289 * Math.Sin(3 * m);
        var node = Degrees.ToRadians(125.04 - 1934.136 * t);
        var lambda = l0 + Degrees.ToRadians(centre - 0.00569 - 0.00478 * Math.Sin(node));
        var seconds = 21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t));
        var tilt = Degrees.ToRadians(23 + (26 + seconds / 60) / 60 + 0.00256 * Math.Cos(node));
        var y = Math.Pow(Math.Tan(tilt / 2), 2);
        var minutes = 4 * Degrees.PerRadian * (y * Math.Sin(2 * l0) - 2 * e * Math.Sin(m) + 4 * e * y * Math.Sin(m) * Math.Cos(2 * l0)
            - y * y / 2 * Math.Sin(4 * l0) - 1.25 * e * e * Math.Sin(2 * m));
        return (Math.Asin(Math.Sin(tilt) * Math.Sin(lambda)), minutes);
    }

    private static double RefractionDeg(double el)
    {
        var t = Math.Tan(Degrees.ToRadians(el));
        var arcSeconds = el switch
        {
            > 85 => 0,
            > 5 => 58.1 / t - 0.07 / Math.Pow(t, 3) + 0.000086 / Math.Pow(t, 5),
            > -0.575 => 1735 + el * (-518.2 + el * (103.4 + el * (-12.79 + 0.711 * el))),
            _ => -20.772 / t,
        };
        return arcSeconds / 3600;
    }
}
