using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

public static class NoiseSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Thermal noise by bandwidth", File = "reception/ktb_check.csv", Source = "bipm-si", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["thermal-noise", "level-dbuv"], Rows = 8, Comparisons = 24, Check = Thermal,
        },
        new()
        {
            Name = "External noise lines", File = "reception/external_noise_check.csv", Source = "itu-p372", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["external-noise-line"], Rows = 39, Comparisons = 31,
            RowsLeftOut = 8, LeftOutBecause = "four rows of the upper business line, which is not carried, and four man-made rows at 600 MHz outside the validity of the lines", Check = Line,
        },
        new()
        {
            Name = "System noise", File = "reception/external_noise_check.csv", Source = "itu-p372", Worth = Worth.Derived,
            Tolerance = "0.01 dB, half a unit of the printed Fa and of the result", Formulas = ["system-noise-figure", "thermal-noise"], Rows = 39, Comparisons = 117, Check = System,
        },
        new()
        {
            Name = "Chance of a margin", File = "reception/probability_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["chance-of-margin"], Rows = 44, Comparisons = 44,
            Check = r => [r.Within("probability_pct", 100 * Probability.OfMargin(r.Value("margin_db"), r.Value("sigma_db")), 0.0050001, "%")],
        },
        new()
        {
            Name = "Spread of independent parts", File = "reception/combined_spread.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["combined-spread"], Rows = 1, Comparisons = 1,
            Check = r => [r.Printed("sigma_db", Probability.CombinedSigmaDb([r.Value("sigma_1"), r.Value("sigma_2")]), "dB")],
        },
    ];

    private static IEnumerable<Comparison> Thermal(ReferenceRow r)
    {
        var dbm = ThermalNoise.Dbm(r.Value("bandwidth_mhz"), ThermalNoise.ReferenceK);
        yield return r.Within("ktb_dbm_290K", dbm, 0.00050001, "dBm");
        yield return r.Within("ktb_dbmv_75", LevelUnits.DbmVFromDbm(dbm), 0.00050001, "dBmV");
        yield return r.Within("ktb_dbuv_75", LevelUnits.DbuVFromDbm(dbm), 0.00050001, "dBuV");
    }

    private static IEnumerable<Comparison> Line(ReferenceRow r)
    {
        var f = r.Value("freq_mhz");
        var name = r.Text("environment");
        if (name == "galactic") return [r.Within("Fa_db", ExternalNoise.GalacticDb(f), 0.0050001, "dB")];
        if (name == "business upper" || r.Text("in_validity") != "yes") return [];
        var environment = name switch
        {
            "city" => NoiseEnvironment.City,
            "residential" => NoiseEnvironment.Residential,
            "rural" => NoiseEnvironment.Rural,
            "quiet rural" => NoiseEnvironment.QuietRural,
            _ => throw new FormatException(name),
        };
        return [r.Within("Fa_db", ExternalNoise.ManMadeDb(environment, f), 0.0050001, "dB")];
    }

    private static IEnumerable<Comparison> System(ReferenceRow r)
    {
        // From the printed antenna temperature, which carries more digits than Fa when the sky is quiet.
        var fa = 10 * Math.Log10(r.Value("Ta_K") / ThermalNoise.ReferenceK);
        var withFeeder = SystemNoise.FigureDb(fa, 2 + 7);
        yield return r.Within("Fsys_db_with_2dB_feeder_NF7", withFeeder, 0.01, "dB");
        yield return r.Within("N_dbm_6MHz", ThermalNoise.Dbm(6, ThermalNoise.ReferenceK) + withFeeder, 0.01, "dBm");
        yield return r.Within("Fsys_db_with_masthead_NF1", SystemNoise.FigureDb(fa, 1), 0.01, "dB");
    }
}
