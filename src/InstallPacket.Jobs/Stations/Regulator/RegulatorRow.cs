using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>Reads one record of the regulator's list, field by field. The first fault in the order of the fields is reported.</summary>
internal sealed class RegulatorRow(string file, RegulatorRecord record, FindingList findings)
{
    private const string OwnList = "if you know better, write the station into a list of ours";
    private (int Position, string Reason, string Found, string Limit, string Remedy)? _fault;

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
        if (place is (0, 0)) Fault(RegulatorRecord.NorthSouth, "position", "the coordinates are 0, 0", "a transmitter on land", OwnList);
        var (haat, aboveSea) = Heights();
        if (_fault is not { } f) return new(record, callSign, channel!.Value, latitude!.Value, longitude!.Value, power, haat, aboveSea);
        tally.Drop(f.Reason);
        findings.Add(Severity.Caution, "station-row-dropped", new(file, record.Line, record.Column(f.Position)), "row dropped: " + f.Found, "expected " + f.Limit, f.Remedy);
        return null;
    }

    private void Fault(int position, string reason, string found, string limit, string remedy)
    {
        if (_fault is null || position < _fault.Value.Position) _fault = (position, reason, found, limit, remedy);
    }

    private string CallSign()
    {
        var text = record.Text(RegulatorRecord.CallSign);
        if (text.Length is 0 or > 12 || !char.IsAsciiLetterOrDigit(text[0]) || !text.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
            Fault(RegulatorRecord.CallSign, "call sign", Is("the call sign", text), "1 to 12 letters, digits and hyphens", OwnList);
        return text;
    }

    private void CheckServiceWord()
    {
        var word = record.Text(RegulatorRecord.ServiceWord).ToUpperInvariant();
        if (ServiceWord.IsDigital(word)) return;
        var analogue = ServiceWord.IsAnalogue(word);
        Fault(RegulatorRecord.ServiceWord, analogue ? "analogue" : "service code", Is("the service code", word) + (analogue ? ", analogue television" : ""),
            "digital television: " + string.Join(", ", ServiceWord.Digital), analogue ? "nothing, unless the station has a digital row that is missing" : OwnList);
    }

    private int? Channel()
    {
        var text = record.Text(RegulatorRecord.Channel);
        if (RegulatorNumber.Within(text, 1, 999) is { } n && n == Math.Floor(n) && ChannelRaster.Find(RegulatorList.Raster, (int)n) is not null) return (int)n;
        Fault(RegulatorRecord.Channel, "channel", Is("the RF channel", text), $"a channel of the raster {RegulatorList.Raster}", OwnList);
        return null;
    }

    private double PowerKw()
    {
        var text = record.Text(RegulatorRecord.Power);
        if (RegulatorNumber.Read(text) is { Value: >= 0.0001 and <= 5000 } n && n.Unit.ToUpperInvariant() is "" or "KW") return n.Value;
        Fault(RegulatorRecord.Power, "power", Is("the effective radiated power", text), "0.0001 to 5000 kW", OwnList);
        return 0;
    }

    private double? Angle(int position, string what, string positive, string negative, int most)
    {
        var letter = record.Text(position).ToUpperInvariant();
        var degrees = RegulatorNumber.Within(record.Text(position + 1), 0, most);
        var minutes = RegulatorNumber.Within(record.Text(position + 2), 0, 59);
        var seconds = RegulatorNumber.Within(record.Text(position + 3), 0, 60);
        if (letter != positive && letter != negative) Fault(position, "position", Is($"the letter of the {what}", letter), $"{positive} or {negative}", OwnList);
        else if (degrees is not { } d || d != Math.Floor(d)) Fault(position + 1, "position", Is($"the field of the {what}'s degrees", record.Text(position + 1)), $"a whole number from 0 to {most}", OwnList);
        else if (minutes is not { } m || m != Math.Floor(m)) Fault(position + 2, "position", Is($"the field of the {what}'s minutes", record.Text(position + 2)), "a whole number from 0 to 59", OwnList);
        else if (seconds is not { } s || s >= 60) Fault(position + 3, "position", Is($"the field of the {what}'s seconds", record.Text(position + 3)), "a number from 0 to below 60", OwnList);
        else if (d + (m / 60) + (s / 3600) is var angle && angle <= most) return letter == negative ? 0 - angle : angle;
        else Fault(position + 1, "position", $"the {what} is more than {most} deg", $"at most {most} deg", OwnList);
        return null;
    }

    // The positions are recalled: a field that is no height of an antenna counts as unknown. An antenna at exactly 0 m is a field not filled in.
    private (double? Haat, double? AboveSea) Heights()
    {
        var haat = First(1, 3000, RegulatorRecord.AverageHeight, RegulatorRecord.AverageHeightVertical);
        var sea = First(-400, 6000, RegulatorRecord.AboveSea, RegulatorRecord.AboveSeaVertical);
        if (haat is null && sea is null)
            Fault(RegulatorRecord.AverageHeight, "height", "neither the height above average terrain nor the height above sea level is a number that fits", "1 to 3000 m or -400 to 6000 m", OwnList);
        return (haat, sea);
    }

    private double? First(double min, double max, params int[] positions) =>
        positions.Select(p => RegulatorNumber.Within(record.Text(p), min, max)).FirstOrDefault(h => h is not (null or 0.0));

    private static string Is(string what, string value) => value.Length == 0 ? $"{what} is empty" : $"{what} is `{(value.Length > 40 ? value[..40] + "..." : value)}`";
}
