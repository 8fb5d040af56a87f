using System.IO.Compression;
using System.Security.Cryptography;
using InstallPacket.Calc.Checksums;

namespace InstallPacket.Terrain;

/// <summary>The one-degree tiles of a folder, by corner. A tile is opened when a path first crosses it.</summary>
internal sealed class HgtTiles : IDisposable
{
    private const long MostTileBytes = 2L * 3601 * 3601;
    private const string Datum = "EGM96 (as NASADEM and SRTM state)";
    private const string Sizes = "a tile has 2884802, 12970802 or 25934402 bytes (1201 x 1201, 3601 x 1801 or 3601 x 3601 heights)";

    private readonly ITileFiles _files;
    private readonly Action<string> _unfit;
    private readonly Dictionary<(int, int), List<string>> _paths = [];
    private readonly Dictionary<(int, int), HgtTile?> _open = [];
    private readonly List<Stream> _streams = [];
    private HgtTile? _last;

    /// <summary>Lists the tiles.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="paths">Paths of the folder in ordinal order.</param>
    /// <param name="unfit">Takes what is wrong with a tile.</param>
    public HgtTiles(ITileFiles files, IEnumerable<string> paths, Action<string> unfit)
    {
        (_files, _unfit) = (files, unfit);
        foreach (var path in paths.Where(IsTile))
        {
            if (Corner(path) is not { } corner) _unfit($"{path} names no corner of a tile; a name begins like N43W100: 90 S to 89 N, 180 W to 179 E");
            else if (_paths.TryGetValue(corner, out var same)) same.Add(path);
            else _paths[corner] = [path];
        }
    }

    /// <summary>How many one-degree squares have a tile.</summary>
    public int Count => _paths.Count;

    /// <summary>Whether a path is that of such a tile, plain or zipped.</summary>
    public static bool IsTile(string path) =>
        path.EndsWith(".hgt", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".hgt.zip", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether the square that begins at a corner has a file, sound or not.</summary>
    public bool Lists(int south, int west) => _paths.ContainsKey((south, west));

    /// <summary>The tile that holds a place, or null.</summary>
    public HgtTile? Covering(double latitudeDeg, double longitudeDeg)
    {
        var (south, west) = Square(latitudeDeg, longitudeDeg);
        if (_last is { } last && last.South == south && last.West == west) return last;
        if (Tile(south, west) is { } tile) return _last = tile;
        // On a degree line the neighbour holds the same nodes.
        if (latitudeDeg == south && Tile(south - 1, west) is { } below) return below;
        return longitudeDeg == west && Tile(south, west - 1) is { } left ? left : null;
    }

    /// <summary>South-west corner of the square of a place [deg].</summary>
    public static (int South, int West) Square(double latitudeDeg, double longitudeDeg) =>
        ((int)Math.Floor(Math.Min(latitudeDeg, 89.9999999)), (int)Math.Floor(longitudeDeg));

    /// <summary>Closes the tiles.</summary>
    public void Dispose() => _streams.ForEach(s => s.Dispose());

    private HgtTile? Tile(int south, int west)
    {
        if (_open.TryGetValue((south, west), out var tile)) return tile;
        if (!_paths.TryGetValue((south, west), out var paths)) return null;
        return _open[(south, west)] = paths.Select(p => Open(p, south, west)).FirstOrDefault(t => t is not null);
    }

    private HgtTile? Open(string path, int south, int west)
    {
        try
        {
            if (_files.Open(path) is not { } stream) return Refuse(path, "cannot be opened");
            _streams.Add(stream);
            var hash = Convert.ToHexStringLower(SHA256.HashData(stream));
            stream.Position = 0;
            if (path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) stream = Unpack(stream, (south, west));
            return HgtTile.Open(stream, south, west, spacing => new(path, hash, spacing, Datum))
                ?? Refuse(path, $"holds {stream.Length} bytes, which is the size of no tile");
        }
        catch (UnfitTileException e)
        {
            _unfit($"{path} {e.Message}");
            return null;
        }
        catch (InvalidDataException)
        {
            return Refuse(path, "is not a sound zip archive of one tile");
        }
    }

    // Bounded: an archive may claim any size, so no more is unpacked than the largest tile holds.
    private static MemoryStream Unpack(Stream stream, (int, int) corner)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Read);
        if (archive.Entries.Count != 1) throw new InvalidDataException();
        var packed = archive.Entries[0];
        if (TileName.Corner(packed.Name) is { } inside && inside != corner)
            throw new UnfitTileException($"holds the tile {TileName.Of(inside.LatitudeDeg, inside.LongitudeDeg)}",
                "an archive is named as the tile in it");
        using var entry = packed.Open();
        var bytes = new MemoryStream();
        var buffer = new byte[81920];
        for (int n; (n = entry.Read(buffer)) > 0 && bytes.Length <= MostTileBytes;) bytes.Write(buffer, 0, n);
        if (bytes.Length <= MostTileBytes
            && Crc32.Of(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)) != packed.Crc32) throw new InvalidDataException();
        return bytes;
    }

    private HgtTile? Refuse(string path, string found)
    {
        _unfit($"{path} {found}; {Sizes}");
        return null;
    }

    private static (int, int)? Corner(string path) => TileName.Corner(path[(path.LastIndexOf('/') + 1)..]);
}
