namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The radii of the aim card, from the roof in the middle outwards.</summary>
/// <param name="Centre">The antenna.</param>
/// <param name="Compass">Whether there is a ring of compass readings.</param>
internal sealed record RingGeometry(PaperPoint Centre, bool Compass)
{
    /// <summary>Depth of a ring of numbers.</summary>
    public const double BandMm = 6.8;

    /// <summary>Length of the longer ticks.</summary>
    public const double TickMm = 1.7;

    /// <summary>The circle of true degrees; its ticks point outwards to the marks.</summary>
    public double Outer { get; } = 48;

    /// <summary>The open field within; its edge is the circle of compass degrees, when there is one, with ticks inwards.</summary>
    public double Field => Outer - (Compass ? 2 : 1) * BandMm;

    /// <summary>The middle of the arcs of obstructions.</summary>
    public double Obstruction => Field - TickMm - 1.8;

    /// <summary>How far the house may reach.</summary>
    public double House => Field - 6.5;

    /// <summary>The circle on which the marks stand that leaders start from.</summary>
    public double Pins => Outer + 5.6;

    /// <summary>Leaders that must round the ring keep to this circle.</summary>
    public double Lane => Outer + 8.8;

    public PaperPoint At(double bearingDeg, double radius) => Polar.From(Centre, bearingDeg, radius);
}
