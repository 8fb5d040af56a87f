using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>The room that a bend takes of each leg.</summary>
public static class BendTangent
{
    /// <summary>The length of a leg that lies in the bend.</summary>
    public static readonly Formula LengthFormula = new(
        "bend-tangent",
        "Room that a bend takes of each leg",
        "t = R tan(a / 2)",
        new("t", "m", "from the corner to the start of the bend"), [new("R", "m", "bend radius"), new("a", "deg", "change of direction")],
        "project-notes", "tangents of a circle", Provenance.Derived)
    {
        Method = v => LengthM(v[0], v[1]),
    };

    /// <summary>How far from the corner the bend begins.</summary>
    /// <param name="bendRadiusM">Bend radius [m], not negative; outside throws.</param>
    /// <param name="turnDeg">Change of direction [deg], 0 to below 180; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double LengthM(double bendRadiusM, double turnDeg)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(bendRadiusM);
        if (!(turnDeg is >= 0 and < 180)) throw new ArgumentOutOfRangeException(nameof(turnDeg), turnDeg,
            "The change of direction lies from 0 to below 180 degrees.");
        return bendRadiusM * Math.Tan(turnDeg * Math.PI / 360);
    }
}
