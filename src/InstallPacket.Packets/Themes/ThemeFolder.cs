namespace InstallPacket.Packets.Themes;

/// <summary>Reads theme folders; the only place that knows a theme comes from files.</summary>
public static class ThemeFolder
{
    private static readonly string[] Parts = ["fonts", "style", "templates"];

    /// <summary>Reads the built-in theme and lays an own theme over it, file by file.</summary>
    /// <param name="builtInFolder">The theme of the project.</param>
    /// <param name="overlayFolder">A firm's own theme, or null.</param>
    /// <returns>Bytes by relative path with forward slashes.</returns>
    /// <exception cref="DirectoryNotFoundException">A named folder does not exist.</exception>
    public static IReadOnlyDictionary<string, byte[]> Read(string builtInFolder, string? overlayFolder = null)
    {
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        Add(files, builtInFolder);
        if (overlayFolder is not null) Add(files, overlayFolder);
        return files;
    }

    private static void Add(SortedDictionary<string, byte[]> files, string folder)
    {
        if (!Directory.Exists(folder)) throw new DirectoryNotFoundException($"there is no theme folder '{folder}'");
        foreach (var part in Parts.Select(p => Path.Combine(folder, p)).Where(Directory.Exists))
            foreach (var file in Directory.EnumerateFiles(part, "*", SearchOption.AllDirectories))
                files[Path.GetRelativePath(folder, file).Replace('\\', '/')] = File.ReadAllBytes(file);
    }
}
