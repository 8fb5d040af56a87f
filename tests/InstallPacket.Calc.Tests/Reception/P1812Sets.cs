using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>The prediction over a profile against official results and against the reference program.</summary>
public static class P1812Sets
{
    private const string Source = "itu-p1812";

    private const string Tight = "1e-6 dB, mrad, m and km, 1e-8 on pure numbers; half a unit of the tenth digit where a distance or number is printed coarser than that";

    private static readonly string[] Chain =
    [
        "p1812-loss", "p1812-field", "p1812-line-of-sight", "p1812-bullington", "p1812-smooth-earth", "p1812-first-term", "p1812-delta-bullington", "p1812-diffraction-time",
        "p1812-troposcatter", "p1812-ducting", "p1812-blend", "p1812-share-quantile", "p1812-layered-time", "p1812-effective-radius", "p1812-centre-latitude",
    ];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Path predictions against the official results", File = "p1812/results.csv", Source = Source, Worth = Worth.Published,
            Tolerance = "1e-6 dB, on loss and on field for the printed power", Formulas = ["p1812-loss", "p1812-field"], Rows = 42, Comparisons = 84, Check = Official,
        },
        new()
        {
            Name = "Path predictions, every intermediate value of the official cases", File = "p1812/results.csv", Source = Source, Worth = Worth.Independent,
            Tolerance = Tight, Formulas = Chain, Rows = 42, Comparisons = 42 * 65, Check = Intermediates,
        },
        new()
        {
            Name = "Path predictions at television channels, other heights, climates and coasts", File = "p1812/extra.csv", Source = Source, Worth = Worth.Independent,
            Tolerance = "1e-6 dB", Formulas = ["p1812-loss", "p1812-field"], Rows = 376, Comparisons = 752, Check = Extra,
        },
        new()
        {
            // The reference program gave loss and field of these rows; the values on the way come from a second writing of the same equations.
            Name = "The same, every intermediate value", File = "p1812/extra.csv", Source = Source, Worth = Worth.Derived,
            Tolerance = Tight, Formulas = Chain, Rows = 376, Comparisons = 376 * 65, Check = Intermediates,
        },
        new()
        {
            Name = "Single functions of the path prediction", File = "p1812/function_checks.csv", Source = Source, Worth = Worth.Independent,
            Tolerance = "one part in 1e9, the ten printed digits; 1e-12 near zero", Formulas = [.. P1812Functions.Formulas], Rows = 173, Comparisons = 173, Check = P1812Functions.Check,
        },
        new()
        {
            Name = "Path predictions in another climate", File = "p1812/sensitivity.csv", Source = Source, Worth = Worth.Independent,
            Tolerance = "half a unit of the last printed digit", Formulas = ["p1812-loss", "p1812-effective-radius", "p1812-troposcatter"], Rows = 28, Comparisons = 28 * 13, Check = Sensitivity,
        },
        new()
        {
            Name = "Path predictions, spread over time and the mirrored 90 %", File = "p1812/time_spread.csv", Source = Source, Worth = Worth.Independent,
            Tolerance = "half a unit of the last printed digit", Formulas = ["p1812-loss", "p1812-field", "p1812-time-mirror"], Rows = 56, Comparisons = 56 * 14, Check = TimeSpread,
        },
        new()
        {
            Name = "Profiles of the path predictions", File = "p1812/profiles.csv", Source = Source, Worth = Worth.Derived,
            Tolerance = "exact: every point of every profile is read", Formulas = [], Rows = 19, Comparisons = 38, Check = Profiles,
        },
    ];

    private static IEnumerable<Comparison> Official(ReferenceRow r)
    {
        var loss = PathSpecificPrediction.Loss(P1812Inputs.Path(r), P1812Inputs.Case(r));
        yield return r.Within("official_Lb_dB", loss.LossDb, 1e-6, "dB");
        yield return r.Within("official_E_dBuVm", loss.FieldDbuVm + 10 * Math.Log10(r.Value("ERP_kW")), 1e-6, "dB");
    }

    private static IEnumerable<Comparison> Intermediates(ReferenceRow r)
    {
        var path = P1812Inputs.Path(r);
        return P1812Intermediates.All(r, path, PathSpecificPrediction.Loss(path, P1812Inputs.Case(r)));
    }

    private static IEnumerable<Comparison> Extra(ReferenceRow r)
    {
        var loss = PathSpecificPrediction.Loss(P1812Inputs.Path(r), P1812Inputs.Case(r));
        yield return r.Within("Lb_dB", loss.LossDb, 1e-6, "dB");
        yield return r.Within("E_dBuVm", loss.FieldDbuVm + 10 * Math.Log10(r.Value("ERP_kW")), 1e-6, "dB");
    }

    private static IEnumerable<Comparison> Sensitivity(ReferenceRow r)
    {
        double Lb(double? deltaN, double? seaLevelN0) =>
            PathSpecificPrediction.Loss(P1812Inputs.ListedPath(r, deltaN, seaLevelN0), new(r.Value("f_MHz"), r.Value("p_pct"))).LossDb;
        var standard = Lb(45, 325);
        yield return r.Printed("length_km", P1812Inputs.Profile(r.Text("profile")).LengthKm, "km");
        yield return r.Within("path_type", P1812Inputs.ListedPath(r, 45, 325).Horizons.BeyondHorizon ? 2 : 1, 1e-9, "");
        yield return r.Printed("Lb_default_dB", standard, "dB");
        foreach (var deltaN in (int[])[30, 35, 40, 50, 55, 60]) yield return r.Printed($"dLb_DN{deltaN}_dB", Lb(deltaN, 325) - standard, "dB");
        foreach (var n0 in (int[])[290, 310, 340, 370]) yield return r.Printed($"dLb_N0_{n0}_dB", Lb(45, n0) - standard, "dB");
    }

    private static IEnumerable<Comparison> TimeSpread(ReferenceRow r)
    {
        var path = P1812Inputs.ListedPath(r);
        var mirror = TimeMirror.Of(path, r.Value("f_MHz"));
        yield return r.Printed("length_km", path.Frame.LengthKm, "km");
        yield return r.Printed("omega", path.Statistics.SeaFraction, "");
        yield return r.Within("path_type", path.Horizons.BeyondHorizon ? 2 : 1, 1e-9, "");
        yield return r.Printed("theta_mrad", path.Horizons.AngularDistanceMrad, "mrad");
        yield return r.Printed("beta0_pct", path.Statistics.LayeredPercent, "%");
        yield return r.Printed("Lb01_dB", PathSpecificPrediction.Loss(path, new(r.Value("f_MHz"), 1)).LossDb, "dB");
        yield return r.Printed("Lb10_dB", mirror.Tenth.LossDb, "dB");
        yield return r.Printed("Lb50_dB", mirror.Median.LossDb, "dB");
        yield return r.Printed("spread_10_50_dB", mirror.SpreadDb, "dB");
        yield return r.Within("ducting_controls_10pct", TimeMirror.DuctsRule(mirror.Tenth) ? 1 : 0, 1e-9, "");
        yield return r.Expect("use_reflection", r.Text("use_reflection") == "yes" ? 1 : 0, mirror.LossDb is null ? 0 : 1, 1e-9, "");
        yield return r.Printed("Lb90_reflected_dB", mirror.MirroredDb, "dB");
        yield return r.Printed("E50_1kW_dBuVm", mirror.Median.FieldDbuVm, "dB");
        yield return r.Printed("E90_reflected_1kW_dBuVm", mirror.FieldDbuVm ?? mirror.Median.FieldDbuVm + mirror.Median.LossDb - mirror.MirroredDb, "dB");
    }

    private static IEnumerable<Comparison> Profiles(ReferenceRow r)
    {
        var profile = P1812Inputs.Profile(r.Text("profile"));
        yield return r.Within("points", profile.Count, 1e-9, "");
        yield return r.Within("length_km", profile.LengthKm, 1e-9, "km");
    }
}
