using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Other stations, and the products of many channels in one amplifier.</summary>
public static partial class InterferenceSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Ratio to a station on the same channel", File = "reception/cochannel_du_check.csv", Source = "oet-69", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.01 dB, on the power sum less the 0.19 dB that the rule rounds off; the rule itself below 28 dB, and its flat 15 dB from there on",
            Formulas = ["cochannel-du", "required-du"], Rows = 9, Comparisons = 18, Check = SameChannel,
        },
        new()
        {
            Name = "Table of ratios to other channels", File = "reception/du_ratios.csv", Source = "du-ratio-table", Worth = Worth.Recalled,
            Tolerance = "exact, each offset and side; 0.5 dB on the rounded ratio at the noise limit; most rows are recalled",
            Formulas = ["du-ratio", "cochannel-du", "required-du", "adjacent-splatter"], Rows = 32, Comparisons = 103, RowsLeftOut = 1,
            LeftOutBecause = "fields of protected contours, no ratios", Check = Ratios,
        },
        new()
        {
            Name = "Noise and interference together", File = "reception/effective_cn.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["effective-cn"], Rows = 5, Comparisons = 5,
            Check = r => [r.Printed("effective_db", Interference.EffectiveCnDb(r.Value("cn_db"), Values(r.Text("du_db"))), "dB")],
        },
        new()
        {
            Name = "Ratio at the tuner", File = "reception/du_at_tuner.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "1e-9 dB", Formulas = ["du-at-tuner"], Rows = 3, Comparisons = 3,
            Check = r => [r.Within("du_db", Interference.DuAtTunerDb(r.Value("wanted_dbuvm"), r.Value("wanted_gain_dbd"), r.Value("other_dbuvm"), r.Value("other_gain_dbd")), 1e-9, "dB")],
        },
        new()
        {
            Name = "Count of third-order products", File = "reception/intermod_counts.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "counts exact; half a unit of the last digit, 0.01 dB", Formulas = ["intermodulation-count", "intermodulation-equal", "output-derating", "output-derating-practice", "total-power"],
            Rows = 10, Comparisons = 80, Check = Counts,
        },
        new()
        {
            Name = "Equal channels in one amplifier", File = "reception/intermod_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.01 dB", Formulas = ["intermodulation-composite", "intermodulation-equal", "compression-from-oip3", "total-power", "level-dbuv"],
            Rows = 5, Comparisons = 45, Check = EqualChannels,
        },
        new()
        {
            Name = "Any channels in one amplifier", File = "reception/intermod_lineup.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "counts exact; half a unit of the last printed digit", Formulas = ["intermodulation-count", "intermodulation-composite"], Rows = 9, Comparisons = 27, Check = AnyChannels,
        },
        new()
        {
            Name = "Intercept point from a rating", File = "reception/oip3_rating.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["oip3-from-rating", "level-dbuv"], Rows = 2, Comparisons = 4,
            Check = r =>
            [
                r.Within("oip3_dbuv", OutputRating.InterceptDbm(r.Value("rated_dbuv"), r.Value("ratio_db")), 1e-9, "dBuV"),
                r.Within("oip3_dbm", OutputRating.InterceptDbm(LevelUnits.DbmFromDbuV(r.Value("rated_dbuv")), r.Value("ratio_db")), 0.0050001, "dBm"),
            ],
        },
    ];

    private static IEnumerable<Comparison> SameChannel(ReferenceRow r)
    {
        var sn = r.Value("desired_sn_db");
        yield return r.Within("required_du_db", Interference.RequiredDuDb(15.19, sn) - 0.19 ?? double.NaN, 0.0050001, "dB");
        var rule = Interference.CochannelDuDb(sn) ?? double.NaN;
        yield return sn < 28 ? r.Within("required_du_db", rule, 0.0050001, "dB") : r.Expect("flat part of the rule", 15, rule, 1e-12, "dB");
    }

    private static IEnumerable<Comparison> Ratios(ReferenceRow r)
    {
        var (scheme, interferer) = (r.Text("scheme"), r.Text("interferer"));
        if (scheme == "low-power rules") return [];
        if (scheme == "transmitter mask")
        {
            return interferer.Contains("filter", StringComparison.Ordinal)
                ? [r.Within("du_db", Interference.FilteredSplatterDb, 1e-12, "dB"), r.Expect("floor of D/U", 15.2, Interference.SplatterDuDb(-31.3), 1e-9, "dB")]
                : [r.Within("du_db", Interference.SplatterDb, 1e-12, "dB")];
        }
        if (scheme == "FCC planning" && interferer.StartsWith("co-channel", StringComparison.Ordinal))
        {
            var limit = interferer.Contains("noise limit", StringComparison.Ordinal);
            return [r.Within("du_db", Interference.CochannelDuDb(limit ? 16 : 28) ?? double.NaN, limit ? 0.5 : 1e-12, "dB")];
        }
        // The ratio of the mode itself: what the power sum gives without noise.
        if (r.Text("du_db") == "C/N of the mode") return [r.Expect("du_db", 18.7, Interference.RequiredDuDb(18.7, double.PositiveInfinity) ?? double.NaN, 1e-9, "dB")];
        return TableRow(r, scheme, interferer);
    }

    private static IEnumerable<Comparison> TableRow(ReferenceRow r, string scheme, string interferer)
    {
        var expected = double.Parse(FirstNumber().Match(r.Text("du_db")).Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        var mark = r.Text("provenance") == "read" ? Provenance.Read : Provenance.Memory;
        foreach (var level in Levels(r.Text("desired_level")))
        {
            foreach (var offset in Offsets(interferer))
            {
                var row = DuRatio.Find(scheme == "DVB-T" ? "DVB-T" : "ATSC 1.0", scheme == "A/74" ? DuKind.Receiver : DuKind.Planning, offset, level);
                yield return r.Expect($"{level}, N{offset:+0;-0;0}", expected, row?.Provenance == mark ? row.RatioDb : double.NaN, 1e-12, "dB");
            }
        }
    }

    private static IEnumerable<DesiredLevel> Levels(string text) => text is "all"
        ? [DesiredLevel.Weak]
        : Enum.GetValues<DesiredLevel>().Where(l => text.Contains($"{l}", StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<int> Offsets(string interferer)
    {
        if (interferer.StartsWith("co-channel", StringComparison.Ordinal)) return [0];
        if (interferer.StartsWith("lower", StringComparison.Ordinal)) return [-1];
        if (interferer.StartsWith("upper", StringComparison.Ordinal)) return [1];
        if (interferer.StartsWith("image", StringComparison.Ordinal)) return [9];
        var m = OffsetText().Match(interferer);
        var from = int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture);
        var to = m.Groups[2].Success ? int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture) : from;
        return Enumerable.Range(from, to - from + 1).SelectMany(n => (int[])[-n, n]);
    }

    private static IEnumerable<Comparison> Counts(ReferenceRow r)
    {
        var n = (int)r.Value("carriers_N");
        var lineUp = Intermodulation.Contiguous(n, 0);
        var (edge, centre) = (lineUp.Beats(1), lineUp.Beats((n + 1) / 2));
        yield return r.Within("two_tone_at_edge", edge.TwoTone, 1e-12, "");
        yield return r.Within("triple_at_edge", edge.Triple, 1e-12, "");
        yield return r.Within("two_tone_at_centre", centre.TwoTone, 1e-12, "");
        yield return r.Within("triple_at_centre", centre.Triple, 1e-12, "");
        var factor = Intermodulation.EqualCarriersDbm(0, 0, centre);
        const string column = "sum_factor_db_centre_10log(n2+4n3)";
        yield return r.Text(column).Length == 0 ? r.Expect("no product", 1, factor is null ? 1 : 0, 1e-12, "") : r.Within(column, factor ?? double.NaN, 0.0050001, "dB");
        yield return r.Within("total_power_10logN", DecibelSum.TotalDbm(Enumerable.Repeat(0.0, n)), 0.0050001, "dB");
        yield return r.Within("derate_10log(N-1)", OutputRating.DeratingDb(n), 0.0050001, "dB");
        yield return r.Within("derate_7_5log(N-1)", OutputRating.PracticeDeratingDb(n), 0.0050001, "dB");
    }

    private static IEnumerable<Comparison> EqualChannels(ReferenceRow r)
    {
        var n = (int)r.Value("carriers_N");
        double each = r.Value("in_each_dbm") + r.Value("gain_db"), oip3 = r.Value("OIP3_dbm");
        var lineUp = Intermodulation.Contiguous(n, each);
        var total = DecibelSum.TotalDbm(Enumerable.Repeat(each, n));
        var products = lineUp.CompositeDbm((n + 1) / 2, oip3) ?? double.NaN;
        yield return r.Within("out_each_dbm", each, 1e-9, "dBm");
        yield return r.Within("out_each_dbuv", LevelUnits.DbuVFromDbm(each), 0.0050001, "dBuV");
        yield return r.Within("out_total_dbm", total, 0.0050001, "dBm");
        yield return r.Within("in_total_dbm", total - r.Value("gain_db"), 0.0050001, "dBm");
        yield return r.Within("im3_sum_centre_dbm", products, 0.0050001, "dBm");
        yield return r.Within("im3_sum_centre_dbm", Intermodulation.EqualCarriersDbm(each, oip3, lineUp.Beats((n + 1) / 2)) ?? double.NaN, 0.0050001, "dBm");
        yield return r.Within("C_over_IM_db", each - products, 0.0050001, "dB");
        yield return r.Within("P1dB_est_dbm", OutputRating.CompressionDbm(oip3), 1e-9, "dBm");
        yield return r.Within("headroom_to_P1dB_db", OutputRating.CompressionDbm(oip3) - total, 0.0050001, "dB");
    }

    private static IEnumerable<Comparison> AnyChannels(ReferenceRow r)
    {
        var lineUp = new Intermodulation(r.Text("carriers").Split(' ').Select(t => t.Split(':')).Select(t =>
            new Carrier(int.Parse(t[0], CultureInfo.InvariantCulture), double.Parse(t[1], CultureInfo.InvariantCulture))));
        var slot = (int)r.Value("slot");
        var composite = lineUp.CompositeDbm(slot, r.Value("oip3_dbm"));
        yield return r.Within("two_tone", lineUp.Beats(slot).TwoTone, 1e-12, "");
        yield return r.Within("triple", lineUp.Beats(slot).Triple, 1e-12, "");
        yield return r.Text("composite_dbm") == "none"
            ? r.Expect("no product", 1, composite is null ? 1 : 0, 1e-12, "")
            : r.Printed("composite_dbm", composite ?? double.NaN, "dBm");
    }

    private static IEnumerable<double> Values(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"N\+/-(\d+)(?: (?:to|and) (\d+))?")]
    private static partial Regex OffsetText();

    [GeneratedRegex(@"^[+-]?\d+(\.\d+)?")]
    private static partial Regex FirstNumber();
}
