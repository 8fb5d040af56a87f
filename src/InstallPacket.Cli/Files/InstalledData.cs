namespace InstallPacket.Cli.Files;

/// <summary>The theme and the generic parts that come with the program.</summary>
internal static class InstalledData
{
    private static readonly Lazy<IReadOnlyDictionary<string, byte[]>> Files = new(() => ThemeFolder.Read(Theme));

    /// <summary>The files of the built-in theme, read once: nobody changes them while the program runs.</summary>
    public static IReadOnlyDictionary<string, byte[]> ThemeFiles => Files.Value;

    /// <summary>The built-in theme, single files of which an own theme may replace.</summary>
    /// <param name="overlay">A firm's own theme, or null.</param>
    public static Theme ThemeUnder(string? overlay) => new(overlay is null ? ThemeFiles : ThemeFolder.Over(ThemeFiles, overlay));

    /// <summary>The folder that holds the installed <c>_shared</c>.</summary>
    public static string Jobs => Path.Combine(AppContext.BaseDirectory, "installed");

    /// <summary>The built-in theme.</summary>
    public static string Theme => Path.Combine(AppContext.BaseDirectory, "installed", "theme");
}
