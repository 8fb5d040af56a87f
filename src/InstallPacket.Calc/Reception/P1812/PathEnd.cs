namespace InstallPacket.Calc.Reception.P1812;

/// <summary>One end of the path.</summary>
/// <param name="HeightM">Centre of the antenna above ground [m], 1 to 3000.</param>
/// <param name="CoastKm">Distance over land to the coast along the path [km]; 500 when no coast matters. An end at sea counts as 0,
/// whatever is given.</param>
public readonly record struct PathEnd(double HeightM, double CoastKm = 500)
{
    /// <summary>The same end, when it lies within the limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The height or the distance lies outside.</exception>
    internal PathEnd Checked(string name)
    {
        Limit.Within(HeightM, 1, 3000, "antenna height in m", name);
        Limit.AtLeast(CoastKm, 0, "distance to the coast in km", name);
        return this;
    }
}
