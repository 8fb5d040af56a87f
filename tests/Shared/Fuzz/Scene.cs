using System.Text.RegularExpressions;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A folder with the demo jobs, an empty theme and room for packets. What an input changes is put back after it.</summary>
internal sealed partial class Scene : IDisposable
{
    private readonly Dictionary<string, byte[]?> _before = new(StringComparer.Ordinal);
    private readonly bool _tiles;

    /// <summary>Copies the demo jobs.</summary>
    /// <param name="tiles">Whether elevation tiles are wanted; without them the jobs name none, and are planned faster.</param>
    public Scene(bool tiles = false)
    {
        _tiles = tiles;
        Root = Directory.CreateTempSubdirectory("fuzz-").FullName;
        Fill();
    }

    public string Root { get; }

    public string Jobs => Path.Combine(Root, "jobs");

    public string Theme => Path.Combine(Root, "theme");

    public string Out => Path.Combine(Root, "out");

    public string Full(string path) => Path.Combine(Root, path);

    public byte[] Read(string path) => File.ReadAllBytes(Full(path));

    /// <summary>Writes a file until <see cref="Restore"/>.</summary>
    public void Put(string path, byte[] bytes)
    {
        var full = Full(path);
        _before.TryAdd(full, File.Exists(full) ? File.ReadAllBytes(full) : null);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
    }

    /// <summary>Puts the files back that were changed by <see cref="Put"/>.</summary>
    public void Restore()
    {
        foreach (var (path, bytes) in _before)
        {
            if (bytes is null) File.Delete(path);
            else File.WriteAllBytes(path, bytes);
        }
        _before.Clear();
    }

    /// <summary>Begins anew, after damage to folders.</summary>
    public void Renew()
    {
        Directory.Delete(Root, true);
        Directory.CreateDirectory(Root);
        Fill();
    }

    /// <summary>Every entry of the folder but those below the output folder, with its size or the target of a link.</summary>
    public string[] Outside() =>
    [
        .. new DirectoryInfo(Root).EnumerateFileSystemInfos("*", new EnumerationOptions
            {
                RecurseSubdirectories = true, AttributesToSkip = 0, ReturnSpecialDirectories = false, MaxRecursionDepth = 9,
            }).Where(e => e.FullName != Out && !e.FullName.StartsWith(Out + "/", StringComparison.Ordinal))
            .Select(e => $"{e.FullName} {(e as FileInfo)?.Length} {e.LastWriteTimeUtc.Ticks} {e.LinkTarget}").Order(StringComparer.Ordinal),
    ];

    public void Dispose() => Directory.Delete(Root, true);

    private void Fill()
    {
        var from = Path.Combine(DemoJobs.Checkout, "jobs");
        foreach (var path in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories)) Copy(path, Path.Combine(Jobs,
            Path.GetRelativePath(from, path)));
        Directory.CreateDirectory(Theme);
    }

    private void Copy(string from, string to)
    {
        if (!_tiles && from.Contains("/terrain/", StringComparison.Ordinal)) return;
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        if (_tiles || !to.EndsWith(".yaml", StringComparison.Ordinal)) File.Copy(from, to);
        else File.WriteAllText(to, Terrain().Replace(File.ReadAllText(from), ""));
    }

    // On a line of its own, or among other keys.
    [GeneratedRegex(@"^ +terrain: [\w-]+\n|, terrain: [\w-]+", RegexOptions.Multiline)]
    private static partial Regex Terrain();
}
