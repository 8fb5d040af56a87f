namespace InstallPacket.Calc.Reception.P1812;

/// <summary>All of a path that does not depend on channel and time: worked out once, used for every channel.</summary>
public sealed class PreparedPath
{
    /// <summary>Works out a path. The transmitter is always the first end: ties and limits are not quite the same the other way
    /// round.</summary>
    /// <param name="profile">The profile, from the transmitter to the receiver.</param>
    /// <param name="tx">The transmitter.</param>
    /// <param name="rx">The receiver.</param>
    /// <param name="climate">The air over the path's centre.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the method's validity.</exception>
    public PreparedPath(ZonedProfile profile, PathEnd tx, PathEnd rx, PathClimate climate)
    {
        ArgumentNullException.ThrowIfNull(profile);
        Climate = climate.Checked();
        Frame = PathFrame.Of(profile, tx.Checked(nameof(tx)), rx.Checked(nameof(rx)), climate);
        Statistics = PathStatistics.Of(profile, climate.LatitudeDeg);
        Horizons = PathHorizons.Of(profile, Frame);
        Surface = SmoothSurface.Of(profile, Frame, Horizons);
        Ducting = DuctingPath.Of(Frame, Statistics, Horizons, Surface);
        ReceiverAtSea = profile.Zones[^1] == RadioZone.Sea;
        var tops = profile.Obstructions();
        MedianDiffraction = DeltaBullington.Of(profile.DistancesKm, tops, Frame, Surface, Frame.MedianRadiusKm);
        LayeredDiffraction = DeltaBullington.Of(profile.DistancesKm, tops, Frame, Surface, PathClimate.LayeredRadiusKm);
    }

    /// <summary>The air over the path's centre.</summary>
    public PathClimate Climate { get; }

    /// <summary>The line between the antennas.</summary>
    public PathFrame Frame { get; }

    /// <summary>Sea, land and layers.</summary>
    public PathStatistics Statistics { get; }

    /// <summary>The horizons.</summary>
    public PathHorizons Horizons { get; }

    /// <summary>The smooth surface.</summary>
    public SmoothSurface Surface { get; }

    /// <summary>The part of ducts and layers.</summary>
    public DuctingPath Ducting { get; }

    /// <summary>True when the receiver stands at sea, where places do not differ.</summary>
    public bool ReceiverAtSea { get; }

    internal DeltaBullington MedianDiffraction { get; }

    internal DeltaBullington LayeredDiffraction { get; }
}
