using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>Heights and angles over an earth enlarged by k = 4/3, on which radio rays run straight.</summary>
public static class EffectiveEarth
{
    /// <summary>Effective radius for k = 4/3 [m]. Optical sighting bends less: do not use it for the sun or a theodolite.</summary>
    public const double RadiusM = 4.0 / 3 * 6371000;

    /// <summary>The elevation angle.</summary>
    public static readonly Formula ElevationFormula = new(
        "elevation-angle",
        "Elevation angle over the curved earth",
        "theta = d / ae; el = atan2((ae + h) cos(theta) - (ae + h0), (ae + h) sin(theta)), ae = 4/3 x 6371 km",
        new("el", "deg", "above the local horizontal"),
        [new("h0", "m", "own height above the datum"), new("h", "m", "height of the other point"),
            new("d", "m", "distance along the earth")],
        "project-notes", "effective earth (radius: Rec. ITU-R P.526 section 1)", Provenance.Derived) { Method = v =>
            ElevationAngleDeg(v[0], v[1], v[2]) };

    /// <summary>The bulge of the earth.</summary>
    public static readonly Formula BulgeFormula = new(
        "earth-bulge",
        "Rise of the earth into the path",
        "b = d1 d2 / (2 ae), ae = 4/3 x 6371 km",
        new("b", "m", "bulge"), [new("d1", "m", "distance to one end"), new("d2", "m", "distance to the other end")],
        "project-notes", "effective earth (radius: Rec. ITU-R P.526 section 1)", Provenance.Derived);

    /// <summary>The clearance over an edge.</summary>
    public static readonly Formula ClearanceFormula = new(
        "path-clearance",
        "Height of the ray above an obstruction",
        "c = h0 + (h - h0) d1 / D - (he + d1 (D - d1) / (2 ae)), ae = 4/3 x 6371 km",
        new("c", "m", "positive when the ray passes above"),
        [new("h0", "m", "own height"), new("h", "m", "height of the other end"), new("D", "m", "length of the path"),
            new("d1", "m", "distance to the edge"), new("he", "m", "height of the edge")],
        "project-notes", "effective earth", Provenance.Derived) { Method = v => ClearanceM(v[0], v[1], v[2], v[3], v[4]) };

    /// <summary>The radio horizon.</summary>
    public static readonly Formula RadioHorizonFormula = new(
        "radio-horizon",
        "Radio horizon of two antennas over a smooth earth",
        "d = sqrt(2 ae h1) + sqrt(2 ae h2), ae = 4/3 x 6371 km",
        new("d", "km", "greatest distance in sight"), [new("h1", "m", "height of one antenna"), new("h2", "m", "height of the other")],
        "project-notes", "effective earth", Provenance.Derived);

    /// <summary>The elevation angle at which one point sees another.</summary>
    /// <param name="ownHeightM">Height of the observer above the common datum [m].</param>
    /// <param name="otherHeightM">Height of the point above the same datum [m].</param>
    /// <param name="distanceM">Distance along the earth [m], above 0; outside throws.</param>
    /// <returns>Angle above the local horizontal [deg].</returns>
    public static double ElevationAngleDeg(double ownHeightM, double otherHeightM, double distanceM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceM);
        var (sin, cos) = Math.SinCos(distanceM / RadiusM);
        // (ae + h) cos - (ae + h0) written without the difference of two earth radii.
        var sinHalf = Math.Sin(distanceM / RadiusM / 2);
        var up = otherHeightM * cos - ownHeightM - 2 * RadiusM * sinHalf * sinHalf;
        return Math.Atan2(up, (RadiusM + otherHeightM) * sin) * Degrees.PerRadian;
    }

    /// <summary>The rise of the earth above the chord of the path.</summary>
    /// <param name="distanceToOneEndM">Distance to one end [m].</param>
    /// <param name="distanceToOtherEndM">Distance to the other end [m].</param>
    /// <returns>Bulge [m].</returns>
    public static double BulgeM(double distanceToOneEndM, double distanceToOtherEndM) =>
        distanceToOneEndM * distanceToOtherEndM / (2 * RadiusM);

    /// <summary>The height of the ray above an edge on the path.</summary>
    /// <param name="ownHeightM">Height of the near end [m].</param>
    /// <param name="otherHeightM">Height of the far end [m].</param>
    /// <param name="distanceM">Length of the path [m], above 0; outside throws.</param>
    /// <param name="edgeDistanceM">Distance of the edge from the near end [m], 0 to the length; outside throws.</param>
    /// <param name="edgeHeightM">Height of the edge above the same datum [m].</param>
    /// <returns>Clearance [m], negative when the edge blocks.</returns>
    public static double ClearanceM(double ownHeightM, double otherHeightM, double distanceM, double edgeDistanceM, double edgeHeightM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(distanceM);
        ArgumentOutOfRangeException.ThrowIfNegative(edgeDistanceM);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(edgeDistanceM, distanceM);
        var line = ownHeightM + (otherHeightM - ownHeightM) * edgeDistanceM / distanceM;
        return line - edgeHeightM - BulgeM(edgeDistanceM, distanceM - edgeDistanceM);
    }

    /// <summary>The greatest distance at which two antennas see each other over a smooth earth.</summary>
    /// <param name="oneHeightM">Height of one antenna [m], not negative; outside throws.</param>
    /// <param name="otherHeightM">Height of the other [m], not negative; outside throws.</param>
    /// <returns>Distance [km].</returns>
    public static double RadioHorizonKm(double oneHeightM, double otherHeightM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(oneHeightM);
        ArgumentOutOfRangeException.ThrowIfNegative(otherHeightM);
        return (Math.Sqrt(2 * RadiusM * oneHeightM) + Math.Sqrt(2 * RadiusM * otherHeightM)) / 1000;
    }
}
