using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

public static class ChannelSets
{
    private static readonly Dictionary<string, string> ShortNames = new()
    {
        ["US/Canada/Mexico/Korea 6 MHz (ATSC)"] = "us-6",
        ["Europe UHF 8 MHz (DVB-T/T2)"] = "eu-8",
        ["Europe VHF III 7 MHz (DVB-T/T2)"] = "eu-7",
        ["Australia VHF III 7 MHz (DVB-T)"] = "au-7",
        ["Australia UHF 7 MHz (DVB-T)"] = "au-7",
        ["Japan UHF 6 MHz (ISDB-T)"] = "jp-6",
        ["Brazil/ISDB-Tb 6 MHz"] = "br-6",
    };

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Channel rasters", File = "reception/channels.csv", Source = "cfr-73-603", Worth = Worth.Published,
            Tolerance = "1e-9 MHz (the Australian rows are recalled)", Formulas = ["channel-centre"], Rows = 233, Comparisons = 232 * 4,
            RowsLeftOut = 1, LeftOutBecause = "Australian 9A is no whole number and carries digital radio", Check = Channel,
        },
        new()
        {
            Name = "Required C/N of a mode", File = "reception/required_cn_selection.csv", Source = "cn-table", Worth = Worth.Derived,
            Tolerance = "1e-9 dB", Formulas = ["required-cn"], Rows = 12, Comparisons = 12,
            Check = r => [r.Within("required_db", RequiredCn.Find(r.Text("system"), r.Text("modulation"), r.Text("code_rate"))?.RequiredDb ?? double.NaN, 1e-9, "dB")],
        },
        new()
        {
            Name = "Required C/N, every row of the table is carried", File = "reception/cn_thresholds.csv", Source = "cn-table", Worth = Worth.Derived,
            Tolerance = "exact; every mode has an answer but the eight DVB-T2 modes of rates 1/3 and 2/5, for which the table has no Ricean row: unknown, not guessed", Formulas = ["required-cn"], Rows = 384, Comparisons = 384 * 2, Check = CarriedRow,
        },
    ];

    private static IEnumerable<Comparison> Channel(ReferenceRow r)
    {
        if (!int.TryParse(r.Text("channel"), out var number)) yield break;
        var channel = ChannelRaster.Find(ShortNames[r.Text("plan")], number);
        yield return r.Within("lower_edge_mhz", channel?.LowerMHz ?? double.NaN, 1e-9, "MHz");
        yield return r.Within("centre_mhz", channel?.CentreMHz ?? double.NaN, 1e-9, "MHz");
        yield return r.Within("upper_edge_mhz", channel?.UpperMHz ?? double.NaN, 1e-9, "MHz");
        yield return r.Within("width_mhz", channel?.WidthMHz ?? double.NaN, 1e-9, "MHz");
    }

    private static IEnumerable<Comparison> CarriedRow(ReferenceRow r)
    {
        var row = RequiredCn.All[r.Number - 1];
        var same = row.System == r.Text("system") && row.Modulation == r.Text("modulation") && row.CodeRate == r.Text("code_rate") && row.SourceText == r.Text("source");
        yield return r.Within("required_cn_db", same ? row.ListedDb : double.NaN, 1e-12, "dB");
        var found = RequiredCn.Find(r.Text("system"), r.Text("modulation"), r.Text("code_rate"));
        var known = r.Text("system") != "DVB-T2" || r.Text("code_rate") is not ("1/3" or "2/5");
        yield return r.Expect("mode has an answer", known ? 1 : 0, found is null ? 0 : 1, 1e-12, "");
    }
}
