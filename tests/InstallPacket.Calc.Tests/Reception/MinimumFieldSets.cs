using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>The European chain from required ratio to planned field, and what planners assume.</summary>
public static partial class MinimumFieldSets
{
    // Representative frequencies of bands III, IV and V.
    private static readonly double[] BandsMHz = [200, 500, 800];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "European minimum field, every step", File = "reception/minimum_field_check.csv", Source = "itu-bt2033", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.01 dB; 0.006 dB from the flux on, where the reference must have used rounded constants",
            Formulas = ["minimum-input", "antenna-aperture", "minimum-flux", "minimum-field", "median-field", "location-correction", "man-made-allowance"],
            Rows = 6, Comparisons = 48, Check = Steps,
        },
        new()
        {
            Name = "Minimum fields of DVB-T by band", File = "reception/dvbt_minimum_field.csv", Source = "itu-bt1368", Worth = Worth.Published,
            Tolerance = "1.6 dB: the source groups the modes of a modulation under one ratio (8, 14, 20 dB) and does not say its bandwidths; computed for 7 dB noise figure and the reference installation",
            Formulas = ["minimum-input", "antenna-aperture", "minimum-flux", "minimum-field"], Rows = 3, Comparisons = 9, Check = ByBand,
        },
        new()
        {
            Name = "Reference installations", File = "reception/reference_installation.csv", Source = "itu-bt2036", Worth = Worth.Published,
            Tolerance = "1e-9 dB", Formulas = ["planning-gain", "planning-height-loss"], Rows = 6, Comparisons = 20, Check = Installation,
        },
        new()
        {
            Name = "Allowance for man-made noise", File = "reception/man_made_noise_allowance.csv", Source = "itu-bt2033", Worth = Worth.Published,
            Tolerance = "exact", Formulas = ["man-made-allowance"], Rows = 7, Comparisons = 7,
            Check = r => [r.Within("Pmmn_db", ManMadeAllowance.Find(
                r.Text("environment"), r.Text("antenna") == "rooftop fixed" ? "roof" : "vehicle", r.Text("band") == "III" ? 200 : 600)?.AllowanceDb ?? double.NaN, 1e-12, "dB")],
        },
    ];

    private static IEnumerable<Comparison> Steps(ReferenceRow r)
    {
        var f = r.Value("freq_mhz");
        var input = MinimumField.InputDbw(r.Value("cn_db"), r.Value("F_db"), r.Value("B_mhz"));
        var aperture = MinimumField.ApertureDbm2(r.Value("Gd_dbd"), Wavelength.Metres(f));
        var flux = MinimumField.FluxDbwm2(input, aperture, r.Value("Lf_db"));
        var field = MinimumField.FieldDbuVm(flux);
        var manMade = ManMadeAllowance.Find("urban", "roof", f)?.AllowanceDb ?? double.NaN;
        var location = LocationVariation.CorrectionDb(r.Value("location_pct") / 100, LocationVariation.DigitalSigmaDb);
        yield return r.Within("Pn_dbw", MinimumField.ReceiverNoiseDbw(r.Value("F_db"), r.Value("B_mhz")), 0.0050001, "dBW");
        yield return r.Within("Psmin_dbw", input, 0.0050001, "dBW");
        yield return r.Within("Aa_dbm2", aperture, 0.0050001, "dB(m^2)");
        yield return r.Within("phimin_dbw_m2", flux, 0.006, "dB(W/m^2)");
        yield return r.Within("Emin_dbuvm", field, 0.006, "dB");
        yield return r.Within("Pmmn_db", manMade, 1e-9, "dB");
        yield return r.Within("Cl_db", location, 0.0050001, "dB");
        yield return r.Within("Emed_dbuvm", MinimumField.MedianDbuVm(field, manMade, location), 0.006, "dB");
    }

    private static IEnumerable<Comparison> ByBand(ReferenceRow r)
    {
        var ratio = r.Text("mode_group").Split(' ')[0] switch { "QPSK" => 8, "16QAM" => 14, _ => 20 };
        foreach (var (column, f) in ((string[])["band_III_dbuvm", "band_IV_dbuvm", "band_V_dbuvm"]).Zip(BandsMHz))
        {
            var roof = ReferenceInstallation.Find("european", f)!;
            var input = MinimumField.InputDbw(ratio, 7, f < 300 ? 6.66 : 7.61);
            var flux = MinimumField.FluxDbwm2(input, MinimumField.ApertureDbm2(roof.GainDbd, Wavelength.Metres(f)), roof.FeederLossDb);
            yield return r.Within(column, MinimumField.FieldDbuVm(flux), 1.6, "dB");
        }
    }

    private static IEnumerable<Comparison> Installation(ReferenceRow r)
    {
        var text = r.Text("item");
        if (text.StartsWith("DVB-T planning gain", StringComparison.Ordinal))
        {
            // 10 + 10 log10(f/500), 12 + 10 log10(f/800), 7.
            var n = Numbers().Matches(text.Replace("log10", "log", StringComparison.Ordinal)).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray();
            yield return r.Expect("band III", n[6], ReferenceInstallation.PlanningGainDbd(220), 1e-9, "dB");
            foreach (var (start, f) in ((int, double)[])[(0, 500), (0, 570), (3, 800), (3, 650)])
                yield return r.Expect($"{f} MHz", n[start] + n[start + 1] * Math.Log10(f / n[start + 2]), ReferenceInstallation.PlanningGainDbd(f), 1e-9, "dB");
            yield break;
        }
        var values = r.Text("value").Split(" / ").Select(t => double.Parse(t, CultureInfo.InvariantCulture)).ToArray();
        Func<double, double> computed = text switch
        {
            var t when t.StartsWith("BT.2036 fixed rooftop gain", StringComparison.Ordinal) => f => ReferenceInstallation.Find("european", f)!.GainDbd,
            var t when t.StartsWith("BT.2036 fixed rooftop feeder", StringComparison.Ordinal) => f => ReferenceInstallation.Find("european", f)!.FeederLossDb,
            var t when t.StartsWith("FCC/ISED planning gain", StringComparison.Ordinal) => f => ReferenceInstallation.Find("american", American(f))!.GainDbd,
            var t when t.StartsWith("FCC/ISED planning downlead", StringComparison.Ordinal) => f => ReferenceInstallation.Find("american", American(f))!.FeederLossDb,
            var t when t.StartsWith("GE06 height loss", StringComparison.Ordinal) => ReferenceInstallation.HeightLossDb,
            _ => throw new FormatException(text),
        };
        foreach (var (f, value) in BandsMHz.Zip(values)) yield return r.Expect($"{f} MHz", value, computed(f), 1e-9, "dB");
    }

    // Low VHF, high VHF and UHF stand in the places of bands III, IV and V.
    private static double American(double f) => f switch { 200 => 69, 500 => 194, _ => 615 };

    [GeneratedRegex(@"(?<=[:+(/ ])\d+(?=[ )/;]|$)")]
    private static partial Regex Numbers();
}
