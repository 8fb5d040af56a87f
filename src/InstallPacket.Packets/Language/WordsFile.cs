using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using InstallPacket.Jobs;

namespace InstallPacket.Packets.Language;

/// <summary>A file of words as written: texts by id, an id being the path of keys joined by points.</summary>
internal sealed class WordsFile
{
    private const string BasedOnKey = "based-on";

    // The console and the packets speak from the same built-in files: each is parsed once as long as its bytes are held.
    private static readonly ConditionalWeakTable<byte[], WordsFile> Known = [];

    private WordsFile(string? basedOn, IReadOnlyDictionary<string, WordText> texts) => (BasedOn, Texts) = (basedOn, texts);

    /// <summary>The language that speaks where this file has no text; null when it has them all.</summary>
    public string? BasedOn { get; }

    public IReadOnlyDictionary<string, WordText> Texts { get; }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Its path in the theme, for messages.</param>
    /// <param name="bytes">Its content.</param>
    /// <exception cref="WordsException">It is no map of texts.</exception>
    public static WordsFile Read(string path, byte[] bytes)
    {
        if (Known.TryGetValue(bytes, out var known)) return known;
        var file = Parse(path, bytes);
        Known.AddOrUpdate(bytes, file);
        return file;
    }

    private static WordsFile Parse(string path, byte[] bytes)
    {
        var map = YamlMapOf(path, bytes);
        var texts = new Dictionary<string, WordText>(StringComparer.Ordinal);
        string? basedOn = null;
        foreach (var (key, value) in map.Entries)
        {
            if (key.Value == BasedOnKey && value is YamlScalar language) basedOn = language.Value;
            else Add(texts, key.Value, value);
        }
        return new(basedOn, texts);
    }

    /// <summary>The map of a file of the theme, through the gate of job files.</summary>
    internal static YamlMap YamlMapOf(string path, byte[] bytes)
    {
        var findings = new FindingList();
        var text = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal);
        var map = YamlGate.Load(new JobFile(path, FileState.Present, text), findings);
        // The words themselves cannot be read here, so the finding is named and not spoken.
        if (findings.Sorted is [var first, ..])
            throw new WordsException(first.At,
                $"{first.Id}{(first.Values.Count > 0 ? $" ({first.Values})" : "")}; `installpacket explain {first.Id}` says what to do");
        return map ?? throw new WordsException(new(path, 1, 1), "the file holds no map of keys");
    }

    /// <summary>A hint at the known id that is nearest, or nothing.</summary>
    public static string Near(string id, IEnumerable<string> known) => NearestWord.Of(id, known) is { } near ? $"; the nearest is '{near}'"
        : "";

    private static void Add(Dictionary<string, WordText> texts, string id, YamlNode node)
    {
        switch (node)
        {
            case YamlScalar text:
                texts[id] = new WordText(id, text.Value, text.At);
                break;
            case YamlMap map:
                foreach (var (key, value) in map.Entries) Add(texts, $"{id}.{key.Value}", value);
                break;
            case YamlList list:
                for (var i = 0; i < list.Items.Count; i++)
                    Add(texts, string.Create(CultureInfo.InvariantCulture, $"{id}.{i + 1}"), list.Items[i]);
                break;
        }
    }
}
