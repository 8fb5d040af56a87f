using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>Reads one record of the regulator's list, field by field. The first fault in the order of the fields is reported.</summary>
internal sealed class RegulatorRow(string file, RegulatorRecord record, FindingList findings)
{
    private const int MostShown = 40;
    private (int Position, string Reason, string Way, (string Name, object? Value)[] Values)? _fault;

    /// <summary>The station; null when the row is left out as asked or dropped, and then the tally says why.</summary>
    public RegulatorStation? Read(StationFilter filter, RowTally tally)
    {
        var callSign = CallSign();
        CheckServiceWord();
        var channel = Channel();
        var power = PowerKw();
        var latitude = Angle(RegulatorRecord.NorthSouth, "latitude", "N", "S", 90);
        var longitude = Angle(RegulatorRecord.EastWest, "longitude", "E", "W", 180);
        (double, double)? place = latitude is { } north && longitude is { } east ? (north, east) : null;
        if ((filter.WhyNot(record.Text(RegulatorRecord.Status).ToUpperInvariant()) ?? filter.WhyNot(channel, place)) is { } why)
        {
            tally.LeaveOut(why);
            return null;
        }
        if (place is (0, 0)) Fault(RegulatorRecord.NorthSouth, "position", "list-sea");
        var (haat, aboveSea) = Heights();
        if (_fault is not { } f) return new(record, callSign, channel!.Value, latitude!.Value, longitude!.Value, power, haat, aboveSea);
        tally.Drop(f.Reason);
        findings.Add(Severity.Caution, "station-row-dropped", f.Way, new(file, record.Line, record.Column(f.Position)), f.Values);
        return null;
    }

    private void Fault(int position, string reason, string way, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        if (_fault is null || position < _fault.Value.Position) _fault = (position, reason, way, values.ToArray());
    }

    // A field by its word and what it holds.
    private void Fault(int position, string reason, string way, string field, string value,
        params ReadOnlySpan<(string Name, object? Value)> more) =>
        Fault(position, reason, way, [("field", field), ("value", value.Length > MostShown ? value[..MostShown] + "..." : value), .. more]);

    private string CallSign()
    {
        var text = record.Text(RegulatorRecord.CallSign);
        if (text.Length is 0 or > 12 || !char.IsAsciiLetterOrDigit(text[0]) || !text.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
            Fault(RegulatorRecord.CallSign, "call sign", "list-call-sign", "call-sign", text);
        return text;
    }

    private void CheckServiceWord()
    {
        var word = record.Text(RegulatorRecord.ServiceWord).ToUpperInvariant();
        if (ServiceWord.IsDigital(word)) return;
        var analogue = ServiceWord.IsAnalogue(word);
        Fault(RegulatorRecord.ServiceWord, analogue ? "analogue" : "service code", analogue ? "list-analogue" : "list-service",
            "service-code", word,
            ("digital", ServiceWord.Digital));
    }

    private int? Channel()
    {
        var text = record.Text(RegulatorRecord.Channel);
        if (RegulatorNumber.Within(text, 1, 999) is { } n && n == Math.Floor(n)
            && ChannelRaster.Find(RegulatorList.Raster, (int)n) is not null) return (int)n;
        Fault(RegulatorRecord.Channel, "channel", "list-channel", "rf-channel", text, ("raster", RegulatorList.Raster));
        return null;
    }

    private double PowerKw()
    {
        var text = record.Text(RegulatorRecord.Power);
        if (RegulatorNumber.Read(text) is { Value: >= 0.0001 and <= 5000 } n && n.Unit.ToUpperInvariant() is "" or "KW") return n.Value;
        Fault(RegulatorRecord.Power, "power", "list-power", "power", text);
        return 0;
    }

    private double? Angle(int position, string what, string positive, string negative, int most)
    {
        var letter = record.Text(position).ToUpperInvariant();
        var degrees = RegulatorNumber.Within(record.Text(position + 1), 0, most);
        var minutes = RegulatorNumber.Within(record.Text(position + 2), 0, 59);
        var seconds = RegulatorNumber.Within(record.Text(position + 3), 0, 60);
        if (letter != positive && letter != negative) Fault(position, "position", "list-letter", what + "-letter", letter,
            ("letters", new[] { positive, negative }));
        else if (degrees is not { } d || d != Math.Floor(d)) Fault(position + 1, "position", "list-whole", what + "-degrees",
            record.Text(position + 1), ("most", most));
        else if (minutes is not { } m || m != Math.Floor(m)) Fault(position + 2, "position", "list-whole", what + "-minutes",
            record.Text(position + 2), ("most", 59));
        else if (seconds is not { } s || s >= 60) Fault(position + 3, "position", "list-seconds", what + "-seconds",
            record.Text(position + 3));
        else if (d + (m / 60) + (s / 3600) is var angle && angle <= most) return letter == negative ? 0 - angle : angle;
        else Fault(position + 1, "position", "list-angle", ("field", what), ("most_deg", most));
        return null;
    }

    // The positions are recalled: a field that is no height of an antenna counts as unknown. An antenna at exactly 0 m is a field not
    // filled in.
    private (double? Haat, double? AboveSea) Heights()
    {
        var haat = First(1, 3000, RegulatorRecord.AverageHeight, RegulatorRecord.AverageHeightVertical);
        var sea = First(-400, 6000, RegulatorRecord.AboveSea, RegulatorRecord.AboveSeaVertical);
        if (haat is null && sea is null)
            Fault(RegulatorRecord.AverageHeight, "height", "list-height");
        return (haat, sea);
    }

    private double? First(double min, double max, params int[] positions) =>
        positions.Select(p => RegulatorNumber.Within(record.Text(p), min, max)).FirstOrDefault(h => h is not (null or 0.0));
}
