using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Inputs of the terrain model as the reference files name them, and the comparisons that several of them share.</summary>
internal static class ItmRow
{
    public static ItmSettings Settings(ReferenceRow r) => new(
        r.Value("f_mhz"), (ItmPolarisation)r.Value("pol"), (ItmClimate)r.Value("climate"), r.Value("eps_r"), r.Value("sigma_s_per_m"), (int)r.Value("mdvar"));

    public static ItmPath Path(ReferenceRow r, TerrainProfile profile) =>
        ItmPath.Of(profile, r.Value("h_tx_m"), r.Value("h_rx_m"), ItmAir.AtSeaLevel(r.Value("n0")));

    public static ItmResult Loss(ReferenceRow r, TerrainProfile profile) => IrregularTerrain.Loss(
        Path(r, profile), Settings(r), r.Value("time_pct"), r.Value("location_pct"), r.Value("situation_pct"));

    /// <summary>Code and warnings, exactly.</summary>
    public static IEnumerable<Comparison> Codes(ReferenceRow r, ItmResult result, string prefix = "")
    {
        yield return r.Within(prefix + "return_code", result.ReturnCode, Exact, "");
        yield return r.Expect("warnings", Hex(r.Text(prefix + "warnings_hex")), (int)result.Warnings, Exact, "");
    }

    /// <summary>All that the reference exposes of a path with a result.</summary>
    public static IEnumerable<Comparison> Everything(ReferenceRow r, ItmResult result, string prefix = "")
    {
        foreach (var c in Codes(r, result, prefix).Concat(Terrain(r, result.Terrain, prefix))) yield return c;
        yield return r.Within(prefix + "mode", (int)result.Mode, Exact, "");
        yield return r.Within(prefix + "a_fs_db", result.FreeSpaceLossDb, 1e-4, "dB");
        yield return r.Within(prefix + "a_ref_db", result.ReferenceAttenuationDb, 1e-4, "dB");
        yield return r.Within(prefix + "loss_db", result.BasicLossDb, 1e-4, "dB");
    }

    public static IEnumerable<Comparison> Terrain(ReferenceRow r, ItmTerrain t, string prefix = "")
    {
        yield return r.Within(prefix + "n_s", t.SurfaceRefractivity, 1e-5, "N-units");
        yield return r.Within(prefix + "delta_h_m", t.DeltaHM, 1e-4, "m");
        yield return r.Within(prefix + "h_e_tx_m", t.Tx.EffectiveHeightM, 1e-4, "m");
        yield return r.Within(prefix + "h_e_rx_m", t.Rx.EffectiveHeightM, 1e-4, "m");
        yield return r.Within(prefix + "d_hzn_tx_m", t.Tx.HorizonM, 1e-2, "m");
        yield return r.Within(prefix + "d_hzn_rx_m", t.Rx.HorizonM, 1e-2, "m");
        yield return r.Within(prefix + "theta_hzn_tx_rad", t.Tx.HorizonRad, 1e-8, "rad");
        yield return r.Within(prefix + "theta_hzn_rx_rad", t.Rx.HorizonRad, 1e-8, "rad");
    }

    /// <summary>The tolerance of codes: whole numbers are equal or they are not.</summary>
    public const double Exact = 1e-12;

    public static int Hex(string text) => int.Parse(text.AsSpan(2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
