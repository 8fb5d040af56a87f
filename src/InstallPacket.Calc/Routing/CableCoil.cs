using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>A service coil.</summary>
public static class CableCoil
{
    /// <summary>The cable in a coil.</summary>
    public static readonly Formula LengthFormula = new(
        "cable-coil",
        "Cable in a service coil",
        "L = pi D n",
        new("L", "m", "length"), [new("D", "m", "diameter"), new("n", "", "turns")],
        "project-notes", "circles", Provenance.Derived);

    /// <summary>The cable in a coil.</summary>
    /// <param name="diameterM">Diameter [m], not negative; outside throws. At least 20 cable diameters.</param>
    /// <param name="turns">Turns, not negative; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double LengthM(double diameterM, double turns)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(diameterM);
        ArgumentOutOfRangeException.ThrowIfNegative(turns);
        return Math.PI * diameterM * turns;
    }
}
