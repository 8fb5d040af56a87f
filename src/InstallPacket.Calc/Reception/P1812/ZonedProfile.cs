using System.Globalization;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Ground, clutter and zone along the path, from the transmitter to the receiver. Steps may be unequal.</summary>
/// <remarks>
/// Clutter stands between the ends only: the height given for the first and the last point is not used, so the distance to the second
/// and the last but one decides how near the first roof or tree stands. Keep the step the same for all predictions of a job, and leave
/// out of the profile what is counted by hand.
/// </remarks>
public sealed class ZonedProfile
{
    /// <summary>Fewest points of a profile.</summary>
    public const int FewestPoints = 5;

    /// <summary>Shortest path [km].</summary>
    public const double ShortestKm = 0.25;

    /// <summary>Longest path [km].</summary>
    public const double LongestKm = 3000;

    private readonly double[] _distancesKm;
    private readonly double[] _heightsM;
    private readonly double[] _clutterM;
    private readonly RadioZone[] _zones;

    /// <summary>Takes a copy of a profile.</summary>
    /// <param name="distancesKm">Distance from the transmitter [km], from 0, growing; at least <see cref="FewestPoints"/>, the last from
    /// <see cref="ShortestKm"/> to <see cref="LongestKm"/>.</param>
    /// <param name="heightsM">Ground above sea level [m].</param>
    /// <param name="clutterM">Height of clutter above ground [m], not negative; empty for bare ground.</param>
    /// <param name="zones">Zone of each point; empty for inland all the way.</param>
    /// <exception cref="ArgumentException">The lists are of different lengths.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the stated limits.</exception>
    public ZonedProfile(ReadOnlySpan<double> distancesKm, ReadOnlySpan<double> heightsM, ReadOnlySpan<double> clutterM,
        ReadOnlySpan<RadioZone> zones)
    {
        var count = distancesKm.Length;
        Limit.AtLeast(count, FewestPoints, "number of points of the profile", nameof(distancesKm));
        SameLength(count, heightsM.Length, nameof(heightsM));
        if (!clutterM.IsEmpty) SameLength(count, clutterM.Length, nameof(clutterM));
        if (!zones.IsEmpty) SameLength(count, zones.Length, nameof(zones));
        CheckDistances(distancesKm);
        foreach (var h in heightsM) Limit.Within(h, -1000, 10000, "ground height in m", nameof(heightsM));
        foreach (var r in clutterM) Limit.Within(r, 0, 1000, "clutter height in m", nameof(clutterM));
        foreach (var z in zones)
        {
            if (!Enum.IsDefined(z)) throw new ArgumentOutOfRangeException(nameof(zones), z, "A zone is sea, coastal land or inland.");
        }
        _distancesKm = distancesKm.ToArray();
        _heightsM = heightsM.ToArray();
        _clutterM = clutterM.IsEmpty ? new double[count] : clutterM.ToArray();
        _zones = zones.ToArray();
        if (zones.IsEmpty)
        {
            _zones = new RadioZone[count];
            Array.Fill(_zones, RadioZone.Inland);
        }
    }

    /// <summary>Number of points.</summary>
    public int Count => _distancesKm.Length;

    /// <summary>Length of the path [km].</summary>
    public double LengthKm => _distancesKm[^1];

    /// <summary>Distance of each point from the transmitter [km].</summary>
    public ReadOnlySpan<double> DistancesKm => _distancesKm;

    /// <summary>Ground above sea level at each point [m].</summary>
    public ReadOnlySpan<double> HeightsM => _heightsM;

    /// <summary>Clutter above ground at each point [m].</summary>
    public ReadOnlySpan<double> ClutterM => _clutterM;

    /// <summary>Zone of each point.</summary>
    public ReadOnlySpan<RadioZone> Zones => _zones;

    /// <summary>Ground with the clutter on it, bare at both ends [m above sea level].</summary>
    internal double[] Obstructions()
    {
        var tops = (double[])_heightsM.Clone();
        for (var i = 1; i < tops.Length - 1; i++) tops[i] += _clutterM[i];
        return tops;
    }

    private static void CheckDistances(ReadOnlySpan<double> distancesKm)
    {
        if (distancesKm[0] != 0)
            throw new ArgumentOutOfRangeException(nameof(distancesKm), distancesKm[0],
                string.Create(CultureInfo.InvariantCulture, $"The profile begins at {distancesKm[0]} km; it must begin at 0 km."));
        // A repeated distance would divide by zero further on.
        for (var i = 1; i < distancesKm.Length; i++)
        {
            if (!(distancesKm[i] > distancesKm[i - 1]))
                throw new ArgumentOutOfRangeException(nameof(distancesKm), distancesKm[i],
                    string.Create(CultureInfo.InvariantCulture, $"Distance {i} of the profile must lie beyond {distancesKm[i - 1]} km."));
        }
        Limit.Within(distancesKm[^1], ShortestKm, LongestKm, "length of the path in km", nameof(distancesKm));
    }

    private static void SameLength(int expected, int found, string name)
    {
        if (found != expected) throw new ArgumentException($"The list has {found} values for {expected} points.", name);
    }
}
