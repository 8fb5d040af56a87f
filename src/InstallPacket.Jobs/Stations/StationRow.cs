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
            Reject("number of fields", record.Places[columns.Count], "fields", ("fields", record.Fields.Count), ("columns", columns.Count));
        var station = new Station(
            Text("id"), Text("name"), Text("site"), OneOf("system", StationRules.Systems), Field("mode"),
                OneOf("raster", StationRules.Rasters),
            Whole("rf_channel", 1, 69), Field("shows_as"), Number("latitude_deg", -90, 90), Number("longitude_deg", -180, 180),
            Number("erp_kw", 0.0001, 5000), OptionalNumber("haat_m", 1, 3000), OptionalNumber("above_sea_m", -400, 6000),
            Polarised(), new(file, record.Line, 1)) { Pattern = Pattern() };
        CheckTogether(station);
        return Reason.Length > 0 ? null : station;
    }

    /// <summary>Reports the row as dropped because of one field; of a row with several faults the first one is reported.</summary>
    /// <param name="column">The column.</param>
    /// <param name="value">What it holds.</param>
    /// <param name="way">The case of the finding.</param>
    /// <param name="more">What the texts of the case name beside column and value.</param>
    public void Reject(string column, string value, string way, params ReadOnlySpan<(string Name, object? Value)> more) =>
        Reject(column, Place(column), way, [("column", column), ("value", value.Length > 80 ? value[..80] + "..." : value), .. more]);

    private void Reject(string reason, CsvPlace place, string way, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        if (Reason.Length > 0) return;
        Reason = reason;
        findings.Add(Severity.Caution, "station-row-dropped", way, new(file, place.Line, place.Column), values);
    }

    private void CheckTogether(Station s)
    {
        if (s.LatitudeDeg == 0 && s.LongitudeDeg == 0) Reject("latitude_deg", "0, 0", "sea");
        if (Reason.Length == 0 && !StationRules.RastersOf(s.System).Contains(s.Raster))
            Reject("raster", s.Raster, "raster", ("system", s.System), ("rasters", StationRules.RastersOf(s.System)));
        if (Reason.Length == 0 && ChannelRaster.Find(s.Raster, s.Channel) is null)
            Reject("rf_channel", Field("rf_channel"), "channel", ("raster", s.Raster));
        if (Reason.Length == 0 && StationRules.Threshold(s.System, s.Mode) is null)
            Reject("mode", s.Mode, ModeList.IsLayered(s.Mode) ? "layered" : "mode", ("system", s.System), ("modes", ModeList.Of(s.System)));
        if (s.HaatM is null && s.AboveSeaM is null) Reject("haat_m", "", "height");
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
        if (text.Length is 0 or > 80) Reject(column, text, "text");
        return text;
    }

    private string OneOf(string column, IReadOnlyList<string> words)
    {
        var text = Field(column);
        if (!words.Contains(text)) Reject(column, text, "word", ("words", words));
        return text;
    }

    private Polarisation Polarised() => Word.Read<Polarisation>(OneOf("polarisation", Word.All<Polarisation>())) ?? default;

    private double Number(string column, double min, double max)
    {
        var text = Field(column);
        if (Direction.PlainNumber(text, out var value) && value >= min && value <= max) return value;
        Reject(column, text, "number", ("min", min), ("max", max));
        return 0;
    }

    private int Whole(string column, int min, int max)
    {
        var value = Number(column, min, max);
        if (value != Math.Floor(value)) Reject(column, Field(column), "whole", ("min", min), ("max", max));
        return (int)value;
    }

    private double? OptionalNumber(string column, double min, double max) => Field(column).Length == 0 ? null : Number(column, min, max);

    private TransmitterPattern? Pattern()
    {
        var text = Field("pattern");
        if (text.Length == 0) return null;
        var pattern = PatternText.Read(text);
        if (pattern is null) Reject("pattern", text, "pattern", ("most", PatternText.MostPoints), ("least_db", PatternText.LeastDb));
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
