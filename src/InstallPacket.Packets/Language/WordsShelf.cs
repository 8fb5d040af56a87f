using System.Collections.Concurrent;

namespace InstallPacket.Packets.Language;

/// <summary>The languages of a theme: every <c>words/LANGUAGE.yaml</c>, each loaded once.</summary>
/// <param name="files">The files of the theme by relative path.</param>
public sealed class WordsShelf(IReadOnlyDictionary<string, byte[]> files)
{
    private const string Folder = "words/";
    private const string Ending = ".yaml";

    private readonly ConcurrentDictionary<string, Words> _words = new(StringComparer.Ordinal);

    /// <summary>The languages that have words.</summary>
    public IReadOnlyList<string> Languages { get; } = [.. files.Keys.Select(LanguageOf).OfType<string>().Distinct().Order(StringComparer.Ordinal)];

    /// <summary>The words of a language.</summary>
    /// <param name="language">BCP 47 tag.</param>
    /// <exception cref="DocumentException">There is no such language, or its words have a mistake.</exception>
    public Words Words(string language) => _words.GetOrAdd(language, l => new Words(l, FilesOf, Languages));

    private List<(string Path, byte[] Bytes)> FilesOf(string language) =>
        [.. new[] { "", ThemeFolder.Own }.Select(o => o + Folder + language + Ending).Where(files.ContainsKey).Select(p => (p, files[p]))];

    private static string? LanguageOf(string path)
    {
        var own = path.StartsWith(ThemeFolder.Own, StringComparison.Ordinal) ? path[ThemeFolder.Own.Length..] : path;
        return own.StartsWith(Folder, StringComparison.Ordinal) && own.EndsWith(Ending, StringComparison.Ordinal)
            ? own[Folder.Length..^Ending.Length] : null;
    }
}
