using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Every inner quantity of selected paths, stage by stage.</summary>
public static class ItmStageSets
{
    private const string Worked = "itm/trace.csv";

    private static readonly Lazy<Dictionary<string, ReferenceRow>> Inputs =
        new(() => ItmSets.All.First(s => s.File == "itm/vectors.csv").Read().ToDictionary(r => r.Text("case"), StringComparer.Ordinal));

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Terrain model stage by stage: air, ground, terrain", File = Worked, Source = "ntia-itm", Worth = Worth.Independent, Tolerance = Tolerance,
            Formulas = ["itm-surface-refractivity", "itm-earth-curvature", "itm-ground-impedance", "itm-horizon", "itm-terrain-irregularity", "itm-effective-height", "itm-statistical-horizon"],
            Rows = 190, Comparisons = 190 * 23, Check = Terrain,
        },
        new()
        {
            Name = "Terrain model stage by stage: diffraction", File = Worked, Source = "ntia-itm", Worth = Worth.Independent, Tolerance = Tolerance,
            Formulas = ["itm-diffraction", "itm-clutter", "itm-knife-edge", "itm-smooth-earth"], Rows = 190, Comparisons = 190 * 10, Check = Diffraction,
        },
        new()
        {
            Name = "Terrain model stage by stage: within sight", File = Worked, Source = "ntia-itm", Worth = Worth.Independent, Tolerance = Tolerance,
            Formulas = ["itm-line-of-sight", "itm-two-ray"], Rows = 190, Comparisons = 130 * 9 + 95, RowsLeftOut = 60, LeftOutBecause = "beyond the horizon", Check = Sight,
        },
        new()
        {
            Name = "Terrain model stage by stage: beyond the horizon", File = Worked, Source = "ntia-itm", Worth = Worth.Independent, Tolerance = Tolerance,
            Formulas = ["itm-beyond-horizon", "itm-scatter", "itm-scatter-gain", "itm-scatter-function"], Rows = 190, Comparisons = 60 * 10, RowsLeftOut = 130, LeftOutBecause = "within sight", Check = Beyond,
        },
        new()
        {
            Name = "Terrain model stage by stage: statistics", File = Worked, Source = "ntia-itm", Worth = Worth.Independent, Tolerance = Tolerance,
            Formulas = ["itm-variability", "itm-quantile", "itm-free-space-loss", "itm-basic-loss"], Rows = 190, Comparisons = 190 * 23, Check = Statistics,
        },
    ];

    private const string Tolerance = "1e-4 dB, heights 1e-4 m, distances 1e-2 m, angles 1e-8 rad, slopes 1e-9 dB/m, deviates and weights 1e-8; "
        + "on straight ground, where delta-h is rounding noise and its square root goes on, weight 1e-5, crossing 0.1 m, far diffraction 1e-3 dB and its slope 1e-8 dB/m";

    private static (ReferenceRow Inputs, ItmPath Path, ItmWave Wave) Case(ReferenceRow r)
    {
        var inputs = Inputs.Value[r.Text("case")];
        return (inputs, ItmRow.Path(inputs, ItmProfiles.Of(inputs.Text("profile"))), ItmWave.Of(ItmRow.Settings(inputs)));
    }

    // Level or evenly sloping ground: the true delta-h is 0, the computed one some 1e-13 m.
    private static bool Straight(ReferenceRow r) => r.Text("delta_h_m") == "0.000000";

    private static Comparison Db(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-4, "dB");

    private static Comparison Height(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-4, "m");

    private static Comparison Distance(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-2, "m");

    private static Comparison Angle(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-8, "rad");

    private static Comparison Slope(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-9, "dB/m");

    private static Comparison Number(ReferenceRow r, string column, double value) => r.Within(column, value, 1e-8, "");

    private static IEnumerable<Comparison> Terrain(ReferenceRow r)
    {
        var (_, path, wave) = Case(r);
        var t = path.Terrain;
        yield return Height(r, "h_sys_m", t.SystemHeightM);
        yield return r.Printed("gamma_e_per_m", 1 / t.EarthRadiusM, "1/m");
        yield return Distance(r, "a_e_m", t.EarthRadiusM);
        yield return Number(r, "z_g_re", wave.Impedance.Real);
        yield return Number(r, "z_g_im", wave.Impedance.Imaginary);
        yield return Angle(r, "horizon_theta_tx_rad", t.Sight.TxRad);
        yield return Angle(r, "horizon_theta_rx_rad", t.Sight.RxRad);
        yield return Distance(r, "horizon_d_tx_m", t.Sight.TxM);
        yield return Distance(r, "horizon_d_rx_m", t.Sight.RxM);
        yield return Distance(r, "x_start_m", t.FromM);
        yield return Distance(r, "x_end_m", t.ToM);
        yield return r.Within("line_of_sight_branch", t.NearlyInSight ? 1 : 0, ItmRow.Exact, "");
        yield return Distance(r, "d_sML_m", t.SmoothHorizonsM);
        yield return Distance(r, "d_ML_m", t.HorizonsM);
        yield return Angle(r, "theta_los_rad", t.SightRad);
        foreach (var c in ItmRow.Terrain(r, t)) yield return c;
    }

    private static IEnumerable<Comparison> Diffraction(ReferenceRow r)
    {
        var (_, path, wave) = Case(r);
        var diffraction = new ItmDiffraction(path, wave);
        var line = ItmDiffractionLine.Of(diffraction, path.Terrain, wave);
        var near = diffraction.At(line.NearM);
        yield return Distance(r, "d_3_m", line.NearM);
        yield return Distance(r, "d_4_m", line.FarM);
        yield return Db(r, "a_knife_at_d3_db", near.KnifeDb);
        yield return Db(r, "a_smooth_at_d3_db", near.SmoothDb);
        yield return Db(r, "a_clutter_db", diffraction.ClutterDb);
        yield return r.Within("weight_at_d3", near.Weight, Straight(r) ? 1e-5 : 1e-8, "");
        yield return Db(r, "a_3_db", near.LossDb);
        yield return r.Within("a_4_db", diffraction.At(line.FarM).LossDb, Straight(r) ? 1e-3 : 1e-4, "dB");
        yield return r.Within("m_d_db_per_m", line.SlopeDbPerM, Straight(r) ? 1e-8 : 1e-9, "dB/m");
        yield return Db(r, "a_d0_db", line.StartDb);
    }

    private static ItmDiffractionLine Line(ItmPath path, ItmWave wave) => ItmDiffractionLine.Of(new ItmDiffraction(path, wave), path.Terrain, wave);

    private static IEnumerable<Comparison> Sight(ReferenceRow r)
    {
        if (r.Text("los_branch").Length == 0) yield break;
        var (_, path, wave) = Case(r);
        var sight = new ItmLineOfSight(path, wave, Line(path, wave));
        yield return Db(r, "a_sML_db", sight.EdgeDb);
        yield return Distance(r, "d_0_m", sight.NearM);
        yield return Distance(r, "d_1_m", sight.FarM);
        yield return Db(r, "a_1_db", sight.FarDb);
        if (r.Text("a_0_db").Length > 0) yield return Db(r, "a_0_db", sight.NearDb);
        yield return Slope(r, "k_1_db_per_m", sight.SlopeDbPerM);
        yield return Db(r, "k_2_db", sight.LogDb);
        yield return Db(r, "a_o_db", sight.ConstantDb);
        yield return r.Expect("los_branch", (int)Fit(r.Text("los_branch")), (int)sight.Fit, ItmRow.Exact, "");
        yield return Db(r, "a_ref_db", sight.At(path.LengthM));
    }

    private static ItmSightFit Fit(string branch) => branch switch
    {
        "fit" => ItmSightFit.SlopeAndLog,
        "fit_k1_zero" => ItmSightFit.LogOnly,
        "straight" => ItmSightFit.Straight,
        "straight_slope_md" => ItmSightFit.StraightAsDiffraction,
        _ => throw new FormatException(branch),
    };

    private static IEnumerable<Comparison> Beyond(ReferenceRow r)
    {
        if (r.Text("d_5_m").Length == 0) yield break;
        var (_, path, wave) = Case(r);
        var beyond = new ItmBeyondHorizon(path.Terrain, wave, Line(path, wave));
        var (reference, mode) = beyond.At(path.LengthM);
        yield return Distance(r, "d_5_m", path.Terrain.HorizonsM + 200e3);
        yield return Db(r, "h_0_at_d6_db", beyond.Far.GainDb);
        yield return Db(r, "a_6_db", beyond.Far.LossDb);
        yield return Db(r, "h_0_at_d5_db", beyond.Near.GainDb);
        yield return Db(r, "a_5_db", beyond.Near.LossDb);
        yield return Slope(r, "m_s_db_per_m", beyond.SlopeDbPerM);
        yield return r.Within("d_x_m", beyond.CrossingM, Straight(r) ? 0.1 : 1e-2, "m");
        yield return Db(r, "a_s0_db", beyond.StartDb);
        yield return r.Within("mode", (int)mode, ItmRow.Exact, "");
        yield return Db(r, "a_ref_db", reference);
    }

    private static IEnumerable<Comparison> Statistics(ReferenceRow r)
    {
        var (inputs, path, wave) = Case(r);
        var settings = ItmRow.Settings(inputs);
        var v = new ItmVariability(path.Terrain, path.LengthM, wave, settings.Climate, settings.Variability);
        var channel = ItmChannel.Of(path, settings);
        double t = inputs.Value("time_pct"), l = inputs.Value("location_pct"), s = inputs.Value("situation_pct");
        var z = v.Deviates(t, l, s);
        var spread = v.At(channel.ReferenceAttenuationDb, z);
        yield return Distance(r, "d_ex_m", v.ExtentM);
        yield return Distance(r, "d_e_m", v.EffectiveM);
        yield return Db(r, "v_med_db", v.MedianDb);
        yield return Number(r, "z_t", z.Time);
        yield return Number(r, "z_l", z.Location);
        yield return Number(r, "z_s", z.Situation);
        yield return Db(r, "sigma_s_db", v.SituationSigmaDb);
        yield return Db(r, "sigma_l_db", v.LocationSigmaDb);
        yield return Db(r, "g_minus", v.FactorBelow);
        yield return Db(r, "g_plus", v.FactorAbove);
        yield return Db(r, "sigma_t_minus_db", v.BelowSigmaDb);
        yield return Db(r, "sigma_t_plus_db", v.AboveSigmaDb);
        yield return Db(r, "sigma_td_db", v.DuctSigmaDb);
        yield return Db(r, "sigma_t_db", spread.TimeSigmaDb);
        yield return Db(r, "y_t_db", spread.TimeDb);
        yield return Db(r, "y_l_db", spread.LocationDb);
        yield return Db(r, "y_r_db", spread.ReliabilityDb);
        yield return Db(r, "y_s_db", spread.ConfidenceDb);
        yield return Db(r, "a_before_soft_floor_db", spread.UnlimitedDb);
        yield return Db(r, "a_quantile_db", spread.LossDb);
        yield return Db(r, "a_fs_db", channel.FreeSpaceLossDb);
        yield return Db(r, "a_ref_db", channel.ReferenceAttenuationDb);
        yield return Db(r, "loss_db", channel.Loss(t, l, s).BasicLossDb);
    }
}
