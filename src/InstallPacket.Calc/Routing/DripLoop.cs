using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>The loop that makes water drop off before the cable enters the house.</summary>
public static class DripLoop
{
    /// <summary>The cable in a drip loop.</summary>
    public static readonly Formula ExtraLengthFormula = new(
        "drip-loop",
        "Extra cable in a drip loop",
        "dL = 2 h + (pi - 4) R, h >= R",
        new("dL", "m", "more than the direct run"),
            [new("h", "m", "depth below the entry"), new("R", "m", "bend radius of the cable's axis")],
        "project-notes", "U of two legs and a half circle, independent of its width", Provenance.Derived)
    {
        Method = v => ExtraLengthM(v[0], v[1]),
    };

    /// <summary>The cable that a drip loop takes beyond the direct run.</summary>
    /// <param name="depthM">Depth of the lowest point below the entry [m]; less than the radius throws, because the cable cannot make
    /// it.</param>
    /// <param name="bendRadiusM">Bend radius of the cable's axis [m], above 0; outside throws.</param>
    /// <returns>Extra length [m].</returns>
    public static double ExtraLengthM(double depthM, double bendRadiusM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bendRadiusM);
        ArgumentOutOfRangeException.ThrowIfLessThan(depthM, bendRadiusM);
        return 2 * depthM + (Math.PI - 4) * bendRadiusM;
    }
}
