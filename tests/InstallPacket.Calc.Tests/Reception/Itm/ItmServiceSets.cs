using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Television planning on top of the terrain model.</summary>
public static class ItmServiceSets
{
    private static readonly string[] Bands = ["low_vhf_ch2_6", "high_vhf_ch7_13", "uhf_ch14_up"];

    private static readonly Lazy<IReadOnlyList<ReferenceRow>> Factors = new(() => All!.First(s => s.File == "itm/planning_factors.csv").Read());

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Television planning factors, terrain pack", File = "itm/planning_factors.csv", Source = "ised-bpr-10", Worth = Worth.Published,
            Tolerance = "0.1 dB on the dipole factor, which the source cuts rather than rounds; 0.5 dB on the whole-number thresholds; half a unit elsewhere",
            Formulas = ["dipole-factor", "thermal-noise", "planning-threshold"], Rows = 12, Comparisons = 9, RowsLeftOut = 9,
            LeftOutBecause = "figures that are chosen, not computed, and one derived row that has a set of its own", Check = Planning,
        },
        new()
        {
            Name = "Television thresholds before rounding", File = "itm/planning_factors.csv", Source = "ised-bpr-10", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["planning-threshold"], Rows = 12, Comparisons = 3, RowsLeftOut = 11,
            LeftOutBecause = "only the derived row is computed here",
            Check = r => r.Text("provenance") == "derived" ? Bands.Select((band, i) => r.Expect(band, Leading(r.Text(band)), Threshold(i), 0.0051, "dB")) : [],
        },
        new()
        {
            Name = "UHF threshold of every channel", File = "itm/uhf_thresholds.csv", Source = "ised-bpr-10", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["dipole-adjustment"], Rows = 37, Comparisons = 74,
            Check = r =>
            [
                r.Printed("adjustment_ka_db", PlanningThreshold.DipoleAdjustmentDb(r.Value("centre_mhz")), "dB"),
                r.Printed("threshold_dbuvm", 41 - PlanningThreshold.DipoleAdjustmentDb(r.Value("centre_mhz")), "dB"),
            ],
        },
        new()
        {
            Name = "Television service over terrain, losses", File = "itm/tv_service_examples.csv", Source = "ntia-itm", Worth = Worth.Independent,
            Tolerance = "codes and mode exact; half a unit of the last printed digit elsewhere", Formulas = ["itm-basic-loss", "itm-surface-refractivity"], Rows = 24, Comparisons = 24 * 11, Check = Losses,
        },
        new()
        {
            Name = "Television service over terrain, fields", File = "itm/tv_service_examples.csv", Source = "ntia-itm", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["field-from-loss", "dipole-adjustment"],
            Rows = 24, Comparisons = 24 * 5, Check = Fields,
        },
    ];

    private static IEnumerable<Comparison> Planning(ReferenceRow r) => r.Text("symbol") switch
    {
        "Kd" => Bands.Select((band, i) => r.Within(band, DipoleFactor.Kd(Factor("F", i)), 0.1, "dB")),
        "Nt" => Bands.Select(band => r.Printed(band, ThermalNoise.Dbm(6, ThermalNoise.ReferenceK), "dBm")),
        "E" when r.Text("provenance") == "read" => Bands.Select((band, i) => r.Expect(band, Leading(r.Text(band)), Threshold(i), 0.5, "dB")),
        _ => [],
    };

    private static double Factor(string symbol, int band) => Factors.Value.First(r => r.Text("symbol") == symbol).Value(Bands[band]);

    // From the printed factors, with the measured 15.19 dB of the source; at UHF for 615 MHz, where the adjustment is 0.
    private static double Threshold(int band) =>
        PlanningThreshold.FieldDbuVm(15.19, Factor("Kd", band), Factor("G", band), Factor("L", band), Factor("Nt", band), Factor("Ns", band));

    // "41 - 20 log(615/f)" stands for 41 at 615 MHz.
    private static double Leading(string text) => double.Parse(text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);

    private static (ItmPath Path, ItmChannel Channel) Channel(ReferenceRow r)
    {
        var air = r.Text("refractivity_rule") == "Ns=301 fixed"
            ? ItmAir.FixedAtGround(IrregularTerrain.TelevisionRefractivity)
            : ItmAir.AtSeaLevel(r.Value("n0_given"));
        var path = ItmPath.Of(ItmProfiles.Of(r.Text("profile")), r.Value("h_tx_m"), r.Value("h_rx_m"), air);
        return (path, ItmChannel.Of(path, ItmSettings.Television(r.Value("f_mhz"))));
    }

    private static IEnumerable<Comparison> Losses(ReferenceRow r)
    {
        var (path, channel) = Channel(r);
        var median = channel.Loss(50, 50, 50);
        yield return r.Printed("n_s", path.Terrain.SurfaceRefractivity, "N-units");
        yield return r.Printed("h_sys_m", path.Terrain.SystemHeightM, "m");
        yield return r.Printed("delta_h_m", path.Terrain.DeltaHM, "m");
        yield return r.Within("mode", (int)median.Mode, ItmRow.Exact, "");
        yield return r.Within("error_class", (int)median.Class, ItmRow.Exact, "");
        yield return r.Expect("warnings", ItmRow.Hex(r.Text("warnings_hex")), (int)median.Warnings, ItmRow.Exact, "");
        yield return r.Printed("a_fs_db", median.FreeSpaceLossDb, "dB");
        yield return r.Printed("a_ref_db", median.ReferenceAttenuationDb, "dB");
        yield return r.Printed("loss50_db", median.BasicLossDb, "dB");
        yield return r.Printed("loss90_db", channel.Loss(90, 50, 50).BasicLossDb, "dB");
        yield return r.Printed("loss10_db", channel.Loss(10, 50, 50).BasicLossDb, "dB");
    }

    private static IEnumerable<Comparison> Fields(ReferenceRow r)
    {
        var (path, channel) = Channel(r);
        var threshold = r.Value("f_mhz") < 108 ? 28 : r.Value("f_mhz") < 300 ? 36 : 41 - PlanningThreshold.DipoleAdjustmentDb(r.Value("f_mhz"));
        double Field(double timePct) => FieldFromLoss.DbuVm(r.Value("erp_kw"), path.LengthM / 1000, channel.Loss(timePct, 50, 50).BasicLossDb, channel.FreeSpaceLossDb);
        yield return r.Printed("e50_dbuvm", Field(50), "dB");
        yield return r.Printed("e90_dbuvm", Field(90), "dB");
        yield return r.Printed("e10_dbuvm", Field(10), "dB");
        yield return r.Printed("threshold_dbuvm", threshold, "dB");
        yield return r.Printed("margin90_db", Field(90) - threshold, "dB");
    }
}
