using InstallPacket.Calc.Sources;

namespace InstallPacket.Jobs.Stations;

/// <summary>
/// Reads a station list: CSV with a header row, one transmitter a row, the unit in each column's name. A row that cannot be
/// used is dropped with a finding that gives its line, its column and the reason; nothing is dropped silently.
/// </summary>
public static class StationListReader
{
    /// <summary>Largest list that is read; 20,000 rows of the regulator's list take half of it.</summary>
    public const int MostBytes = FileBounds.StationBytes;

    /// <summary>The columns that every list must have.</summary>
    public static readonly IReadOnlyList<string> Required =
        ["id", "name", "site", "system", "raster", "rf_channel", "latitude_deg", "longitude_deg", "erp_kw", "polarisation"];

    /// <summary>The columns that may be left out; a row states at least one of its two heights.</summary>
    public static readonly IReadOnlyList<string> Optional = ["mode", "shows_as", "haat_m", "above_sea_m", "pattern"];

    // A row may state either height.
    private const string Heights = "haat_m / above_sea_m";

    /// <summary>Reads the list.</summary>
    /// <param name="file">The file.</param>
    /// <param name="findings">Receives what is wrong with it.</param>
    public static StationList Read(JobFile file, FindingList findings) => Read(file, StationFilter.None, findings);

    /// <summary>Reads what a filter asks for.</summary>
    /// <param name="file">The file.</param>
    /// <param name="filter">What to keep; its statuses do not matter, because these lists state none.</param>
    /// <param name="findings">Receives what is wrong with it.</param>
    public static StationList Read(JobFile file, StationFilter filter, FindingList findings)
    {
        var tally = new RowTally();
        var records = CsvText.Records(file.Text);
        var stations = new List<Station>();
        if (RegulatorList.HasForm(file.Text)) ReportForeign(file, findings);
        else if (records.Count == 0 || HeaderIsGood(file, records[0], findings))
        {
            stations = Rows(file, records, filter, tally, findings);
            EmptyList.Check(file, tally, findings);
        }
        else tally.Drop("columns missing", records.Count - 1);
        return new(stations, tally, []);
    }

    private static List<Station> Rows(JobFile file, IReadOnlyList<CsvRecord> records, StationFilter filter, RowTally tally,
        FindingList findings)
    {
        var columns = new StationColumns(records.Count > 0 ? records[0].Fields : []);
        var stations = new List<Station>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var record in records.Skip(1))
        {
            var row = new StationRow(file.Path, record, columns, findings);
            var station = row.Station();
            if (station is not null && !seen.Add(station.Id)) row.Reject("id", station.Id, "twice");
            if (row.Reason.Length > 0) tally.Drop(row.Reason);
            else if (filter.WhyNot(station!.Channel, (station.LatitudeDeg, station.LongitudeDeg)) is { } why) tally.LeaveOut(why);
            else stations.Add(station);
        }
        tally.Keep(stations.Count);
        return stations;
    }

    private static void ReportForeign(JobFile file, FindingList findings) =>
        findings.Add(Severity.Stop, "station-list-foreign", new(file.Path, 0, 0));

    private static bool HeaderIsGood(JobFile file, CsvRecord header, FindingList findings)
    {
        var known = Required.Concat(Optional).ToArray();
        var missing = Required.Where(c => !header.Fields.Contains(c)).ToList();
        if (!header.Fields.Contains("haat_m") && !header.Fields.Contains("above_sea_m")) missing.Add(Heights);
        foreach (var (column, place) in header.Fields.Zip(header.Places).Where(c => !known.Contains(c.First)))
            findings.Add(Severity.Note, "station-column-unknown", new(file.Path, place.Line, place.Column), ("column", column),
                ("near", NearestWord.Of(column, known)), ("known", known));
        if (missing.Count == 0) return true;
        findings.Add(Severity.Stop, "station-column-missing", new(file.Path, header.Line, 1), ("missing", missing),
            ("required", Required.Append(Heights)));
        return false;
    }
}
