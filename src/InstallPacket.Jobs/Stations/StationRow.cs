using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Jobs.Stations;

/// <summary>One row of a station list, read field by field.</summary>
internal sealed class StationRow(string file, CsvRecord record, StationColumns columns, FindingList findings)
{
    /// <summary>Why the row is dropped, in a word or two; empty when it is not.</summary>
    public string Reason { get; private set; } = "";

    /// <summary>The station, or null when the row is dropped.</summary>
    public Station? Station()
    {
        if (record.Fields.Count > columns.Count)
            Reject("number of fields", record.Places[columns.Count], $"the row has {record.Fields.Count} fields", $"{columns.Count} fields as in the header", "put a text that contains a comma in quotes");
        var station = new Station(
            Text("id"), Text("name"), Text("site"), OneOf("system", StationRules.Systems), Field("mode"), OneOf("raster", StationRules.Rasters),
            Whole("rf_channel", 1, 69), Field("shows_as"), Number("latitude_deg", -90, 90), Number("longitude_deg", -180, 180),
            Number("erp_kw", 0.0001, 5000), OptionalNumber("haat_m", 1, 3000), OptionalNumber("above_sea_m", -400, 6000),
            Polarised(), new(file, record.Line, 1)) { Pattern = Pattern() };
        CheckTogether(station);
        return Reason.Length > 0 ? null : station;
    }

    /// <summary>Reports the row as dropped because of one field; of a row with several faults the first one is reported.</summary>
    public void Reject(string column, string value, string limit, string remedy) =>
        Reject(column, Place(column), value.Length == 0 ? $"{column} is empty" : $"{column} is `{(value.Length > 80 ? value[..80] + "..." : value)}`", limit, remedy);

    private void Reject(string reason, CsvPlace place, string why, string limit, string remedy)
    {
        if (Reason.Length > 0) return;
        Reason = reason;
        findings.Add(Severity.Caution, "station-row-dropped", new(file, place.Line, place.Column), "row dropped: " + why, "expected " + limit, remedy);
    }

    private void CheckTogether(Station s)
    {
        if (s.LatitudeDeg == 0 && s.LongitudeDeg == 0) Reject("latitude_deg", "0, 0", "a transmitter on land", "fill in its coordinates");
        if (Reason.Length == 0 && !StationRules.RastersOf(s.System).Contains(s.Raster))
            Reject("raster", s.Raster, $"a raster of {s.System}: {string.Join(", ", StationRules.RastersOf(s.System))}", "correct `raster` or `system`");
        if (Reason.Length == 0 && ChannelRaster.Find(s.Raster, s.Channel) is null)
            Reject("rf_channel", Field("rf_channel"), $"a channel of the raster {s.Raster}", "check the RF channel (not the number that the viewer sees)");
        if (Reason.Length == 0 && StationRules.Threshold(s.System, s.Mode) is null)
            Reject("mode", s.Mode, ModeList.Expected(s.System, s.Mode), ModeList.Remedy(s.Mode));
        if (s.HaatM is null && s.AboveSeaM is null) Reject("haat_m", "", "a height in `haat_m` or in `above_sea_m`", "fill in one of them; both are better");
    }

    private CsvPlace Place(string column)
    {
        var i = columns.IndexOf(column);
        return i < 0 ? new(record.Line, 1) : record.Places[Math.Min(i, record.Places.Count - 1)];
    }

    private string Field(string column)
    {
        var i = columns.IndexOf(column);
        return i >= 0 && i < record.Fields.Count ? record.Fields[i] : "";
    }

    private string Text(string column)
    {
        var text = Field(column);
        if (text.Length is 0 or > 80) Reject(column, text, "text of 1 to 80 characters", "fill it in");
        return text;
    }

    private string OneOf(string column, IReadOnlyList<string> words)
    {
        var text = Field(column);
        if (!words.Contains(text)) Reject(column, text, "one of " + string.Join(", ", words), "write one of them");
        return text;
    }

    private Polarisation Polarised() => Word.Read<Polarisation>(OneOf("polarisation", Word.All<Polarisation>())) ?? default;

    private double Number(string column, double min, double max)
    {
        var text = Field(column);
        if (Direction.PlainNumber(text, out var value) && value >= min && value <= max) return value;
        Reject(column, text, string.Create(CultureInfo.InvariantCulture, $"a number from {min} to {max}"), "correct it; the unit is in the column's name");
        return 0;
    }

    private int Whole(string column, int min, int max)
    {
        var value = Number(column, min, max);
        if (value != Math.Floor(value)) Reject(column, Field(column), $"a whole number from {min} to {max}", "correct it");
        return (int)value;
    }

    private double? OptionalNumber(string column, double min, double max) => Field(column).Length == 0 ? null : Number(column, min, max);

    private TransmitterPattern? Pattern()
    {
        var text = Field("pattern");
        if (text.Length == 0) return null;
        var pattern = PatternText.Read(text);
        if (pattern is null) Reject("pattern", text, PatternText.Expected, "write the pattern in that form");
        return pattern;
    }
}

/// <summary>The header of a station list: which column stands where.</summary>
internal sealed class StationColumns
{
    private readonly Dictionary<string, int> _at = new(StringComparer.Ordinal);

    public StationColumns(IReadOnlyList<string> header)
    {
        Count = header.Count;
        for (var i = 0; i < header.Count; i++) _at.TryAdd(header[i], i);
    }

    public int Count { get; }

    /// <summary>Position of a column, counted from 0; -1 when the list does not have it.</summary>
    public int IndexOf(string column) => _at.GetValueOrDefault(column, -1);
}
