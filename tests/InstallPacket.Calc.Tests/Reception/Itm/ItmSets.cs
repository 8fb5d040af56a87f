using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>The terrain model as a whole against published results and against runs of the published program.</summary>
public static class ItmSets
{
    private const string Tolerances =
        "codes, warnings and mode exact; 1e-4 dB, effective heights and delta-h 1e-4 m, horizons 1e-2 m (the square root of rounding noise in delta-h reaches them) and 1e-8 rad, refractivity 1e-5";

    private static readonly string[] Loss = ["itm-basic-loss", "itm-free-space-loss"];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Terrain model, published test set", File = "itm/official_p2p.csv", Source = "ntia-itm", Worth = Worth.Published,
            Tolerance = "0.0051 dB: two published decimals", Formulas = Loss, Rows = 5, Comparisons = 5,
            Check = r => [r.Within("loss_db_published", Official(r).BasicLossDb, 0.0051, "dB")],
        },
        new()
        {
            Name = "Terrain model, published sample runs", File = "itm/official_driver_examples.csv", Source = "ntia-itm", Worth = Worth.Published,
            Tolerance = "half a unit of the last printed digit", Formulas = Loss, Rows = 11, Comparisons = 132, Check = Driver,
        },
        new()
        {
            Name = "Terrain model, published test set run with more digits", File = "itm/official_p2p.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = Tolerances, Formulas = Loss, Rows = 5, Comparisons = 70, Check = r => ItmRow.Everything(r, Official(r), "ref_"),
        },
        new()
        {
            Name = "Terrain model against the published program", File = "itm/vectors.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = Tolerances, Formulas = Loss, Rows = 3606, Comparisons = 3602 * 15 + 4 * 2, Check = Vector,
        },
        new()
        {
            Name = "Terrain model against the archived program", File = "itm/vectors.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = "0.06 dB: constants there are rounded otherwise (the two published programs differ by up to 0.058 dB)", Formulas = Loss,
            Rows = 3606, Comparisons = 3602, RowsLeftOut = 4, LeftOutBecause = "refused, no loss",
            Check = r => r.Text("loss_fortran_db").Length == 0 ? [] : [r.Within("loss_fortran_db", Synthetic(r).BasicLossDb, 0.06, "dB")],
        },
        new()
        {
            Name = "Terrain model against the published program, second set", File = "itm/generated.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = Tolerances, Formulas = Loss, Rows = 132, Comparisons = 132 * 14,
            Check = r => ItmRow.Everything(r, ItmRow.Loss(r, ItmProfiles.GeneratedOf(r.Text("profile")))),
        },
        new()
        {
            Name = "Limits of the terrain model", File = "itm/error_cases.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = "codes and warnings exact, 1e-4 dB; a refusal has no loss", Formulas = Loss, Rows = 77, Comparisons = 231, Check = Limit,
        },
        new()
        {
            Name = "Inputs for which the published program is not defined", File = "itm/undefined_cases.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = "refused, where the program prints the loss of free space; the rest as above", Formulas = ["itm-basic-loss", "itm-smooth-earth"],
            Rows = 8, Comparisons = 8 * 12, Check = Undefined,
        },
    ];

    private static ItmResult Official(ReferenceRow r) => ItmRow.Loss(r, ItmProfiles.OfficialCase(r.Text("case")));

    private static ItmResult Synthetic(ReferenceRow r) => ItmRow.Loss(r, ItmProfiles.Of(r.Text("profile")));

    private static IEnumerable<Comparison> Vector(ReferenceRow r)
    {
        var result = Synthetic(r);
        if (r.Value("return_code") >= 1000) return ItmRow.Codes(r, result);
        return ItmRow.Everything(r, result).Append(r.Within("kwx_fortran", (int)result.Class, ItmRow.Exact, ""));
    }

    // Reliability and confidence are the time and the situation, with half of the locations.
    private static IEnumerable<Comparison> Driver(ReferenceRow r)
    {
        var path = ItmRow.Path(r, ItmProfiles.OfDriver);
        var result = IrregularTerrain.Loss(
            path, ItmRow.Settings(r), r.Value("time_or_reliability_pct"), r.Value("location_pct"), r.Value("situation_or_confidence_pct"));
        var t = result.Terrain;
        yield return r.Printed("loss_db_published", result.BasicLossDb, "dB");
        yield return r.Printed("a_fs_db_published", result.FreeSpaceLossDb, "dB");
        yield return r.Printed("theta_tx_mrad_published", t.Tx.HorizonRad * 1000, "mrad");
        yield return r.Printed("theta_rx_mrad_published", t.Rx.HorizonRad * 1000, "mrad");
        yield return r.Printed("d_hzn_tx_m_published", t.Tx.HorizonM, "m");
        yield return r.Printed("d_hzn_rx_m_published", t.Rx.HorizonM, "m");
        yield return r.Printed("h_e_tx_m_published", t.Tx.EffectiveHeightM, "m");
        yield return r.Printed("h_e_rx_m_published", t.Rx.EffectiveHeightM, "m");
        yield return r.Printed("n_s_published", t.SurfaceRefractivity, "N-units");
        yield return r.Printed("delta_h_m_published", t.DeltaHM, "m");
        yield return r.Printed("a_ref_db_published", result.ReferenceAttenuationDb, "dB");
        yield return r.Within("mode_published", (int)result.Mode, ItmRow.Exact, "");
    }

    private static IEnumerable<Comparison> Limit(ReferenceRow r)
    {
        var result = Synthetic(r);
        var loss = r.Text("loss_db").Length > 0
            ? r.Within("loss_db", result.BasicLossDb, 1e-4, "dB")
            : r.Expect("no loss", 1, double.IsNaN(result.BasicLossDb) ? 1 : 0, ItmRow.Exact, "");
        return ItmRow.Codes(r, result).Append(loss);
    }

    private static IEnumerable<Comparison> Undefined(ReferenceRow r)
    {
        var result = Synthetic(r);
        yield return r.Expect("refusal", (int)ItmRefusal.Undefined, result.ReturnCode, ItmRow.Exact, "");
        yield return r.Expect("no loss", 1, double.IsNaN(result.BasicLossDb) && double.IsNaN(result.ReferenceAttenuationDb) ? 1 : 0, ItmRow.Exact, "");
        yield return r.Expect("warnings", ItmRow.Hex(r.Text("warnings_hex")), (int)result.Warnings, ItmRow.Exact, "");
        // One row lies on a tie of rounding (0.0307755), which half a unit would split.
        yield return r.Within("z_g_abs", ItmWave.Of(ItmRow.Settings(r)).Impedance.Magnitude, 6e-7, "");
        foreach (var c in ItmRow.Terrain(r, result.Terrain)) yield return c;
    }
}
