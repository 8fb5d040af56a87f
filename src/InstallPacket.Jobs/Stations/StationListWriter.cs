using System.Globalization;
using System.Text;

namespace InstallPacket.Jobs.Stations;

/// <summary>Writes a station list of ours: RFC 4180, remarks in front, one transmitter a row.</summary>
public static class StationListWriter
{
    private static readonly string[] Columns =
        ["id", "name", "site", "system", "mode", "raster", "rf_channel", "shows_as", "latitude_deg", "longitude_deg", "erp_kw", "haat_m",
            "above_sea_m", "polarisation", "pattern"];

    /// <summary>The text of the file. Angles are rounded to 0.000001 deg (0.1 m), powers to 1 mW, heights to 1 cm.</summary>
    /// <param name="stations">The stations, in the order of the rows.</param>
    /// <param name="remarks">Sentences for the head of the file.</param>
    public static string Text(IEnumerable<Station> stations, IEnumerable<string> remarks)
    {
        var text = new StringBuilder();
        foreach (var remark in remarks) text.Append("# ").Append(Plain(remark)).Append('\n');
        text.AppendJoin(',', Columns).Append('\n');
        foreach (var s in stations) text.AppendJoin(',', Fields(s).Select(Quoted)).Append('\n');
        return text.ToString();
    }

    private static string[] Fields(Station s) =>
    [
        s.Id, s.Name, s.Site, s.System, s.Mode, s.Raster, Number(s.Channel, "0"), s.ShowsAs, Number(s.LatitudeDeg, "0.######"),
            Number(s.LongitudeDeg, "0.######"),
        Number(s.ErpKw, "0.######"), s.HaatM is { } h ? Number(h, "0.##") : "", s.AboveSeaM is { } a ? Number(a, "0.##") : "",
            Word.Of(s.Polarisation),
        s.Pattern is { } p ? PatternText.Write(p) : "",
    ];

    private static string Number(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);

    // A field with blanks at its ends needs quotes as well, because readers trim the others.
    private static string Quoted(string field) =>
        field.IndexOfAny([',', '"', '\n', '\r']) >= 0 || field.Trim().Length != field.Length ? "\""
            + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : field;

    // A remark stays on its line and opens no quote.
    private static string Plain(string remark) => string.Concat(remark.Select(c => char.IsControl(c) ? ' ' : c == '"' ? '\'' : c));
}
