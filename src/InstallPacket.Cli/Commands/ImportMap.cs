using System.Text;

namespace InstallPacket.Cli.Commands;

/// <summary>Which column of a table is which key of a job.</summary>
internal sealed class ImportMap
{
    /// <summary>What names the folder of the job.</summary>
    public const string Folder = "folder";

    private static readonly string[] Lists = ["reception.want"];
    private readonly Dictionary<string, string> _keys;

    private ImportMap(Dictionary<string, string> keys) => _keys = keys;

    /// <summary>The map of the firm's file; a column that it does not name is a key by its own name.</summary>
    public static ImportMap Read(IJobFiles files, string? firm)
    {
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        if (FirmFile.Read(files, firm, new FindingList()) is { } said
            && said.Says.Entries.FirstOrDefault(e => e.Key.Value == "import").Value is YamlList columns)
            foreach (var entry in columns.Items.OfType<YamlMap>())
                if (Text(entry, "column") is { } column && Text(entry, "key") is { } key) keys[column] = key;
        return new(keys);
    }

    /// <summary>What is wrong with the header; empty when nothing is.</summary>
    public string Problem(IReadOnlyList<string> header)
    {
        var known = KeyCatalogue.AllKeys().Select(k => k.Path).ToHashSet(StringComparer.Ordinal);
        var unknown = header.Where(h => Key(h) is var key && key != Folder && !known.Contains(key)).ToArray();
        return unknown.Length == 0 ? ""
            : $"the columns {string.Join(", ", unknown.Select(u => $"`{u}`"))} are no keys of a job; rename them (`customer.name`, `siting.place`, `reception.want` ...), or map them in the firm's file: import: [{{ column: Customer, key: customer.name }}]";
    }

    /// <summary>The values of a row by key; empty fields are left out.</summary>
    public Dictionary<string, string> Values(IReadOnlyList<string> header, IReadOnlyList<string> fields)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < header.Count; i++)
            if (fields[i].Trim().Length > 0) values[Key(header[i])] = fields[i].Trim();
        return values;
    }

    /// <summary>The job file of a row.</summary>
    public static string Job(Dictionary<string, string> values, string? firm, string? date)
    {
        var text = new StringBuilder("format: 1\n");
        var all = new Dictionary<string, string>(values, StringComparer.Ordinal);
        all.Remove(Folder);
        all.TryAdd("title", values.GetValueOrDefault("customer.address") ?? values.GetValueOrDefault(Folder) ?? "");
        if (date is not null) all.TryAdd("date", date);
        if (firm is not null) all.TryAdd("firm", firm);
        Write(text, all.Select(p => (Path: p.Key.Split('.'), p.Key, p.Value)).ToList(), 0);
        return text.ToString();
    }

    /// <summary>A finding in a few words: the key and its id.</summary>
    public static string Said(Finding finding) => finding.Values["path"] is string path ? $"{path}: {finding.Id}" : finding.Id;

    /// <summary>A text as the name of a folder.</summary>
    public static string FolderName(string text)
    {
        var name = new StringBuilder();
        foreach (var c in text.ToLowerInvariant())
            if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)) name.Append(c);
            else if (name.Length > 0 && name[^1] != '-') name.Append('-');
        return name.ToString().Trim('-') is var trimmed && trimmed.Length > 60 ? trimmed[..60].Trim('-') : name.ToString().Trim('-');
    }

    private string Key(string column) => _keys.GetValueOrDefault(column.Trim(), column.Trim());

    private static void Write(StringBuilder text, List<(string[] Path, string Key, string Value)> values, int level)
    {
        foreach (var group in values.GroupBy(v => v.Path[level]))
        {
            text.Append(' ', 2 * level).Append(group.Key).Append(':');
            if (group.First().Path.Length == level + 1) text.Append(' ').Append(Value(group.First().Key, group.First().Value)).Append('\n');
            else
            {
                text.Append('\n');
                Write(text, [.. group], level + 1);
            }
        }
    }

    private static string Value(string key, string value) => Lists.Contains(key)
        ? "[" + string.Join(", ", value.Split([';', '|'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Quoted)) + "]" : Quoted(value);

    private static string Quoted(string value) => "\"" + string.Concat(value.Select(c => c is '"' or '\\' ? "\\" + c : char.IsControl(c) ? " " : c.ToString())) + "\"";

    private static string? Text(YamlMap map, string key) => (map.Entries.FirstOrDefault(e => e.Key.Value == key).Value as YamlScalar)?.Value;
}
