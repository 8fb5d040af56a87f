using System.Text;

namespace InstallPacket.Calc.Sources;

/// <summary>Minimal RFC 4180 reading: quoted fields, doubled quotes, line breaks inside quotes, <c>#</c> comment lines.</summary>
public static class CsvText
{
    /// <summary>Splits a text into records of fields; each record knows the line it starts on, and where each field starts.</summary>
    /// <param name="text">The whole file.</param>
    /// <returns>Records in file order, without blank and comment lines.</returns>
    public static IReadOnlyList<CsvRecord> Records(string text)
    {
        var records = new List<CsvRecord>();
        var fields = new List<string>();
        var places = new List<CsvPlace>();
        var field = new StringBuilder();
        int line = 1, startLine = 1, lineStart = 0;
        bool quoted = false, wasQuoted = false;
        for (var i = 0; i <= text.Length; i++)
        {
            var c = i < text.Length ? text[i] : '\n';
            if (quoted && i < text.Length)
            {
                if (c != '"') field.Append(c);
                else if (i + 1 < text.Length && text[i + 1] == '"') { field.Append('"'); i++; }
                else quoted = false;
                if (c == '\n') (line, lineStart) = (line + 1, i + 1);
                continue;
            }
            // A field starts at its first sign; an empty one stands where its comma or the line's end is.
            if (places.Count == fields.Count && c is not (' ' or '\t')) places.Add(new(line, i - lineStart + 1));
            if (c == '"' && field.Length == 0) { quoted = wasQuoted = true; }
            else if (c == ',') { fields.Add(Take(field, ref wasQuoted)); }
            else if (c == '\n')
            {
                fields.Add(Take(field, ref wasQuoted));
                if (IsData(fields)) records.Add(new CsvRecord(startLine, [.. fields], [.. places]));
                fields.Clear();
                places.Clear();
                (startLine, lineStart) = (++line, i + 1);
            }
            else if (c != '\r') field.Append(c);
        }
        return records;
    }

    /// <summary>Reads rows by column name; the first record is the header.</summary>
    /// <param name="text">The whole file.</param>
    /// <returns>One map per data row; a short row simply lacks its last columns.</returns>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string text)
    {
        var records = Records(text);
        if (records.Count == 0) return [];
        var header = records[0].Fields;
        return [.. records.Skip(1).Select(r => (IReadOnlyDictionary<string, string>)Enumerable
            .Range(0, Math.Min(header.Count, r.Fields.Count)).ToDictionary(i => header[i], i => r.Fields[i], StringComparer.Ordinal))];
    }

    private static bool IsData(List<string> fields) =>
        !(fields.Count == 1 && fields[0].Length == 0) && !fields[0].StartsWith('#');

    private static string Take(StringBuilder field, ref bool wasQuoted)
    {
        var value = wasQuoted ? field.ToString() : field.ToString().Trim();
        field.Clear();
        wasQuoted = false;
        return value;
    }
}

/// <summary>One record of a CSV text.</summary>
/// <param name="Line">The line, counted from 1, on which it starts.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Places">Where each field starts; for a quoted one, its opening quote.</param>
public sealed record CsvRecord(int Line, IReadOnlyList<string> Fields, IReadOnlyList<CsvPlace> Places);

/// <summary>A place in a CSV text.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
public readonly record struct CsvPlace(int Line, int Column);
