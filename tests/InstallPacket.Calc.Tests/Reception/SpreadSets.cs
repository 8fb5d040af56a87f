using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Spread over places and time, and the chance that follows.</summary>
public static class SpreadSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Spread within a small square", File = "reception/location_sigma_check.csv", Source = "itu-p1546-6", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.001 dB", Formulas = ["location-sigma"], Rows = 25, Comparisons = 25,
            Check = r => [r.Within("sigma_db", LocationVariation.SmallSquareSigmaDb(r.Value("freq_mhz"), r.Value("square_width_m")), 0.00050001, "dB")],
        },
        new()
        {
            Name = "Correction for a share of the places", File = "reception/location_factor_check.csv", Source = "itu-bt2033", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit (0.0001, 0.01 dB)", Formulas = ["normal-quantile", "p1812-share-quantile", "location-correction"], Rows = 6, Comparisons = 36, Check = Shares,
        },
        new()
        {
            Name = "Spread over time", File = "reception/time_sigma.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "1e-9 dB", Formulas = ["time-spread"], Rows = 2, Comparisons = 2,
            Check = r => [r.Within("sigma_db", ReceptionSpread.TimeSigmaDb(r.Value("e50_dbuvm"), r.Value("e90_dbuvm")), 1e-9, "dB")],
        },
        new()
        {
            Name = "Chance of reception from its parts", File = "reception/reception_chance.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["combined-spread", "chance-of-margin"], Rows = 3, Comparisons = 6, Check = Chance,
        },
        new()
        {
            Name = "Spread of a house drawn at random", File = "reception/itm_area_sigma_check.csv", Source = "ntia-itm", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["area-spread-location", "area-spread-situation"], Rows = 72, Comparisons = 216, Check = Area,
        },
        new()
        {
            Name = "Chance of being served for a share of the time", File = "reception/chance_of_reception_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["field-served", "chance-of-margin"], Rows = 72, Comparisons = 144, Check = Served,
        },
        new()
        {
            Name = "Chance of too much level", File = "reception/overload_percentile_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["field-strong", "chance-of-margin"], Rows = 12, Comparisons = 24, Check = TooStrong,
        },
        new()
        {
            Name = "Field for shares of the time", File = "reception/time_field_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["field-served", "field-strong"], Rows = 5, Comparisons = 10, Check = ByTime,
        },
    ];

    private static readonly double Tenth = Probability.Quantile(0.9);

    private static IEnumerable<Comparison> Area(ReferenceRow r)
    {
        var place = AreaSpread.LocationDb(r.Value("f_mhz"), r.Value("distance_km"), r.Value("delta_h_m"));
        var situation = AreaSpread.SituationDb(r.Value("f_mhz"), r.Value("distance_km"), 150, 9.1);
        yield return r.Printed("sigma_location_db", place, "dB");
        yield return r.Printed("sigma_situation_db", situation, "dB");
        yield return r.Printed("sigma_total_db", Probability.CombinedSigmaDb([place, situation]), "dB");
    }

    private static IEnumerable<Comparison> Served(ReferenceRow r)
    {
        double Chance(double share) => 100 * Probability.OfMargin(TimeShare.ServedDbuVm(r.Value("median_margin_db"),
            r.Value("median_margin_db") - Tenth * r.Value("sigma_time_db"), share), r.Value("sigma_unknown_db"));
        yield return r.Printed("chance_service_90pct_time", Chance(90), "%");
        yield return r.Printed("chance_service_99pct_time", Chance(99), "%");
    }

    private static IEnumerable<Comparison> TooStrong(ReferenceRow r)
    {
        var median = r.Value("median_level_dbm");
        var high = TimeShare.StrongDbuVm(median, median + Tenth * r.Value("sigma_time_db"), r.Value("promised_time_pct"));
        yield return r.Printed("level_high_side_dbm", high, "dBm");
        yield return r.Printed("chance_of_overload_pct", 100 * (1 - Probability.OfMargin(r.Value("largest_level_dbm") - high, r.Value("sigma_unknown_db"))), "%");
    }

    private static IEnumerable<Comparison> ByTime(ReferenceRow r)
    {
        var (half, tenth) = (r.Value("E50_dbuvm"), r.Value("E10_dbuvm"));
        yield return r.Printed("E99_mirrored_dbuvm", TimeShare.ServedDbuVm(half, 2 * half - tenth, 99), "dB(uV/m)");
        yield return r.Printed("E1_if_normal_dbuvm", TimeShare.StrongDbuVm(half, tenth, 99), "dB(uV/m)");
    }

    private static IEnumerable<Comparison> Shares(ReferenceRow r)
    {
        var share = r.Value("probability_pct") / 100;
        yield return r.Within("mu_exact", Probability.Quantile(share), 0.000050001, "");
        yield return r.Within("mu_Qi_approximation", -ShareQuantile.Inverse(share), 0.000050001, "");
        foreach (var (column, sigma) in ((string, double)[])[("Cl_sigma5_5", LocationVariation.DigitalSigmaDb), ("Cl_sigma7_1", 7.1), ("Cl_sigma8_1", 8.1), ("Cl_sigma9_7", 9.7)])
            yield return r.Within(column, LocationVariation.CorrectionDb(share, sigma), 0.0050001, "dB");
    }

    private static IEnumerable<Comparison> Chance(ReferenceRow r)
    {
        var basis = Enum.Parse<PredictionBasis>(r.Text("basis"), ignoreCase: true);
        var spread = ReceptionSpread.For(basis, r.Value("time_db"), r.Value("building_db"), r.Value("install_db"));
        var percent = 100 * spread.ChanceOf(r.Value("margin_db"));
        yield return r.Printed("sigma_db", spread.TotalDb, "dB");
        if (r.Text("probability_pct") == ">99.99") yield return r.Expect("above 99.99 %", 1, percent is > 99.99 and < 100 ? 1 : 0, 1e-12, "");
        else yield return r.Printed("probability_pct", percent, "%");
    }
}
