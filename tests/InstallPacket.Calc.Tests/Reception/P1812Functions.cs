using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Single functions of the path prediction with their arguments as name=value pairs.</summary>
public static class P1812Functions
{
    public static IReadOnlyList<string> Formulas { get; } =
    [
        "p1812-share-quantile", "knife-edge-loss", "knife-edge-parameter", "p1812-layered-time", "p1812-effective-radius", "p1812-smooth-earth", "p1812-first-term",
        "p1812-bullington", "p1812-troposcatter", "p1812-ducting", "p1812-location-spread", "p1812-field", "p1812-centre-latitude", "fresnel-radius",
    ];

    public static IEnumerable<Comparison> Check(ReferenceRow r)
    {
        var a = P1812Inputs.Arguments(r);
        var computed = r.Text("function") switch
        {
            "I" => ShareQuantile.Inverse(a["x"]),
            "J" => KnifeEdge.LossDb(a["v"]),
            "beta0" => PathStatistics.Of(0, a["dtm_km"], a["dlm_km"], a["phi_deg"]).LayeredPercent,
            "ae" => new PathClimate(45, a["DN"]).MedianRadiusKm(),
            "Ldsph" => Sphere(a).LossDb(Wave(a), a["omega"]),
            "Ldft" => Sphere(a).FirstTermDb(a["ap_km"], Wave(a), a["omega"]),
            "Lbull_smooth201" => FlatEdge(a).LossDb(0.2998 / a["f_GHz"]),
            "Lbulls_att4" => Sphere(a).ClosedFormEdge().LossDb(0.2998 / a["f_GHz"]),
            "Lbs" => Troposcatter.LossDb(a["f_GHz"], a["d_km"], a["theta_mrad"], a["N0"], a["p"]),
            "Lba" => Ducting(a),
            "sigmaLoc" => LocationSpread.SigmaDb(a["f_GHz"] * 1000, a["h_m"], a["R_m"], a["wa_m"]),
            "E" => PathSpecificPrediction.FieldDbuVm(a["f_GHz"], a["Lb_dB"]),
            "phi_mid" => PathCentre.LatitudeDeg(a["phi_t"], a["lam_t"], a["phi_r"], a["lam_r"], a["d_km"]),
            "fresnel_radius" => FresnelZone.RoundedRadiusM((int)a["n"], a["f_MHz"], a["d1_km"], a["d2_km"]),
            "knife_v" => Nu(a),
            "knife_J" => KnifeEdge.LossDb(Nu(a)),
            var other => throw new InvalidOperationException($"No function is called {other}."),
        };
        yield return r.Within("value", computed, Math.Max(1e-12, 1e-9 * Math.Abs(r.Value("value"))), r.Text("unit"));
    }

    private static SmoothEarth Sphere(IReadOnlyDictionary<string, double> a) => SmoothEarth.Of(a["d_km"], a["h1_m"], a["h2_m"], a["ap_km"]);

    private static RadioWave Wave(IReadOnlyDictionary<string, double> a) => new(a["f_GHz"], a["pol"] == 1 ? WavePolarisation.Horizontal : WavePolarisation.Vertical);

    private static BullingtonEdge FlatEdge(IReadOnlyDictionary<string, double> a) =>
        BullingtonEdge.Find([.. Enumerable.Range(0, 201).Select(i => a["d_km"] * i / 200)], new double[201], a["h1_m"], a["h2_m"], a["ap_km"]);

    private static double Nu(IReadOnlyDictionary<string, double> a) =>
        KnifeEdge.ParameterNu(a["h_m"], 299.8 / a["f_MHz"], a["d1_km"] * 1000, a["d2_km"] * 1000);

    private static double Ducting(IReadOnlyDictionary<string, double> a)
    {
        var frame = new PathFrame(a["d_km"], a["hts_m"], a["hrs_m"], a["ae_km"], a["dct_km"], a["dcr_km"]);
        // The row states beta0 itself, and tau only through the stretch of inland.
        var statistics = PathStatistics.Of(a["omega"], 0, a["dlm_km"], 50) with { LayeredPercent = a["beta0"] };
        var horizons = new PathHorizons(true, a["dlt_km"], a["dlr_km"], a["theta_t_mrad"], a["theta_r_mrad"], 0, 0, 0);
        var surface = new SmoothSurface(0, 0, 0, 0, 0, 0, a["hte_m"], a["hre_m"], a["hm_m"]);
        return DuctingLoss.Of(DuctingPath.Of(frame, statistics, horizons, surface), a["f_GHz"], a["p"]).BasicDb;
    }
}
