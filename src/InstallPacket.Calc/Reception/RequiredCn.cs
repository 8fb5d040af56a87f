using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The required carrier-to-noise ratio of a mode, by the column that suits a rooftop budget.</summary>
public static class RequiredCn
{
    // The first rule whose column holds the mode wins.
    private static readonly Choice[] Choices =
    [
        new("ATSC 1.0", "", "AWGN", "", 0, "", Provenance.Read),
        new("DVB-T", "", "Gaussian, real receiver", "", 0, "", Provenance.Read),
        new("DVB-T", "", "Ricean F1", "V1.1-V1.5", 2.5, "implementation loss of the receiver, middle of 2 to 3 dB", Provenance.Memory),
        new("DVB-T2", "", "Ricean", "", 0, "", Provenance.Read),
        new("ISDB-T", "", "Gaussian", "", 3, "implementation loss of the receiver", Provenance.Memory),
        new("ATSC 3.0", "QPSK", "AWGN, simulation", "", 0, "", Provenance.Read),
        new("ATSC 3.0", "16QAM", "AWGN, simulation", "", 0, "", Provenance.Read),
        new("ATSC 3.0", "", "AWGN, estimate", "", 0, "", Provenance.Read),
    ];

    private static readonly Lazy<IReadOnlyList<RequiredCnRow>> Loaded = new(Load);

    /// <summary>The required ratio.</summary>
    public static readonly Formula RequiredFormula = new(
        "required-cn",
        "Required carrier-to-noise ratio of the mode",
        "C/N = value of the table + addition for a real receiver",
        new("C/N", "dB", "required ratio"), [new("table", "dB", "value in the table"), new("add", "dB", "addition for a real receiver")],
        "cn-table", "the row of the mode; its document and provenance are printed beside it", Provenance.Derived);

    /// <summary>All rows of the table, without additions.</summary>
    public static IReadOnlyList<RequiredCnRow> All => Loaded.Value;

    /// <summary>The required ratio of a mode.</summary>
    /// <param name="system">System, for example <c>DVB-T2</c>.</param>
    /// <param name="modulation">Modulation, for example <c>256QAM</c>.</param>
    /// <param name="codeRate">Code rate, for example <c>2/3</c>; ignored for ATSC 1.0, which has one mode.</param>
    /// <returns>The row, or null when the mode is unknown: never guessed.</returns>
    public static RequiredCnRow? Find(string system, string modulation, string codeRate) => Find(All, system, modulation, codeRate);

    internal static RequiredCnRow? Find(IReadOnlyList<RequiredCnRow> rows, string system, string modulation, string codeRate)
    {
        foreach (var choice in Choices)
        {
            if (choice.System != system || (choice.Modulation.Length > 0 && choice.Modulation != modulation)) continue;
            var row = rows.FirstOrDefault(r => choice.Fits(r) && r.Modulation == modulation
                && (r.CodeRate == codeRate || system == "ATSC 1.0"));
            if (row is not null)
                return row with { AddedDb = choice.AddedDb, AddedFor = choice.Why, Provenance = Weaker(row.Provenance, choice.Provenance) };
        }
        return null;
    }

    private static Provenance Weaker(Provenance a, Provenance b) => (Provenance)Math.Max((int)a, (int)b);

    private static RequiredCnRow[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/cn-thresholds.csv").Select(r => new RequiredCnRow(
            r["system"], r["modulation"], r["code_rate"], r["channel"], CsvNumber.Of(r["required_cn_db"]),
            0, "", r["source"], CsvProvenance.Of(r["provenance"]))),
    ];

    private sealed record Choice(string System, string Modulation, string Channel, string Edition, double AddedDb, string Why,
        Provenance Provenance)
    {
        public bool Fits(RequiredCnRow row) =>
            row.System == System && row.Channel == Channel && row.SourceText.Contains(Edition, StringComparison.Ordinal);
    }
}
