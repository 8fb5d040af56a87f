using InstallPacket.Calc.Sources;
using InstallPacket.Jobs.Reading;

namespace InstallPacket.Jobs.Stations;

/// <summary>
/// Reads a station list: CSV with a header row, one transmitter a row, the unit in each column's name. A row that cannot be
/// used is dropped with a finding that gives its line and the reason; nothing is dropped silently.
/// </summary>
public static class StationListReader
{
    /// <summary>The columns that every list must have.</summary>
    public static readonly IReadOnlyList<string> Required =
        ["id", "name", "site", "system", "raster", "rf_channel", "latitude_deg", "longitude_deg", "erp_kw", "haat_m", "polarisation"];

    /// <summary>The columns that may be left out.</summary>
    public static readonly IReadOnlyList<string> Optional = ["mode", "shows_as", "above_sea_m"];

    /// <summary>Reads the list.</summary>
    /// <param name="file">The file.</param>
    /// <param name="findings">Receives what is wrong with it.</param>
    public static IReadOnlyList<Station> Read(JobFile file, FindingList findings)
    {
        var records = CsvText.Records(file.Text);
        if (records.Count > 0 && !HeaderIsGood(file, records[0], findings)) return [];
        var header = records.Count > 0 ? records[0].Fields : [];
        var stations = new List<Station>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var record in records.Skip(1))
        {
            var row = new StationRow(file.Path, record, header);
            if (row.Station() is { } station)
            {
                if (seen.Add(station.Id)) stations.Add(station);
                else row.Reject("id", station.Id, "each station once", "remove one of the two rows");
            }
            findings.AddRange(row.Findings);
        }
        if (records.Count < 2)
            findings.Add(Severity.Stop, "station-list-empty", new(file.Path, 0, 0), "the station list has no rows", "a header row and at least one transmitter", "add the transmitters of the region");
        else if (stations.Count == 0)
            findings.Add(Severity.Stop, "station-list-empty", new(file.Path, 0, 0), $"none of the {records.Count - 1} rows can be used", "at least one transmitter",
                "correct the rows named in the other findings");
        return stations;
    }

    private static bool HeaderIsGood(JobFile file, CsvRecord header, FindingList findings)
    {
        var known = Required.Concat(Optional).ToArray();
        var missing = Required.Where(c => !header.Fields.Contains(c)).ToArray();
        foreach (var column in header.Fields.Where(c => !known.Contains(c)))
            findings.Add(Severity.Note, "station-column-unknown", new(file.Path, header.Line, 1), $"the column `{column}` is not used",
                "columns: " + string.Join(", ", known), Catalogue.NearestWord.Hint(column, known) + "rename it or remove it");
        if (missing.Length == 0) return true;
        findings.Add(Severity.Stop, "station-column-missing", new(file.Path, header.Line, 1), "the station list lacks the columns " + string.Join(", ", missing),
            "required columns: " + string.Join(", ", Required), "add them; the unit is part of the name, so that nobody has to guess it");
        return false;
    }
}
