namespace InstallPacket.Terrain;

/// <summary>The height between four nodes, weighted by nearness; void nodes leave their weight to the others.</summary>
internal struct NodeBlend
{
    private double _sum, _weight;
    private bool _void;

    /// <summary>Adds a node.</summary>
    /// <param name="heightM">Its height [m], or null when it is not known.</param>
    /// <param name="share">Its share of the place, 0 to 1.</param>
    public void Add(double? heightM, double share)
    {
        if (share <= 0) return;
        if (heightM is not { } height)
        {
            _void = true;
            return;
        }
        _sum += height * share;
        _weight += share;
    }

    public readonly GroundHeight Height => _weight <= 0 ? new(0, HeightState.Void)
        : new(_sum / _weight, _void ? HeightState.Partial : HeightState.Known);
}
