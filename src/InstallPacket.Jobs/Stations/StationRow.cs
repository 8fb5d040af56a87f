using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;
using InstallPacket.Jobs.Reading;

namespace InstallPacket.Jobs.Stations;

/// <summary>One row of a station list, read field by field.</summary>
internal sealed class StationRow(string file, CsvRecord record, IReadOnlyList<string> header)
{
    private readonly FindingList _findings = new();
    private bool _rejected;

    /// <summary>What is wrong with the row.</summary>
    public IReadOnlyList<Finding> Findings => _findings.Sorted;

    /// <summary>The station, or null when the row is dropped.</summary>
    public Station? Station()
    {
        if (record.Fields.Count > header.Count)
            Reject($"the row has {record.Fields.Count} fields", $"{header.Count} fields as in the header", "put a text that contains a comma in quotes");
        var station = new Station(
            Text("id"), Text("name"), Text("site"), OneOf("system", StationRules.Systems), Optional("mode"), OneOf("raster", StationRules.Rasters),
            Whole("rf_channel", 1, 69), Optional("shows_as"), Number("latitude_deg", -90, 90), Number("longitude_deg", -180, 180),
            Number("erp_kw", 0.0001, 5000), Number("haat_m", 1, 3000), OptionalNumber("above_sea_m", -400, 6000),
            OneOf("polarisation", StationRules.Polarisations), new(file, record.Line, 1));
        if (!_rejected && station.LatitudeDeg == 0 && station.LongitudeDeg == 0)
            Reject("latitude_deg", "0, 0", "a transmitter on land", "fill in its coordinates");
        if (!_rejected && ChannelRaster.Find(station.Raster, station.Channel) is null)
            Reject("rf_channel", Text("rf_channel"), $"a channel of the raster {station.Raster}", "check the RF channel (not the number that the viewer sees)");
        if (!_rejected && station.System != "ATSC 1.0" && RequiredCnOf(station) is null)
            Reject("mode", station.Mode, $"a mode of {station.System} with a known threshold, for example 64QAM 2/3", "fill in the mode of the multiplex");
        return _rejected ? null : station;
    }

    /// <summary>Reports the row as dropped because of one field.</summary>
    public void Reject(string column, string value, string limit, string remedy) =>
        Reject(value.Length == 0 ? $"{column} is empty" : $"{column} is `{(value.Length > 80 ? value[..80] + "..." : value)}`", limit, remedy);

    private void Reject(string why, string limit, string remedy)
    {
        _rejected = true;
        _findings.Add(Severity.Caution, "station-row-dropped", new(file, record.Line, 1), "row dropped: " + why, "expected " + limit, remedy);
    }

    private static RequiredCnRow? RequiredCnOf(Station station) => StationRules.Threshold(station.System, station.Mode);

    private string Optional(string column)
    {
        var i = header.ToList().IndexOf(column);
        return i >= 0 && i < record.Fields.Count ? record.Fields[i] : "";
    }

    private string Text(string column)
    {
        var text = Optional(column);
        if (text.Length is 0 or > 80 && !_rejected) Reject(column, text, "text of 1 to 80 characters", "fill it in");
        return text;
    }

    private string OneOf(string column, IReadOnlyList<string> words)
    {
        var text = Optional(column);
        if (!words.Contains(text) && !_rejected) Reject(column, text, "one of " + string.Join(", ", words), "write one of them");
        return text;
    }

    private double Number(string column, double min, double max)
    {
        var text = Optional(column);
        if (Direction.PlainNumber(text, out var value) && value >= min && value <= max) return value;
        if (!_rejected) Reject(column, text, string.Create(CultureInfo.InvariantCulture, $"a number from {min} to {max}"), "correct it; the unit is in the column's name");
        return 0;
    }

    private int Whole(string column, int min, int max)
    {
        var value = Number(column, min, max);
        if (value != Math.Floor(value) && !_rejected) Reject(column, Optional(column), $"a whole number from {min} to {max}", "correct it");
        return (int)value;
    }

    private double? OptionalNumber(string column, double min, double max) =>
        Optional(column).Length == 0 ? null : Number(column, min, max);
}
