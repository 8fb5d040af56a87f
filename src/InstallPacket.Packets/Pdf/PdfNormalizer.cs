using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace InstallPacket.Packets.Pdf;

/// <summary>
/// Rewrites a file saved by PDFsharp 6.2.4 so that equal content gives equal bytes and every compressed stream is complete:
/// the library writes random font tags, annotation names and identifiers, the time of day, and streams without their check sum.
/// Relies on its classic cross-reference table with entries of 20 bytes.
/// </summary>
internal static partial class PdfNormalizer
{
    private const int EntryLength = 20;
    private const string FixedUuid = "uuid:00000000-0000-4000-8000-000000000000";

    private static readonly Encoding Raw = Encoding.Latin1;

    /// <summary>The same document with repeatable bytes.</summary>
    public static byte[] Normalize(byte[] source)
    {
        var text = Raw.GetString(source);
        var table = ReadTable(text);
        using var output = new MemoryStream(source.Length);
        var written = new Dictionary<int, long>();
        var fontTags = new Dictionary<string, string>(StringComparer.Ordinal);
        Write(output, "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n");
        foreach (var (id, start, end) in table.Objects)
        {
            written[id] = output.Position;
            WriteObject(output, source.AsSpan(start, end - start), text[start..end], fontTags);
        }
        WriteTable(output, table, written);
        return output.ToArray();
    }

    private sealed record Table(int Count, IReadOnlyList<(int Id, int Start, int End)> Objects, string Trailer);

    // An object ends where the next begins: searching for its closing word would stumble over a title that contains it.
    private static Table ReadTable(string text)
    {
        var xref = Number(StartXref().Matches(text)[^1].Groups[1].Value);
        var head = XrefHead().Match(text, xref);
        var count = Number(head.Groups[1].Value);
        var entries = head.Index + head.Length;
        var starts = new List<(int Id, int Start)>();
        for (var id = 1; id < count; id++)
        {
            var entry = text.AsSpan(entries + id * EntryLength, EntryLength);
            if (entry[17] == 'n') starts.Add((id, int.Parse(entry[..10], CultureInfo.InvariantCulture)));
        }
        var ends = starts.Select(s => s.Start).Append(xref).Order().ToList();
        var objects = starts.Select(s => (s.Id, s.Start, ends[ends.BinarySearch(s.Start) + 1])).ToList();
        var trailer = text[(entries + count * EntryLength)..text.LastIndexOf("startxref", StringComparison.Ordinal)];
        return new Table(count, objects, trailer);
    }

    private static void WriteObject(MemoryStream output, ReadOnlySpan<byte> bytes, string text, Dictionary<string, string> fontTags)
    {
        if (!StreamEnd().IsMatch(text))
        {
            Write(output, CleanDictionary(text.TrimEnd(), fontTags) + "\n");
            return;
        }
        var body = text.IndexOf("stream\n", StringComparison.Ordinal);
        var dictionary = text[..body];
        var data = bytes.Slice(body + "stream\n".Length, Number(Length().Match(dictionary).Groups[1].Value)).ToArray();
        if (dictionary.Contains("/Type/Metadata", StringComparison.Ordinal)) data = Raw.GetBytes(CleanMetadata(Raw.GetString(data)));
        else if (dictionary.Contains("/FlateDecode", StringComparison.Ordinal)) data = Recompress(data);
        var length = string.Create(CultureInfo.InvariantCulture, $"/Length {data.Length}");
        Write(output, Length().Replace(CleanDictionary(dictionary, fontTags), length) + "stream\n");
        output.Write(data);
        Write(output, "\nendstream\nendobj\n");
    }

    private static void WriteTable(MemoryStream output, Table table, Dictionary<int, long> written)
    {
        var digest = Convert.ToHexString(SHA256.HashData(output.GetBuffer().AsSpan(0, (int)output.Length)))[..32];
        var start = output.Position;
        var lines = new StringBuilder();
        lines.Append(CultureInfo.InvariantCulture, $"xref\n0 {table.Count}\n0000000000 65535 f\r\n");
        for (var id = 1; id < table.Count; id++)
            lines.Append(written.TryGetValue(id, out var at) ? string.Create(CultureInfo.InvariantCulture, $"{at:D10} 00000 n\r\n")
                : "0000000000 00001 f\r\n");
        lines.Append(IdArray().Replace(table.Trailer, $"/ID[<{digest}><{digest}>]"));
        lines.Append(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n");
        Write(output, lines.ToString());
    }

    private static string CleanDictionary(string text, Dictionary<string, string> fontTags)
    {
        if (text.Contains("/Type/Font", StringComparison.Ordinal))
            text = FontTag().Replace(text, m => m.Groups[1].Value + FontTagOf(m.Groups[2].Value, fontTags) + "+");
        if (text.Contains("/Type/Annot", StringComparison.Ordinal)) text = AnnotationStamp().Replace(text, "");
        return Date().Replace(text, "");
    }

    private static string FontTagOf(string random, Dictionary<string, string> fontTags)
    {
        if (!fontTags.TryGetValue(random, out var tag)) fontTags[random] = tag = (char)('A' + fontTags.Count) + "AAAAA";
        return tag;
    }

    // The metadata repeat the time of day and two random identifiers.
    private static string CleanMetadata(string xml) => XmlDate().Replace(Uuid().Replace(xml, FixedUuid), "");

    private static byte[] Recompress(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var inflate = new DeflateStream(new MemoryStream(data, 2, data.Length - 2), CompressionMode.Decompress))
        using (var deflate = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            inflate.CopyTo(deflate);
        return packed.ToArray();
    }

    private static void Write(MemoryStream output, string text) => output.Write(Raw.GetBytes(text));

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"startxref\s+(\d+)")]
    private static partial Regex StartXref();

    [GeneratedRegex(@"\Gxref\s+0 (\d+)\s+")]
    private static partial Regex XrefHead();

    [GeneratedRegex(@"endstream\s+endobj\s*\z")]
    private static partial Regex StreamEnd();

    [GeneratedRegex(@"/Length (\d+)")]
    private static partial Regex Length();

    [GeneratedRegex(@"(/(?:BaseFont|FontName)\s*/)([A-Z]{6})\+")]
    private static partial Regex FontTag();

    [GeneratedRegex(@"/NM\([0-9a-f-]{36}\)|/M\(D:[^)]*\)")]
    private static partial Regex AnnotationStamp();

    [GeneratedRegex(@"/(?:CreationDate|ModDate)\s*\(D:[^)]*\)")]
    private static partial Regex Date();

    [GeneratedRegex(@"uuid:[0-9a-f-]{36}")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"\s*<xmp:(CreateDate|ModifyDate|MetadataDate)>[^<]*</xmp:\1>|\s+xmp:(?:CreateDate|ModifyDate|MetadataDate)=""[^""]*""")]
    private static partial Regex XmlDate();

    [GeneratedRegex(@"/ID\s*\[.*?\]", RegexOptions.Singleline)]
    private static partial Regex IdArray();
}
