using System.Globalization;
using System.Text;
using InstallPacket.Drawings;

namespace InstallPacket.Packets.Data;

/// <summary>Writes RFC 4180 text. A field that a spreadsheet would take for a formula gets an apostrophe in front.</summary>
internal sealed class CsvFile
{
    private readonly StringBuilder _text = new();

    public CsvFile(params string[] header) => Row(header);

    /// <summary>A file whose header is in the language of the job.</summary>
    /// <param name="words">The words.</param>
    /// <param name="columns">Names of the columns in the section <c>tables</c>.</param>
    public static CsvFile Of(IWords words, params string[] columns) => new([.. columns.Select(c => words.Say("tables." + c))]);

    public void Row(params object?[] fields) => _text.AppendJoin(',', fields.Select(Field)).Append('\n');

    public byte[] Bytes() => Encoding.UTF8.GetBytes(_text.ToString());

    private static string Field(object? value) => value switch
    {
        null => "",
        double d => Math.Round(d, 4).ToString(CultureInfo.InvariantCulture),
        int i => i.ToString(CultureInfo.InvariantCulture),
        string s => Quote(Guard(s)),
        _ => throw new ArgumentException($"A CSV field cannot be a {value.GetType().Name}.", nameof(value)),
    };

    private static string Guard(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;

    private static string Quote(string text) => text.IndexOfAny([',', '"', '\n', '\r', '\'']) >= 0 ? "\"" + text.Replace("\"", "\"\"")
        + "\"" : text;
}
