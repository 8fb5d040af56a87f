namespace InstallPacket.Tests;

/// <summary>The demo jobs of the checkout in memory, where a test can change a line before reading.</summary>
internal sealed class DemoJobs : IJobFiles
{
    private const string PartsFolder = "_shared/parts/";
    private static readonly Lazy<DemoJobs> Unchanged = new(FromDisk);
    private static readonly Lazy<PartLibrary> UnchangedParts = new(() => PartLibraryReader.Read(Unchanged.Value, new FindingList()));

    private readonly SortedDictionary<string, string> _files;
    private readonly SortedSet<string> _tiles;
    private bool _changesParts;

    private DemoJobs(SortedDictionary<string, string> files, SortedSet<string> tiles) => (_files, _tiles) = (files, tiles);

    private static DemoJobs FromDisk()
    {
        var (files, tiles) = (new SortedDictionary<string, string>(StringComparer.Ordinal), new SortedSet<string>(StringComparer.Ordinal));
        var root = Path.Combine(Checkout, "jobs");
        foreach (var path in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(root, path).Replace('\\', '/');
            if (IsTile(path)) tiles.Add(name);
            else files[name] = File.ReadAllText(path);
        }
        // Tests change single values: they work on the jobs with everything written out, which give the same packets.
        foreach (var folder in Directory.EnumerateDirectories(WrittenOut)) files[Path.GetFileName(folder) + "/job.yaml"] = File.ReadAllText(Path.Combine(folder, "job.yaml"));
        return new DemoJobs(files, tiles);
    }

    /// <summary>The top of the checkout: the folder that holds the solution.</summary>
    public static string Checkout { get; } = Find();

    /// <summary>The demo jobs with everything written out, as a job could be written before there were firms and kits.</summary>
    public static string WrittenOut => Path.Combine(Checkout, "tests", "WrittenOut");

    /// <summary>The jobs as they are in the checkout, written out.</summary>
    public static DemoJobs Load() => new(new(Unchanged.Value._files, StringComparer.Ordinal), Unchanged.Value._tiles);

    /// <summary>Replaces a text that must stand exactly once in a file.</summary>
    public DemoJobs With(string path, string old, string replacement)
    {
        var text = _files[path];
        var at = text.IndexOf(old, StringComparison.Ordinal);
        if (at < 0 || text.IndexOf(old, at + 1, StringComparison.Ordinal) >= 0)
            throw new ArgumentException($"'{old}' must stand exactly once in {path}.", nameof(old));
        return WithFile(path, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    /// <summary>A file as it stands.</summary>
    public string Text(string path) => _files[path];

    /// <summary>Replaces a file.</summary>
    public DemoJobs WithFile(string path, string text)
    {
        _files[path] = text;
        _changesParts |= path.StartsWith(PartsFolder, StringComparison.Ordinal);
        return this;
    }

    public JobFile Read(string path, int maxBytes) =>
        _files.TryGetValue(path, out var text) ? new(path, FileState.Present, text) : new(path, FileState.Absent, "");

    public Stream? Open(string path) => _tiles.Contains(path) ? File.OpenRead(Path.Combine(Checkout, "jobs", path)) : null;

    public IReadOnlyList<string> List(string folder) =>
        [.. _files.Keys.Concat(_tiles).Where(p => folder.Length == 0 || p.StartsWith(folder + "/", StringComparison.Ordinal))];

    /// <summary>The parts of the library.</summary>
    public PartLibrary Parts() => _changesParts ? PartLibraryReader.Read(this, new FindingList()) : UnchangedParts.Value;

    /// <summary>Reads a job that must read.</summary>
    public Job Job(string id)
    {
        var reading = new JobReader(this, Parts()).Read(id);
        return reading.Job ?? throw new InvalidOperationException(string.Join("\n", reading.Findings));
    }

    // Tiles, and the logos of firms: no text.
    private static bool IsTile(string path) => (path.Contains("/terrain/", StringComparison.Ordinal) && !path.EndsWith(".cs", StringComparison.Ordinal))
        || path.EndsWith(".png", StringComparison.Ordinal);

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (File.Exists(Path.Combine(at.FullName, "InstallPacket.sln"))) return at.FullName;
        throw new InvalidOperationException("The tests do not run inside the checkout.");
    }
}
