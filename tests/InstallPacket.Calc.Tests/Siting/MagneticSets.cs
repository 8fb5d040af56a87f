using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Siting;

public static class MagneticSets
{
    // The sigma term belongs to the WMM error model; the comparison model has none of its own and it is not compared.
    private static readonly MagneticCoefficients Igrf14 =
        MagneticCoefficients.FromCsv("IGRF-14", 2025.0, 5417, ReferenceFile.Text("siting/igrf14-2025-coefficients.csv"));

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Magnetic field, WMM2025 test values", File = "siting/wmm2025-test-values.csv", Source = "wmm-2025", Worth = Worth.Published,
            Tolerance = "0.0051 deg for the angles (printed to 0.01); 0.01 nT and 1e-5 per year elsewhere: the published sixth decimals of H, X, F differ by up to 0.0007 nT from the equations",
            Formulas = ["magnetic-declination"], Rows = 100, Comparisons = 1400, Check = r => Values(r, MagneticCoefficients.Wmm2025, Fair),
        },
        new()
        {
            Name = "Magnetic field, WMM2020 test values", File = "siting/wmm2020-test-values.csv", Source = "wmm-2020", Worth = Worth.Published,
            Tolerance = "half a unit of the last printed digit", Formulas = ["magnetic-declination"], Rows = 100, Comparisons = 1400,
            Check = r => Values(r, MagneticCoefficients.Wmm2020, (row, column, value, unit) => row.Printed(column, value, unit)),
        },
        new()
        {
            Name = "Magnetic field, table of the WMM2025 report", File = "siting/wmm2025-report-table.csv", Source = "wmm-2025", Worth = Worth.Published,
            Tolerance = "half a unit of the last printed digit", Formulas = ["magnetic-declination"], Rows = 12, Comparisons = 168, Check = Report,
        },
        new()
        {
            Name = "Declination and its error at 19 places", File = "siting/declination-check-places.csv", Source = "wmm-2025", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["magnetic-declination", "declination-sigma"], Rows = 57, Comparisons = 228, Check = Places,
        },
        new()
        {
            Name = "Declination against an independent model", File = "siting/declination-check-places.csv", Source = "igrf-14", Worth = Worth.Independent,
            Tolerance = "0.095 deg between the two models, the rounded maximum 0.09 of the reference notes with its rounding", Formulas = ["magnetic-declination"],
            Rows = 57, Comparisons = 54, RowsLeftOut = 3, LeftOutBecause = "one place with H below 6000 nT, where declinations of two models part", Check = AgainstIgrf,
        },
        new()
        {
            Name = "Declination of the second model", File = "siting/declination-check-places.csv", Source = "igrf-14", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["magnetic-declination"], Rows = 57, Comparisons = 57,
            Check = r => [r.Printed("igrf14_D_deg", Field(r, Igrf14).DeclinationDeg, "deg")],
        },
        new()
        {
            Name = "Legendre functions inside the model", File = "siting/magnetic_intermediate.csv", Source = "wmm-2025", Worth = Worth.Derived,
            Tolerance = "5e-12: the inputs p and z are printed to 13 digits and the recurrence runs to degree 12", Formulas = ["magnetic-declination"], Rows = 10, Comparisons = 20, Check = Legendre,
        },
        new()
        {
            Name = "Magnetic field, worked place", File = "siting/magnetic_worked.csv", Source = "wmm-2025", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["magnetic-declination"], Rows = 1, Comparisons = 8, Check = Worked,
        },
        new()
        {
            Name = "From true to magnetic bearing", File = "siting/compass_worked.csv", Source = "usgs-bearings", Worth = Worth.Derived,
            Tolerance = "exact after rounding to 0.1 deg", Formulas = ["magnetic-bearing"], Rows = 6, Comparisons = 6,
            Check = r => [r.Within("magnetic_deg", CompassBearing.RoundForPrint(CompassBearing.MagneticFromTrue(r.Value("true_deg"), r.Value("declination_deg")), 1), 1e-9, "deg")],
        },
    ];

    private static Comparison Fair(ReferenceRow r, string column, double value, string unit) =>
        r.Within(column, value, unit switch { "deg" => 0.0051, "nT" => 0.01, _ => 1e-5 }, unit);

    private static MagneticField Field(ReferenceRow r, MagneticCoefficients model) =>
        MagneticModel.At(model, r.Value("lat"), r.Value("lon"), r.Value("height_km"), r.Value("year"));

    private static IEnumerable<Comparison> Values(ReferenceRow r, MagneticCoefficients model, Func<ReferenceRow, string, double, string, Comparison> compare)
    {
        var f = Field(r, model);
        return
        [
            compare(r, "D_deg", f.DeclinationDeg, "deg"), compare(r, "I_deg", f.InclinationDeg, "deg"),
            compare(r, "H_nT", f.H, "nT"), compare(r, "X_nT", f.X, "nT"), compare(r, "Y_nT", f.Y, "nT"), compare(r, "Z_nT", f.Z, "nT"), compare(r, "F_nT", f.F, "nT"),
            compare(r, "dD_deg_per_yr", f.DeclinationRateDegPerYear, "deg/yr"), compare(r, "dI_deg_per_yr", f.InclinationRateDegPerYear, "deg/yr"),
            compare(r, "dH_nT_per_yr", f.RateH, "nT/yr"), compare(r, "dX_nT_per_yr", f.RateX, "nT/yr"), compare(r, "dY_nT_per_yr", f.RateY, "nT/yr"),
            compare(r, "dZ_nT_per_yr", f.RateZ, "nT/yr"), compare(r, "dF_nT_per_yr", f.RateF, "nT/yr"),
        ];
    }

    private static IEnumerable<Comparison> Report(ReferenceRow r)
    {
        var f = Field(r, MagneticCoefficients.Wmm2025);
        return
        [
            r.Printed("X_nT", f.X, "nT"), r.Printed("Y_nT", f.Y, "nT"), r.Printed("Z_nT", f.Z, "nT"), r.Printed("H_nT", f.H, "nT"), r.Printed("F_nT", f.F, "nT"),
            r.Printed("I_deg", f.InclinationDeg, "deg"), r.Printed("D_deg", f.DeclinationDeg, "deg"),
            r.Printed("dX", f.RateX, "nT/yr"), r.Printed("dY", f.RateY, "nT/yr"), r.Printed("dZ", f.RateZ, "nT/yr"), r.Printed("dH", f.RateH, "nT/yr"),
            r.Printed("dF", f.RateF, "nT/yr"), r.Printed("dI", f.InclinationRateDegPerYear, "deg/yr"), r.Printed("dD", f.DeclinationRateDegPerYear, "deg/yr"),
        ];
    }

    private static IEnumerable<Comparison> Places(ReferenceRow r)
    {
        var f = MagneticModel.At(r.Value("lat"), r.Value("lon"), r.Value("height_km"), r.Value("year"));
        yield return r.Printed("wmm2025_D_deg", f.DeclinationDeg, "deg");
        yield return r.Printed("wmm2025_dD_deg_per_yr", f.DeclinationRateDegPerYear, "deg/yr");
        yield return r.Printed("wmm2025_H_nT", f.H, "nT");
        yield return r.Printed("wmm2025_sigmaD_deg", f.SigmaDeclinationDeg, "deg");
    }

    private static IEnumerable<Comparison> Worked(ReferenceRow r)
    {
        var f = Field(r, MagneticCoefficients.Wmm2025);
        return
        [
            r.Printed("X_nT", f.X, "nT"), r.Printed("Y_nT", f.Y, "nT"), r.Printed("Z_nT", f.Z, "nT"), r.Printed("H_nT", f.H, "nT"), r.Printed("F_nT", f.F, "nT"),
            r.Printed("I_deg", f.InclinationDeg, "deg"), r.Printed("D_deg", f.DeclinationDeg, "deg"), r.Printed("dD_deg_per_yr", f.DeclinationRateDegPerYear, "deg/yr"),
        ];
    }

    private static IEnumerable<Comparison> AgainstIgrf(ReferenceRow r)
    {
        var wmm = Field(r, MagneticCoefficients.Wmm2025);
        if (wmm.H > 6000) yield return r.Within("igrf14_D_deg", wmm.DeclinationDeg, 0.095, "deg");
    }

    private static IEnumerable<Comparison> Legendre(ReferenceRow r)
    {
        // phi' of the worked place, from its printed p and z.
        const double p = 4892.899111183, z = 4078.146269103;
        var radius = Math.Sqrt(p * p + z * z);
        var table = new LegendreTable(z / radius, p / radius, 12);
        var (n, m) = ((int)r.Value("n"), (int)r.Value("m"));
        yield return r.Within("p", table.P(n, m), 5e-12, "");
        yield return r.Within("q", table.Q(n, m), 5e-12, "");
    }
}
