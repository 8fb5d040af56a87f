using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>The refractivity of the air over a path.</summary>
public readonly record struct ItmAir
{
    // The scale height of the decrease of refractivity [m].
    private const double ScaleHeightM = 9460;

    /// <summary>The refractivity at the ground.</summary>
    public static readonly Formula SurfaceFormula = new(
        "itm-surface-refractivity",
        "Refractivity of the air at the ground",
        "Ns = N0 exp(-hsys / 9460)",
        new("Ns", "N-units", "refractivity at the mean height of the ground"),
        [new("N0", "N-units", "minimum monthly mean, reduced to sea level"),
            new("hsys", "m", "mean ground of the inner four fifths of the path")],
        "ntia-itm", "surface refractivity (cited there: Technical Note 101, 4.3)");

    /// <summary>The curvature of the effective earth.</summary>
    public static readonly Formula CurvatureFormula = new(
        "itm-earth-curvature",
        "Curvature of the earth on which radio rays run straight",
        "gamma = 157e-9 (1 - 0.04665 exp(Ns / 179.3)); ae = 1 / gamma",
        new("gamma", "1/m", "curvature"), [new("Ns", "N-units", "refractivity at the ground")],
        "ntia-itm", "effective earth curvature (cited there: Technical Note 101, 4.4)");

    private ItmAir(double refractivity, bool atGround) => (Refractivity, AtGround) = (refractivity, atGround);

    /// <summary>Refractivity [N-units].</summary>
    public double Refractivity { get; }

    /// <summary>True when it holds at the ground, whatever its height; false when it is reduced to sea level.</summary>
    public bool AtGround { get; }

    /// <summary>Refractivity as maps give it.</summary>
    /// <param name="n0">Minimum monthly mean, reduced to sea level [N-units], 250 to 400.</param>
    /// <returns>The air.</returns>
    public static ItmAir AtSeaLevel(double n0) => new(n0, atGround: false);

    /// <summary>Refractivity at the ground itself, as studies of television service enter it (301).</summary>
    /// <param name="ns">Refractivity [N-units], 150 to 400.</param>
    /// <returns>The air.</returns>
    public static ItmAir FixedAtGround(double ns) => new(ns, atGround: true);

    /// <summary>The refractivity at the ground.</summary>
    /// <param name="systemHeightM">Mean height of the ground above sea level [m].</param>
    /// <returns>Ns [N-units].</returns>
    public double Surface(double systemHeightM) => AtGround || systemHeightM == 0 ? Refractivity
        : Refractivity * Math.Exp(-systemHeightM / ScaleHeightM);

    /// <summary>The curvature of the effective earth.</summary>
    /// <param name="surfaceRefractivity">Ns [N-units].</param>
    /// <returns>Curvature [1/m].</returns>
    public static double CurvaturePerM(double surfaceRefractivity) => 157e-9 * (1 - 0.04665 * Math.Exp(surfaceRefractivity / 179.3));
}
