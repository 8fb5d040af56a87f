using System.IO.Compression;
using System.Security.Cryptography;

namespace InstallPacket.Jobs.Terrain;

/// <summary>A folder of tiles. A tile is opened when a path first crosses it; what is wrong with it is told once.</summary>
public sealed class TerrainTiles : ITerrain, IDisposable
{
    private const long MostTileBytes = 2L * 3601 * 3601;
    private const string Datum = "EGM96 (as NASADEM and SRTM state)";

    private readonly IJobFiles _files;
    private readonly Dictionary<(int, int), string> _paths = [];
    private readonly Dictionary<(int, int), HgtTile?> _open = [];
    private readonly SortedDictionary<string, TileUse> _used = new(StringComparer.Ordinal);
    private readonly List<Stream> _streams = [];
    private readonly SortedSet<string> _unfit = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _missing = new(StringComparer.Ordinal);

    /// <summary>Lists the tiles of a folder.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="folder">Folder below the jobs folder.</param>
    public TerrainTiles(IJobFiles files, string folder)
    {
        _files = files;
        foreach (var path in files.List(folder).Where(IsTile))
            if (TileName.Corner(path[(path.LastIndexOf('/') + 1)..]) is { } corner) _paths.TryAdd(corner, path);
    }

    /// <summary>How many tiles the folder holds.</summary>
    public int Count => _paths.Count;

    /// <inheritdoc/>
    public double SpacingArcSeconds => _open.Values.OfType<HgtTile>().Select(t => t.SpacingArcSeconds).DefaultIfEmpty(3).Min();

    /// <inheritdoc/>
    public IReadOnlyList<TileUse> Used => [.. _used.Values];

    /// <inheritdoc/>
    public IReadOnlyList<string> UnfitTiles => [.. _unfit];

    /// <inheritdoc/>
    public IReadOnlyList<string> MissingTiles => [.. _missing];

    /// <inheritdoc/>
    public GroundHeight At(double latitudeDeg, double longitudeDeg)
    {
        var longitude = longitudeDeg >= 180 ? longitudeDeg - 360 : longitudeDeg;
        var (south, west) = ((int)Math.Floor(Math.Min(latitudeDeg, 89.9999999)), (int)Math.Floor(longitude));
        if (Tile(south, west) is { } tile) return tile.At(latitudeDeg, longitude);
        // On a degree line the neighbour holds the same nodes.
        if (latitudeDeg == south && _paths.ContainsKey((south - 1, west)) && Tile(south - 1, west) is { } below) return below.At(latitudeDeg, longitude);
        if (longitude == west && _paths.ContainsKey((south, west - 1)) && Tile(south, west - 1) is { } left) return left.At(latitudeDeg, longitude);
        if (!_paths.ContainsKey((south, west))) _missing.Add(TileName.Of(south, west) + ".hgt");
        return new(0, HeightState.Missing);
    }

    /// <summary>Closes the tiles.</summary>
    public void Dispose() => _streams.ForEach(s => s.Dispose());

    private HgtTile? Tile(int south, int west)
    {
        if (_open.TryGetValue((south, west), out var tile)) return tile;
        return _open[(south, west)] = _paths.TryGetValue((south, west), out var path) ? Open(path, south, west) : null;
    }

    private HgtTile? Open(string path, int south, int west)
    {
        try
        {
            if (_files.Open(path) is not { } stream) return Refuse(path, "cannot be opened");
            _streams.Add(stream);
            var hash = Convert.ToHexStringLower(SHA256.HashData(stream));
            stream.Position = 0;
            if (path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) stream = Unpack(stream);
            if (HgtTile.Open(stream, south, west) is not { } tile)
                return Refuse(path, $"holds {stream.Length} bytes, which is the size of no tile");
            _used[path] = new(path, hash, tile.SpacingArcSeconds, Datum);
            return tile;
        }
        catch (InvalidDataException)
        {
            return Refuse(path, "is not a sound zip archive of one tile");
        }
    }

    // Bounded: an archive may claim any size, so no more is unpacked than the largest tile holds.
    private static MemoryStream Unpack(Stream stream)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
        if (archive.Entries.Count != 1) throw new InvalidDataException();
        using var entry = archive.Entries[0].Open();
        var bytes = new MemoryStream();
        var buffer = new byte[81920];
        for (int n; (n = entry.Read(buffer)) > 0 && bytes.Length <= MostTileBytes;) bytes.Write(buffer, 0, n);
        return bytes;
    }

    private HgtTile? Refuse(string path, string found)
    {
        _unfit.Add($"{path} {found}; a tile has 2884802, 12970802 or 25934402 bytes (1201 x 1201, 3601 x 1801 or 3601 x 3601 heights)");
        return null;
    }

    /// <summary>Whether a path names an elevation tile.</summary>
    public static bool IsTile(string path) =>
        path.EndsWith(".hgt", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".hgt.zip", StringComparison.OrdinalIgnoreCase);
}
