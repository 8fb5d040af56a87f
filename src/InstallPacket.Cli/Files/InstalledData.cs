namespace InstallPacket.Cli.Files;

/// <summary>The theme and the generic parts that come with the program.</summary>
internal static class InstalledData
{
    /// <summary>The folder that holds the installed <c>_shared</c>.</summary>
    public static string Jobs => Path.Combine(AppContext.BaseDirectory, "installed");

    /// <summary>The built-in theme.</summary>
    public static string Theme => Path.Combine(AppContext.BaseDirectory, "installed", "theme");
}
