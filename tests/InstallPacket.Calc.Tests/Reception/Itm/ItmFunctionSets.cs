using System.Globalization;
using System.Numerics;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Single functions of the terrain model.</summary>
public static class ItmFunctionSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Terrain model, single functions", File = "itm/function_checks.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = "1e-9 of the value, twelve digits being printed, and not below 1e-9 (the curvature: half a unit of the last printed digit)",
            Formulas = ["itm-quantile", "itm-line-fit", "itm-horizon", "itm-terrain-irregularity", "itm-irregularity-at-distance", "itm-height-spread", "itm-knife-edge",
                "itm-smooth-earth", "itm-height-gain", "itm-scatter-gain", "itm-scatter-function", "itm-ground-impedance", "itm-surface-refractivity", "itm-earth-curvature",
                "itm-free-space-loss", "itm-variability"],
            Rows = 1732, Comparisons = 1732, Check = Check,
        },
    ];

    private static IEnumerable<Comparison> Check(ReferenceRow r)
    {
        var a = new Arguments(r.Text("arguments"));
        yield return r.Text("result") == "gamma_e_per_m"
            ? r.Printed("value", Computed(r, a), "1/m")
            : r.Within("value", Computed(r, a), Math.Max(1e-9, 1e-9 * Math.Abs(r.Value("value"))), "");
    }

    private static double Computed(ReferenceRow r, Arguments a) => r.Text("function") switch
    {
        "quantile" => ItmVariability.Quantile(a["q"]),
        "line_fit" => Fit(r, a),
        "horizons" => Horizon(r, a),
        "delta_h" => ItmRoughness.DeltaHM(ItmProfiles.Of(r.Text("profile")), a["d_start_m"], a["d_end_m"]),
        "delta_h_at_distance" => ItmRoughness.At(a["delta_h_m"], a["d_m"]),
        "sigma_h" => ItmRoughness.SpreadM(a["delta_h_d_m"]),
        "knife_edge_a" => ItmKnifeEdges.EdgeDb(a["v2"]),
        "knife_edge_path" => ItmKnifeEdges.LossDb(a["f_mhz"] / 47.7, Bend(a), Beyond(a), a["d_hzn_tx_m"], a["d_hzn_rx_m"]),
        "smooth_earth" => SmoothEarth(a),
        "height_gain_f" => ItmSmoothEarth.HeightGain(a["x"], a["k"]),
        "h0" => ItmScatter.CurveDb(a["r"], a["eta_s"]),
        "tropo_f" => ItmScatter.AttenuationDb(a["theta_d_m"]),
        "ground" => Ground(r, a),
        "free_space" => IrregularTerrain.FreeSpaceLossDb(a["d_m"], a["f_mhz"]),
        "variability" => Variability(a),
        var other => throw new FormatException(other),
    };

    private static double Fit(ReferenceRow r, Arguments a)
    {
        var profile = ItmProfiles.Of(r.Text("profile"));
        var line = ItmLineFit.Of(profile.ElevationsM, profile.StepM, a["d_start_m"], a["d_end_m"]);
        return r.Text("result") == "y_at_start_m" ? line.StartM : line.EndM;
    }

    private static double Horizon(ReferenceRow r, Arguments a)
    {
        var h = ItmHorizons.Of(ItmProfiles.Of(r.Text("profile")), a["h_tx_m"], a["h_rx_m"], a["a_e_m"]);
        return r.Text("result") switch { "theta_tx_rad" => h.TxRad, "theta_rx_rad" => h.RxRad, "d_tx_m" => h.TxM, _ => h.RxM };
    }

    private static double Bend(Arguments a) => a["d_m"] / a["a_e_m"] - a["theta_los_rad"];

    private static double Beyond(Arguments a) => a["d_m"] - a["d_hzn_tx_m"] - a["d_hzn_rx_m"];

    private static double SmoothEarth(Arguments a)
    {
        var wave = new ItmWave(a["f_mhz"], a["f_mhz"] / 47.7, Math.Cbrt(a["f_mhz"]), new Complex(a["z_g_re"], a["z_g_im"]));
        var tx = new ItmEnd { EffectiveHeightM = a["h_e_tx_m"], HorizonM = a["d_hzn_tx_m"] };
        var rx = new ItmEnd { EffectiveHeightM = a["h_e_rx_m"], HorizonM = a["d_hzn_rx_m"] };
        return ItmSmoothEarth.Of(wave, tx, rx).LossDb(Bend(a), Beyond(a));
    }

    private static double Ground(ReferenceRow r, Arguments a)
    {
        var impedance = ItmWave.Of(Settings(a, a["f_mhz"])).Impedance;
        var ns = ItmAir.AtSeaLevel(a["n0"]).Surface(a["h_sys_m"]);
        return r.Text("result") switch
        {
            "z_g_re" => impedance.Real,
            "z_g_im" => impedance.Imaginary,
            "n_s" => ns,
            "gamma_e_per_m" => ItmAir.CurvaturePerM(ns),
            var other => throw new FormatException(other),
        };
    }

    private static ItmSettings Settings(Arguments a, double frequencyMHz) =>
        ItmSettings.Television(frequencyMHz) with { Polarisation = (ItmPolarisation)a["pol"], Permittivity = a["eps_r"], ConductivitySm = a["sigma_s_per_m"] };

    private static double Variability(Arguments a)
    {
        var terrain = new ItmTerrain
        {
            DeltaHM = a["delta_h_m"],
            Tx = new ItmEnd { EffectiveHeightM = a["h_e_tx_m"] },
            Rx = new ItmEnd { EffectiveHeightM = a["h_e_rx_m"] },
        };
        var wave = ItmWave.Of(ItmSettings.Television(a["f_mhz"]));
        var v = new ItmVariability(terrain, a["d_m"], wave, (ItmClimate)a["climate"], (int)a["mdvar"]);
        return v.At(a["a_ref_db"], v.Deviates(a["time"], a["location"], a["situation"])).LossDb;
    }

    /// <summary>Pairs of name and value, parted by spaces.</summary>
    private sealed class Arguments(string text)
    {
        private readonly Dictionary<string, double> _values = text.Split(' ').Select(p => p.Split('='))
            .ToDictionary(p => p[0], p => double.Parse(p[1], NumberStyles.Float, CultureInfo.InvariantCulture), StringComparer.Ordinal);

        public double this[string name] => _values[name];
    }
}
