namespace InstallPacket.Terrain.Tests;

/// <summary>Tiles in memory, by path.</summary>
internal sealed class TileFiles : SortedDictionary<string, byte[]>, ITileFiles
{
    public TileFiles() : base(StringComparer.Ordinal)
    {
    }

    /// <summary>A folder with these tiles.</summary>
    public static TerrainTiles Folder(params (string Path, byte[] Bytes)[] tiles)
    {
        var files = new TileFiles();
        foreach (var (path, bytes) in tiles) files[path] = bytes;
        return new(files, "t");
    }

    public IReadOnlyList<string> List(string folder) => [.. Keys.Where(k => k.StartsWith(folder + "/", StringComparison.Ordinal))];

    public Stream? Open(string path) => TryGetValue(path, out var bytes) ? new MemoryStream(bytes, false) : null;
}
