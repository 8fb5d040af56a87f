namespace InstallPacket.Jobs.Text;

/// <summary>
/// Two shelves of shared files: those of the firm below <c>_shared</c>, and the generic ones that come with the program, which are seen below
/// <c>_generic</c>. What the firm says goes before; what it does not say is still there.
/// </summary>
public static class SharedFolder
{
    /// <summary>Where the files of the firm are.</summary>
    public const string Own = "_shared/";

    /// <summary>Where the files that come with the program are seen.</summary>
    public const string Generic = "_generic/";

    /// <summary>The parts files, those of the firm first.</summary>
    /// <param name="files">The author's files.</param>
    public static IReadOnlyList<string> Parts(IJobFiles files) => Both(files, "parts");

    /// <summary>The kit files, those of the firm first.</summary>
    /// <param name="files">The author's files.</param>
    public static IReadOnlyList<string> Kits(IJobFiles files) => Both(files, "kits");

    /// <summary>Whether a file comes with the program.</summary>
    /// <param name="path">Its path.</param>
    public static bool IsGeneric(string path) => path.StartsWith(Generic, StringComparison.Ordinal);

    /// <summary>The path of a generic file in the folder that is installed with the program.</summary>
    /// <param name="path">Its path below <c>_generic</c>.</param>
    public static string Installed(string path) => Own + path[Generic.Length..];

    private static IReadOnlyList<string> Both(IJobFiles files, string name) =>
        [.. files.List(Own + name).Concat(files.List(Generic + name)).Where(p => p.EndsWith(".yaml", StringComparison.Ordinal))];
}
