namespace InstallPacket.Packets.Themes;

/// <summary>Reads theme folders; the only place that knows a theme comes from files.</summary>
public static class ThemeFolder
{
    /// <summary>In front of the path of a file that a firm's theme lays over ours entry by entry, so that both stay.</summary>
    public const string Own = "own/";

    private const string Documents = "documents.yaml";
    private const string Words = "words/";
    private static readonly string[] Parts = ["fonts", "style", "templates", "words"];

    /// <summary>Reads the built-in theme and lays an own theme over it: words and documents entry by entry, all else file by file.</summary>
    /// <param name="builtInFolder">The theme of the project.</param>
    /// <param name="overlayFolder">A firm's own theme, or null.</param>
    /// <returns>Bytes by relative path with forward slashes.</returns>
    /// <exception cref="DirectoryNotFoundException">A named folder does not exist.</exception>
    public static IReadOnlyDictionary<string, byte[]> Read(string builtInFolder, string? overlayFolder = null)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        Add(files, builtInFolder, own: false);
        if (overlayFolder is not null) Add(files, overlayFolder, own: true);
        return files;
    }

    private static void Add(SortedDictionary<string, byte[]> files, string folder, bool own)
    {
        if (!Directory.Exists(folder)) throw new DirectoryNotFoundException($"there is no theme folder '{folder}'");
        foreach (var part in Parts.Select(p => Path.Combine(folder, p)).Where(Directory.Exists))
            foreach (var file in Directory.EnumerateFiles(part, "*", SearchOption.AllDirectories))
            {
                var path = Path.GetRelativePath(folder, file).Replace('\\', '/');
                files[own && path.StartsWith(Words, StringComparison.Ordinal) ? Own + path : path] = File.ReadAllBytes(file);
            }
        var documents = Path.Combine(folder, Documents);
        if (File.Exists(documents)) files[own ? Own + Documents : Documents] = File.ReadAllBytes(documents);
    }
}
