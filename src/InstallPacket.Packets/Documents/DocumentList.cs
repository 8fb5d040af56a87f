using System.Buffers;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Documents;

/// <summary>Reads which documents a packet has: those of the theme, with those that a firm adds or replaces.</summary>
internal static class DocumentList
{
    private static readonly SearchValues<char> NameSigns = SearchValues.Create("abcdefghijklmnopqrstuvwxyz0123456789-");
    private static readonly string[] Keys = ["title", "reader", "template", "formats", "for", "logo"];

    /// <summary>The documents in order.</summary>
    /// <param name="files">The lists, ours first.</param>
    /// <exception cref="DocumentException">A list has a mistake.</exception>
    public static IReadOnlyList<DocumentEntry> Read(IEnumerable<(string Path, byte[] Bytes)> files)
    {
        var all = new List<DocumentEntry>();
        foreach (var (path, bytes) in files)
            foreach (var (key, value) in WordsFile.YamlMapOf(path, bytes).Entries)
            {
                var entry = Entry(key, value);
                var at = all.FindIndex(e => e.Id == entry.Id);
                if (at < 0) all.Add(entry);
                else all[at] = entry;
            }
        return all;
    }

    private static DocumentEntry Entry(YamlScalar name, YamlNode node)
    {
        if (name.Value.Length == 0 || name.Value.AsSpan().ContainsAnyExcept(NameSigns))
            throw new WordsException(name.At, $"'{name.Value}' cannot be the name of a file; use small letters, digits and hyphens");
        if (node is not YamlMap map) throw new WordsException(node.At,
            $"the document '{name.Value}' needs the keys {string.Join(", ", Keys)}");
        foreach (var (key, _) in map.Entries)
            if (!Keys.Contains(key.Value))
                throw new WordsException(key.At,
                    $"a document has no key '{key.Value}'{WordsFile.Near(key.Value, Keys)}; it has {string.Join(", ", Keys)}");
        return new(name.Value, Text(map, name, "title")!, Text(map, name, "reader", optional: true), Text(map, name, "template")!,
            Formats(map, name), Use(map, name)) { Logo = Logo(map, name) };
    }

    private static DocumentUse Use(YamlMap map, YamlScalar name) => Text(map, name, "for", optional: true) switch
    {
        null => DocumentUse.All,
        "job" => DocumentUse.Job,
        "study" => DocumentUse.Study,
        _ => throw new WordsException(Node(map, "for")!.At, "a document is for 'job' or for 'study', or for both without the key"),
    };

    private static bool Logo(YamlMap map, YamlScalar name) => Text(map, name, "logo", optional: true) switch
    {
        null or "no" => false,
        "yes" => true,
        _ => throw new WordsException(Node(map, "logo")!.At, "logo is 'yes' or 'no'"),
    };

    private static string? Text(YamlMap map, YamlScalar name, string key, bool optional = false) => Node(map, key) switch
    {
        YamlScalar text => text.Value,
        null when optional => null,
        _ => throw new WordsException(name.At, $"the document '{name.Value}' needs the key '{key}' with a text"),
    };

    private static List<DocumentFormat> Formats(YamlMap map, YamlScalar name)
    {
        if (Node(map, "formats") is not YamlList { Items.Count: > 0 } list)
            throw new WordsException(name.At, $"the document '{name.Value}' needs the key 'formats' with a list of html, pdf, md");
        return [.. list.Items.Select(i => (i as YamlScalar)?.Value switch
        {
            "html" => DocumentFormat.Html,
            "pdf" => DocumentFormat.Pdf,
            "md" => DocumentFormat.Md,
            _ => throw new WordsException(i.At, "a document is written as html, pdf or md"),
        })];
    }

    private static YamlNode? Node(YamlMap map, string key) => map.Entries.FirstOrDefault(e => e.Key.Value == key).Value;
}
