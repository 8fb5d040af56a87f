namespace InstallPacket.Drawings;

/// <summary>The radii of the aim card, from the roof in the middle outwards.</summary>
/// <param name="Centre">The antenna.</param>
/// <param name="Compass">Whether there is a ring of compass readings.</param>
internal sealed record RingGeometry(PaperPoint Centre, bool Compass)
{
    /// <summary>Depth of a ring of numbers.</summary>
    public const double BandMm = 6.2;

    /// <summary>The ring of true degrees.</summary>
    public double Outer { get; } = 48;

    /// <summary>The ring of compass degrees, when there is one.</summary>
    public double Magnetic => Outer - BandMm;

    /// <summary>The open field within the rings.</summary>
    public double Field => Outer - (Compass ? 2 : 1) * BandMm;

    /// <summary>The middle of the arcs of obstructions.</summary>
    public double Obstruction => Field - 2;

    /// <summary>How far the house may reach.</summary>
    public double House => Field - 5;

    /// <summary>The circle on which the marks stand that leaders start from.</summary>
    public double Pins => Outer + 5;

    /// <summary>Leaders that must round the ring keep to this circle.</summary>
    public double Lane => Outer + 8.4;

    public PaperPoint At(double bearingDeg, double radius) => Polar.From(Centre, bearingDeg, radius);
}
