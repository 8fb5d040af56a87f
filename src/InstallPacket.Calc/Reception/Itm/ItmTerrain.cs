using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>One end of a path as the terrain model sees it.</summary>
/// <param name="HeightM">Antenna above ground [m], h.</param>
/// <param name="EffectiveHeightM">Effective height [m], he, never below <paramref name="HeightM"/>.</param>
/// <param name="HorizonM">Distance of the horizon [m], dh.</param>
/// <param name="HorizonRad">Angle of the horizon above level [rad], theta.</param>
/// <param name="SmoothHorizonM">Distance of the horizon over a smooth earth [m], ds.</param>
public readonly record struct ItmEnd(double HeightM, double EffectiveHeightM, double HorizonM, double HorizonRad, double SmoothHorizonM);

/// <summary>All that the terrain model draws from the ground; it does not depend on frequency.</summary>
/// <param name="SystemHeightM">Mean ground of the inner four fifths of the path [m].</param>
/// <param name="SurfaceRefractivity">Refractivity at the ground [N-units], Ns.</param>
/// <param name="EarthRadiusM">Effective earth radius [m], ae.</param>
/// <param name="Sight">The horizons as they are; those of the ends may be statistical.</param>
/// <param name="FromM">Start of the stretch that counts for the irregularity [m].</param>
/// <param name="ToM">Its end [m].</param>
public readonly record struct ItmTerrain(
    double SystemHeightM, double SurfaceRefractivity, double EarthRadiusM, ItmHorizons Sight, double FromM, double ToM)
{
    /// <summary>The effective heights.</summary>
    public static readonly Formula EffectiveHeightFormula = new(
        "itm-effective-height",
        "Effective height of an antenna",
        "he = h + max(z - Y, 0)",
        new("he", "m", "effective height"),
        [new("h", "m", "antenna above ground"), new("z", "m", "ground at the end"),
            new("Y", "m", "line through the ground in front, read at the end")],
        "ntia-itm", "effective antenna heights of a profile");

    /// <summary>The statistical horizon.</summary>
    public static readonly Formula SmoothHorizonFormula = new(
        "itm-statistical-horizon",
        "Horizon over ground of a given irregularity",
        "dh = ds exp(-0.07 sqrt(D / max(he, 5))), ds = sqrt(2 he ae)",
        new("dh", "m", "distance of the horizon"),
        [new("he", "m", "effective height"), new("ae", "m", "effective earth radius"), new("D", "m", "irregularity of the ground")],
        "ntia-itm", "horizons when the ends see each other");

    /// <summary>Irregularity of the ground [m], delta-h.</summary>
    public double DeltaHM { get; init; }

    /// <summary>The transmitter.</summary>
    public ItmEnd Tx { get; init; }

    /// <summary>The receiver.</summary>
    public ItmEnd Rx { get; init; }

    /// <summary>True when the ends see each other, or nearly, so that statistical horizons stand for those of the ground.</summary>
    public bool NearlyInSight { get; init; }

    /// <summary>Smooth-earth line-of-sight distance [m].</summary>
    public double SmoothHorizonsM => Tx.SmoothHorizonM + Rx.SmoothHorizonM;

    /// <summary>Sum of both horizon distances [m].</summary>
    public double HorizonsM => Tx.HorizonM + Rx.HorizonM;

    /// <summary>Negative angle between the horizon rays [rad], not above that of a smooth earth.</summary>
    public double SightRad => -Math.Max(Tx.HorizonRad + Rx.HorizonRad, -HorizonsM / EarthRadiusM);

    internal static ItmTerrain Of(TerrainProfile profile, double txHeightM, double rxHeightM, ItmAir air)
    {
        var systemHeight = SystemHeight(profile);
        var ns = air.Surface(systemHeight);
        var ae = 1 / ItmAir.CurvaturePerM(ns);
        var sight = ItmHorizons.Of(profile, txHeightM, rxHeightM, ae);
        // The ground right under an antenna does not count.
        var from = Math.Min(15 * txHeightM, 0.1 * sight.TxM);
        var to = profile.LengthM - Math.Min(15 * rxHeightM, 0.1 * sight.RxM);
        var terrain = new ItmTerrain(systemHeight, ns, ae, sight, from, to)
        {
            DeltaHM = ItmRoughness.DeltaHM(profile, from, to),
            NearlyInSight = sight.TxM + sight.RxM > 1.5 * profile.LengthM,
        };
        return terrain.NearlyInSight ? terrain.InSight(profile, txHeightM, rxHeightM) : terrain.BeyondSight(profile, txHeightM, rxHeightM);
    }

    private static double SystemHeight(TerrainProfile profile)
    {
        var skip = (int)(0.1 * profile.Intervals);
        var inner = profile.ElevationsM[skip..^skip];
        double sum = 0;
        foreach (var z in inner) sum += z;
        return sum / inner.Length;
    }

    private ItmTerrain InSight(TerrainProfile profile, double txHeightM, double rxHeightM)
    {
        var z = profile.ElevationsM;
        var d = profile.LengthM;
        var line = ItmLineFit.Of(z, profile.StepM, FromM, ToM);
        double he1 = txHeightM + Math.Max(z[0] - line.StartM, 0), he2 = rxHeightM + Math.Max(z[^1] - line.EndM, 0);
        double d1 = StatisticalHorizonM(he1), d2 = StatisticalHorizonM(he2);
        if (d1 + d2 <= d)
        {
            // The ends do see each other, so the horizons must reach: raise both antennas by the same ratio.
            var ratio = d / (d1 + d2);
            he1 *= ratio * ratio;
            he2 *= ratio * ratio;
            d1 = StatisticalHorizonM(he1);
            d2 = StatisticalHorizonM(he2);
        }
        return this with { Tx = StatisticalEnd(txHeightM, he1, d1), Rx = StatisticalEnd(rxHeightM, he2, d2) };
    }

    private ItmTerrain BeyondSight(TerrainProfile profile, double txHeightM, double rxHeightM)
    {
        var z = profile.ElevationsM;
        double d = profile.LengthM, s = profile.StepM;
        var he1 = txHeightM + Math.Max(z[0] - ItmLineFit.Of(z, s, FromM, 0.9 * Sight.TxM).StartM, 0);
        var he2 = rxHeightM + Math.Max(z[^1] - ItmLineFit.Of(z, s, d - 0.9 * Sight.RxM, ToM).EndM, 0);
        return this with
        {
            Tx = new ItmEnd(txHeightM, he1, Sight.TxM, Sight.TxRad, SmoothM(he1)),
            Rx = new ItmEnd(rxHeightM, he2, Sight.RxM, Sight.RxRad, SmoothM(he2)),
        };
    }

    private double SmoothM(double effectiveHeightM) => Math.Sqrt(2 * effectiveHeightM * EarthRadiusM);

    private double StatisticalHorizonM(double effectiveHeightM) =>
        SmoothM(effectiveHeightM) * Math.Exp(-0.07 * Math.Sqrt(DeltaHM / Math.Max(effectiveHeightM, 5)));

    private ItmEnd StatisticalEnd(double heightM, double effectiveHeightM, double horizonM)
    {
        var smooth = SmoothM(effectiveHeightM);
        var theta = (0.65 * DeltaHM * (smooth / horizonM - 1) - 2 * effectiveHeightM) / smooth;
        return new ItmEnd(heightM, effectiveHeightM, horizonM, theta, smooth);
    }
}
