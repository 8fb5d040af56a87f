using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Every intermediate value that a row of the path predictions prints, beside ours.</summary>
public static class P1812Intermediates
{
    // The tolerances that the notes ask for in double precision; they leave pure numbers and distances open.
    private const double Db = 1e-6, Mrad = 1e-6, M = 1e-6, Km = 1e-6, Number = 1e-8;

    public static IEnumerable<Comparison> All(ReferenceRow r, PreparedPath path, PathLoss loss) =>
        [.. Geometry(r, path), .. Heights(r, path), .. Diffraction(r, loss), .. Ducting(r, path, loss), .. Blending(r, loss)];

    private static IEnumerable<Comparison> Geometry(ReferenceRow r, PreparedPath path)
    {
        var (s, h) = (path.Statistics, path.Horizons);
        yield return TenDigits(r, "d_km", path.Frame.LengthKm, Km, "km");
        yield return TenDigits(r, "phi_mid_deg", path.Climate.LatitudeDeg, Number, "deg");
        yield return TenDigits(r, "omega", s.SeaFraction, Number, "");
        yield return TenDigits(r, "dtm_km", s.LongestLandKm, Km, "km");
        yield return TenDigits(r, "dlm_km", s.LongestInlandKm, Km, "km");
        yield return TenDigits(r, "tau", s.Tau, Number, "");
        yield return TenDigits(r, "mu1", s.Mu1, Number, "");
        yield return TenDigits(r, "beta0_pct", s.LayeredPercent, Number, "%");
        yield return TenDigits(r, "ae_km", path.Frame.MedianRadiusKm, Km, "km");
        yield return TenDigits(r, "path_type", h.BeyondHorizon ? 2 : 1, Number, "");
        yield return TenDigits(r, "dlt_km", h.TxDistanceKm, Km, "km");
        yield return TenDigits(r, "dlr_km", h.RxDistanceKm, Km, "km");
        yield return r.Within("theta_t_mrad", h.TxElevationMrad, Mrad, "mrad");
        yield return r.Within("theta_r_mrad", h.RxElevationMrad, Mrad, "mrad");
        yield return r.Within("theta_mrad", h.AngularDistanceMrad, Mrad, "mrad");
    }

    private static IEnumerable<Comparison> Heights(ReferenceRow r, PreparedPath path)
    {
        var s = path.Surface;
        yield return r.Within("hts_m", path.Frame.TxAboveSeaM, M, "m");
        yield return r.Within("hrs_m", path.Frame.RxAboveSeaM, M, "m");
        yield return r.Within("hst_fit_m", s.FitTxM, M, "m");
        yield return r.Within("hsr_fit_m", s.FitRxM, M, "m");
        yield return r.Within("hst_m", s.TxM, M, "m");
        yield return r.Within("hsr_m", s.RxM, M, "m");
        yield return r.Within("hstd_m", s.DiffractionTxM, M, "m");
        yield return r.Within("hsrd_m", s.DiffractionRxM, M, "m");
        yield return r.Within("hte_m", s.TxEffectiveM, M, "m");
        yield return r.Within("hre_m", s.RxEffectiveM, M, "m");
        yield return r.Within("hm_m", s.RoughnessM, M, "m");
    }

    private static IEnumerable<Comparison> Diffraction(ReferenceRow r, PathLoss loss)
    {
        var (s, d) = (loss.Sight, loss.Diffraction);
        yield return r.Within("Lbfs_dB", s.FreeSpaceDb, Db, "dB");
        yield return r.Within("Lb0p_dB", s.BasicDb, Db, "dB");
        yield return r.Within("Lb0beta_dB", s.LayeredDb, Db, "dB");
        yield return TenDigits(r, "nu_a50", d.Median.TerrainNu, Number, "");
        yield return r.Within("Lbulla50_dB", d.Median.TerrainDb, Db, "dB");
        yield return r.Within("Lbulls50_dB", d.Median.SmoothDb, Db, "dB");
        yield return r.Within("Ldsph50_dB", d.Median.SphereDb, Db, "dB");
        yield return r.Within("Ld50_dB", d.Median.TotalDb, Db, "dB");
        yield return r.Within("Lbullabeta_dB", d.Layered.TerrainDb, Db, "dB");
        yield return r.Within("Lbullsbeta_dB", d.Layered.SmoothDb, Db, "dB");
        yield return r.Within("Ldsphbeta_dB", d.Layered.SphereDb, Db, "dB");
        yield return r.Within("Ldbeta_dB", d.Layered.TotalDb, Db, "dB");
        yield return TenDigits(r, "Fi_diff", d.Weight, Number, "");
        yield return r.Within("Ldp_dB", d.WantedDb, Db, "dB");
        yield return r.Within("Lbd50_dB", d.MedianBasicDb, Db, "dB");
        yield return r.Within("Lbd_dB", d.BasicDb, Db, "dB");
    }

    private static IEnumerable<Comparison> Ducting(ReferenceRow r, PreparedPath path, PathLoss loss)
    {
        var (p, d) = (path.Ducting, loss.Ducting);
        yield return r.Within("Alf_dB", d.LowFrequencyDb, Db, "dB");
        yield return r.Within("Ast_dB", d.TxShieldingDb, Db, "dB");
        yield return r.Within("Asr_dB", d.RxShieldingDb, Db, "dB");
        yield return r.Within("Act_dB", p.TxCoastDb, Db, "dB");
        yield return r.Within("Acr_dB", p.RxCoastDb, Db, "dB");
        yield return r.Within("Af_dB", d.CouplingDb, Db, "dB");
        yield return r.Within("theta1_mrad", p.AngleMrad, Mrad, "mrad");
        yield return TenDigits(r, "mu2", p.Mu2, Number, "");
        yield return TenDigits(r, "mu3", p.Mu3, Number, "");
        yield return TenDigits(r, "beta_pct", p.DuctedPercent, Number, "%");
        yield return TenDigits(r, "Gamma", p.Gamma, Number, "");
        yield return r.Within("Ap_dB", d.TimeDb, Db, "dB");
        yield return r.Within("Lba_dB", d.BasicDb, Db, "dB");
    }

    private static IEnumerable<Comparison> Blending(ReferenceRow r, PathLoss loss)
    {
        var b = loss.Blend;
        yield return TenDigits(r, "Fj", b.SightWeight, Number, "");
        yield return TenDigits(r, "Fk", b.DistanceWeight, Number, "");
        yield return r.Within("Lminb0p_dB", b.LeastSightDb, Db, "dB");
        yield return r.Within("Lminbap_dB", b.LeastDuctedDb, Db, "dB");
        yield return r.Within("Lbda_dB", b.DuctedDb, Db, "dB");
        yield return r.Within("Lbam_dB", b.UnscatteredDb, Db, "dB");
        yield return r.Within("Lbs_dB", loss.ScatterDb, Db, "dB");
        yield return r.Within("Lbc_dB", b.MedianPlaceDb, Db, "dB");
        yield return r.Within("Lloc_dB", loss.LocationDb, Db, "dB");
        yield return r.Within("E_1kW_dBuVm", loss.FieldDbuVm, Db, "dB(uV/m)");
    }

    // Large values are printed coarser than the tolerance: half a unit of the tenth digit is then all that can be asked.
    private static Comparison TenDigits(ReferenceRow r, string column, double computed, double tolerance, string unit) =>
        r.Within(column, computed, Math.Max(tolerance, 5.0000001e-10 * Math.Abs(r.Value(column))), unit);
}
