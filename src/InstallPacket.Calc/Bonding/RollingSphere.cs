using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>What a rolling sphere cannot touch beside a rod.</summary>
public static class RollingSphere
{
    /// <summary>Radius by class of protection [m].</summary>
    public static readonly IReadOnlyDictionary<string, double> RadiusM = new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["I"] = 20, ["II"] = 30, ["III"] = 45, ["IV"] = 60,
    };

    /// <summary>Beside one rod.</summary>
    public static readonly Formula ProtectedFormula = new(
        "rolling-sphere-radius",
        "Radius protected beside a rod, at a height",
        "p = sqrt(h (2 r - h)) - sqrt(hx (2 r - hx))",
        new("p", "m", "protected radius"),
            [new("h", "m", "height of the rod, at most r"), new("hx", "m", "height of what is protected"),
            new("r", "m", "radius of the sphere")],
        "iec-62305-3-spacing", "geometry of the sphere", Provenance.Derived);

    /// <summary>Between two rods.</summary>
    public static readonly Formula SpacingFormula = new(
        "rolling-sphere-spacing",
        "Spacing of two rods at which the sphere just touches the plane between them",
        "d = 2 sqrt(2 r h - h^2)",
        new("d", "m", "spacing"), [new("r", "m", "radius of the sphere"), new("h", "m", "height of the rods, at most r")],
        "iec-62305-3-spacing", "four published spacings are met by it");

    /// <summary>The protected radius; negative where the height is not protected at all.</summary>
    /// <param name="rodM">Height of the rod [m], above 0, at most the radius; outside throws.</param>
    /// <param name="atM">Height of what is protected [m], 0 to the radius; outside throws.</param>
    /// <param name="sphereM">Radius of the sphere [m], above 0 to 200; outside throws.</param>
    /// <returns>Radius [m].</returns>
    public static double ProtectedM(double rodM, double atM, double sphereM) => Reach(rodM, sphereM) - Reach(atM, sphereM);

    /// <summary>The spacing of two rods.</summary>
    /// <param name="sphereM">Radius of the sphere [m], above 0 to 200; outside throws.</param>
    /// <param name="rodM">Height of the rods [m], at most the radius; outside throws.</param>
    /// <returns>Spacing [m].</returns>
    public static double SpacingM(double sphereM, double rodM) => 2 * Reach(rodM, sphereM);

    private static double Reach(double heightM, double sphereM)
    {
        Limit.Between(sphereM, 0, 200, "radius of the sphere in m");
        return Math.Sqrt(Limit.Within(heightM, 0, sphereM, "height in m") * (2 * sphereM - heightM));
    }
}
