using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>What speeds the wind up.</summary>
public enum HillShape
{
    /// <summary>A long ridge.</summary>
    Ridge,

    /// <summary>A long step: a cliff or the edge of a plateau.</summary>
    Escarpment,

    /// <summary>A round hill.</summary>
    Hill,
}

/// <summary>Where the mast stands on a hill.</summary>
/// <param name="Shape">What kind of hill.</param>
/// <param name="HeightM">Height of the hill [m].</param>
/// <param name="HalfHeightDistanceM">Horizontal distance from the crest upwind to half the height [m].</param>
/// <param name="FromCrestM">Distance of the mast from the crest [m], downwind positive.</param>
public readonly record struct HillSite(HillShape Shape, double HeightM, double HalfHeightDistanceM, double FromCrestM);

/// <summary>The speed-up over hills. 1 on flat ground; a mast on a crest without these figures is a reason to stop.</summary>
public static class WindTopography
{
    /// <summary>Slopes below this share of height to distance do not count.</summary>
    public const double LeastSlope = 0.2;

    /// <summary>Slopes count no further than this.</summary>
    public const double GreatestSlope = 0.5;

    /// <summary>The factor from its three parts.</summary>
    public static readonly Formula FactorFormula = new(
        "wind-kzt",
        "Wind factor for hills",
        "Kzt = (1 + K1 K2 K3)^2",
        new("Kzt", "", "factor"), [new("K1", "", "slope"), new("K2", "", "distance from the crest"), new("K3", "", "height above ground")],
        "asce-7-22", "topographic factor");

    /// <summary>The three parts.</summary>
    public static readonly Formula PartsFormula = new(
        "wind-kzt-parts",
        "Parts of the wind factor for hills",
        "K1 = k H / Lh, K2 = max(0, 1 - |x| / (mu Lh)), K3 = exp(-gamma z / Lh); above H / Lh = 0.5 K1 takes 0.5 and Lh is 2 H",
        new("K1 K2 K3", "", "product of the parts"),
        [new("H", "m", "height of the hill"), new("Lh", "m", "distance to half its height"), new("x", "m", "from the crest"),
            new("z", "m", "height above ground")],
        "asce-7-22",
            "constants k, mu and gamma by shape and exposure; no effect when H / Lh < 0.2 or the hill is below 15 ft (60 ft in exposure B)");

    private static readonly Lazy<IReadOnlyDictionary<HillShape, Row>> Rows = new(Load);

    /// <summary>The factor for a place on a hill.</summary>
    /// <param name="site">Hill and place; height not negative, distance above 0; outside throws.</param>
    /// <param name="exposure">Kind of ground.</param>
    /// <param name="heightM">Height of the item above ground [m], not negative; outside throws.</param>
    /// <returns>Factor, 1 where the hill does not count.</returns>
    public static double Kzt(HillSite site, WindExposure exposure, double heightM)
    {
        Limit.AtLeast(site.HeightM, 0, "height of the hill in m");
        Limit.Between(site.HalfHeightDistanceM, 0, 1e6, "distance to half the height of the hill in m");
        Limit.Within(site.FromCrestM, -1e6, 1e6, "distance from the crest in m");
        Limit.AtLeast(heightM, 0, "height above ground in m");
        var slope = site.HeightM / site.HalfHeightDistanceM;
        return slope < LeastSlope || site.HeightM < LeastHillM(exposure) ? 1
            : Raised(site, Constants(site.Shape), exposure, slope, heightM);
    }

    /// <summary>The factor from its three parts.</summary>
    /// <param name="k1">Part of the slope, 0 to 1; outside throws.</param>
    /// <param name="k2">Part of the distance from the crest, 0 to 1; outside throws.</param>
    /// <param name="k3">Part of the height above ground, 0 to 1; outside throws.</param>
    /// <returns>Factor.</returns>
    public static double Factor(double k1, double k2, double k3) => Math.Pow(
        1 + Limit.Within(k1, 0, 1, "hill part K1") * Limit.Within(k2, 0, 1, "hill part K2") * Limit.Within(k3, 0, 1, "hill part K3"), 2);

    /// <summary>Hills lower than this do not count [m].</summary>
    /// <param name="exposure">Kind of ground.</param>
    public static double LeastHillM(WindExposure exposure) => (exposure == WindExposure.B ? 60 : 15) * 0.3048;

    internal static Row Constants(HillShape shape) => Rows.Value.TryGetValue(shape, out var row)
        ? row : throw new ArgumentOutOfRangeException(nameof(shape), shape, $"No hill constants for {shape}.");

    private static double Raised(HillSite site, Row row, WindExposure exposure, double slope, double heightM)
    {
        var lengthM = slope > GreatestSlope ? 2 * site.HeightM : site.HalfHeightDistanceM;
        var mu = site.FromCrestM > 0 ? row.MuDownwind : row.MuUpwind;
        return Factor(
            row.K(exposure) * Math.Min(slope, GreatestSlope), Math.Max(0, 1 - Math.Abs(site.FromCrestM) / (mu * lengthM)),
                Math.Exp(-row.Gamma * heightM / lengthM));
    }

    private static Dictionary<HillShape, Row> Load() => EmbeddedTable.Rows("Mounting/wind-topography.csv").ToDictionary(
        r => r["feature"] switch { "ridge" => HillShape.Ridge, "escarpment" => HillShape.Escarpment, _ => HillShape.Hill },
        r => new Row(
            CsvNumber.Of(r["b"]), CsvNumber.Of(r["c"]), CsvNumber.Of(r["d"]), CsvNumber.Of(r["gamma"]), CsvNumber.Of(r["mu_upwind"]),
                CsvNumber.Of(r["mu_downwind"])));

    internal sealed record Row(double B, double C, double D, double Gamma, double MuUpwind, double MuDownwind)
    {
        public double K(WindExposure exposure) => exposure switch { WindExposure.B => B, WindExposure.C => C, _ => D };
    }
}
