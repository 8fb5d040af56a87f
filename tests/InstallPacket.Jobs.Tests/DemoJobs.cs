namespace InstallPacket.Jobs.Tests;

/// <summary>The demo jobs of this repository, in memory.</summary>
internal static class DemoJobs
{
    public static readonly string Folder = Find();

    public static readonly IReadOnlyList<string> Ids = ["alder-lane", "brook-terrace", "far-meadow", "mill-yard", "pine-corner", "quay-loft"];

    /// <summary>All demo jobs as the repository shows them.</summary>
    public static readonly IReadOnlyList<string> Shown = [.. Ids, "sugar-lane"];

    private static readonly MemoryJobFiles Shared = FromDisk();

    public static readonly PartLibrary Parts = PartLibraryReader.Read(Files(), new FindingList());

    public static string Text(string id) => File.ReadAllText(Path.Combine(Path.GetDirectoryName(Folder)!, "tests", "WrittenOut", id, "job.yaml")).ReplaceLineEndings("\n");

    /// <summary>The shared files alone.</summary>
    public static MemoryJobFiles Files() => new(Shared);

    private static MemoryJobFiles FromDisk()
    {
        var files = new MemoryJobFiles();
        foreach (var file in Directory.GetFiles(Path.Combine(Folder, "_shared"), "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(Folder, file).Replace('\\', '/');
            if (path.EndsWith(".png", StringComparison.Ordinal)) files.WithPicture(path, File.ReadAllBytes(file));
            else files.With(path, File.ReadAllText(file));
        }
        return files;
    }

    /// <summary>Reads a job text beside the shared files.</summary>
    public static JobReading Read(string text) => new JobReader(Files().With("job/job.yaml", text), Parts).Read("job");

    private static string Find()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "InstallPacket.sln"))) at = at.Parent;
        return Path.Combine(at?.FullName ?? throw new InvalidOperationException("The tests do not run below the checkout."), "jobs");
    }
}
