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
    ];

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
