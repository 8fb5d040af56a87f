namespace InstallPacket.Packets.Themes;

/// <summary>Reads theme folders; the only place that knows a theme comes from files.</summary>
public static class ThemeFolder
{
    /// <summary>In front of the path of a file that a firm's theme lays over ours entry by entry, so that both stay.</summary>
    public const string Own = "own/";

    private const int MostBytes = 32 * 1024 * 1024;
    private const string Documents = "documents.yaml";
    private const string Words = "words/";
    private static readonly string[] Parts = ["fonts", "style", "templates", "words"];

    /// <summary>Reads the built-in theme and lays an own theme over it: words and documents entry by entry, all else file by
    /// file.</summary>
    /// <param name="builtInFolder">The theme of the project.</param>
    /// <param name="overlayFolder">A firm's own theme, or null.</param>
    /// <returns>Bytes by relative path with forward slashes.</returns>
    /// <exception cref="DirectoryNotFoundException">A named folder does not exist.</exception>
    public static IReadOnlyDictionary<string, byte[]> Read(string builtInFolder, string? overlayFolder = null)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        Add(files, builtInFolder, own: false);
        return overlayFolder is null ? files : Over(files, overlayFolder);
    }

    /// <summary>Lays an own theme over files already read.</summary>
    /// <param name="files">The built-in theme.</param>
    /// <param name="overlayFolder">A firm's own theme.</param>
    /// <returns>Bytes by relative path with forward slashes.</returns>
    /// <exception cref="DirectoryNotFoundException">The folder does not exist.</exception>
    public static IReadOnlyDictionary<string, byte[]> Over(IReadOnlyDictionary<string, byte[]> files, string overlayFolder)
    {
        var both = new SortedDictionary<string, byte[]>(files.ToDictionary(f => f.Key, f => f.Value), StringComparer.Ordinal);
        Add(both, overlayFolder, own: true);
        return both;
    }

    private static void Add(SortedDictionary<string, byte[]> files, string folder, bool own)
    {
        if (!Directory.Exists(folder)) throw new DirectoryNotFoundException($"there is no theme folder '{folder}'");
        foreach (var part in Parts.Select(p => Path.Combine(folder, p)).Where(Directory.Exists))
            Add(files, folder, part, own);
        var documents = Path.Combine(folder, Documents);
        if (File.Exists(documents)) files[own ? Own + Documents : Documents] = Bytes(folder, new FileInfo(documents));
    }

    private static void Add(SortedDictionary<string, byte[]> files, string folder, string below, bool own)
    {
        var at = new DirectoryInfo(below);
        RefuseLink(folder, at);
        foreach (var file in at.EnumerateFiles())
        {
            var path = Relative(folder, file);
            files[own && path.StartsWith(Words, StringComparison.Ordinal) ? Own + path : path] = Bytes(folder, file);
        }
        foreach (var deeper in at.EnumerateDirectories()) Add(files, folder, deeper.FullName, own);
    }

    private static byte[] Bytes(string folder, FileInfo file)
    {
        RefuseLink(folder, file);
        if (file.Length > MostBytes)
            throw new DocumentException($"the theme file '{Relative(folder, file)}' has {file.Length / 1048576} MiB; at most {MostBytes / 1048576} MiB are read");
        // A pipe or a device has no length, and reading it might never end.
        return file.Length == 0 ? [] : File.ReadAllBytes(file.FullName);
    }

    private static void RefuseLink(string folder, FileSystemInfo entry)
    {
        if (entry.LinkTarget is not null)
            throw new DocumentException($"'{Relative(folder, entry)}' in the theme is a symbolic link; links are not followed. Put the file itself there");
    }

    private static string Relative(string folder, FileSystemInfo entry) => Path.GetRelativePath(folder, entry.FullName).Replace('\\', '/');
}
