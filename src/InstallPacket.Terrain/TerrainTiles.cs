using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain;

/// <summary>
/// A folder of tiles, one-degree tiles and GeoTIFF tiles beside each other. Where several hold a place, the finest is asked first, then the
/// first by path; the next one is asked where that has a void. What is wrong with a tile is told once.
/// </summary>
public sealed class TerrainTiles : ITerrain, IDisposable
{
    // No one-degree tile is finer than this: it need not be opened where a finer tile knows the height [arc-seconds].
    private const double FinestHgt = 1;

    private readonly HgtTiles _hgt;
    private readonly List<GeoTiffTile> _geoTiffs;
    private readonly SortedDictionary<string, TileUse> _used = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _unfit = new(StringComparer.Ordinal);
    private readonly HashSet<(int South, int West)> _missing = [];
    private IElevationTile? _lastCited;

    /// <summary>Lists the tiles of a folder; of GeoTIFF tiles the tags are read.</summary>
    /// <param name="files">The author's files.</param>
    /// <param name="folder">Folder below the jobs folder.</param>
    public TerrainTiles(ITileFiles files, string folder)
    {
        var paths = files.List(folder);
        var cache = new BlockCache();
        _hgt = new(files, paths, reason => _unfit.Add(reason));
        var geoTiffs = paths.Where(GeoTiffTile.IsTile).Select(p => ReadTags(p, () => files.Open(p), cache)).OfType<GeoTiffTile>();
        _geoTiffs = [.. geoTiffs.OrderBy(Rounded).ThenBy(t => t.Path, StringComparer.Ordinal)];
    }

    /// <summary>How many one-degree squares and GeoTIFF tiles the folder holds.</summary>
    public int Count => _hgt.Count + _geoTiffs.Count;

    /// <inheritdoc/>
    public double SpacingArcSeconds => _used.Values.Select(t => t.SpacingArcSeconds).DefaultIfEmpty(3).Min();

    /// <inheritdoc/>
    public IReadOnlyList<TileUse> Used => [.. _used.Values];

    /// <inheritdoc/>
    public IReadOnlyList<string> UnfitTiles =>
        [.. _unfit.Concat(_geoTiffs.Where(t => t.Fault is not null).Select(t => $"{t.Path} {t.Fault}")).Order(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public IReadOnlyList<string> MissingTiles =>
        [.. _missing.Select(c => TileName.Of(c.South, c.West) + ".hgt").Order(StringComparer.Ordinal)];

    /// <summary>Whether a path is that of an elevation tile.</summary>
    public static bool IsTile(string path) => HgtTiles.IsTile(path) || GeoTiffTile.IsTile(path);

    /// <inheritdoc/>
    public GroundHeight At(double latitudeDeg, double longitudeDeg)
    {
        var longitude = OnTurn(longitudeDeg);
        // Most folders hold one-degree tiles alone, and a skyline asks a hundred thousand times.
        if (_geoTiffs.Count == 0 && _hgt.Covering(latitudeDeg, longitude) is { } only && Cited(only)) return only.At(latitudeDeg, longitude, Beyond);
        GroundHeight best = new(0, HeightState.Missing);
        foreach (var tile in Covering(latitudeDeg, longitude))
        {
            var ground = tile.At(latitudeDeg, longitude, Beyond);
            if (ground.State < best.State) best = ground;
            if (best.State == HeightState.Known) break;
        }
        var (south, west) = HgtTiles.Square(latitudeDeg, longitude);
        if (best.State == HeightState.Missing && !_hgt.Lists(south, west)) _missing.Add((south, west));
        return best;
    }

    /// <summary>Closes the tiles.</summary>
    public void Dispose()
    {
        _hgt.Dispose();
        _geoTiffs.ForEach(t => t.Dispose());
    }

    private GeoTiffTile? ReadTags(string path, Func<Stream?> open, BlockCache cache)
    {
        try
        {
            return GeoTiffTile.Read(path, open, cache);
        }
        catch (UnfitTileException e)
        {
            _unfit.Add($"{path} {e.Message}");
        }
        catch (IOException)
        {
            _unfit.Add($"{path} cannot be read; fetch it again");
        }
        return null;
    }

    // A node beyond the edge of a tile is the node of its neighbour there.
    private double? Beyond(double latitudeDeg, double longitudeDeg)
    {
        var (latitude, longitude) = (OnDegree(latitudeDeg), OnTurn(OnDegree(longitudeDeg)));
        foreach (var tile in Covering(latitude, longitude))
            if (tile.Among(latitude, longitude) is { } ground) return ground.State == HeightState.Known ? ground.HeightM : null;
        return null;
    }

    // The tiles that hold a place, in the order in which they are asked. One that is asked is cited.
    private IEnumerable<IElevationTile> Covering(double latitudeDeg, double longitudeDeg) =>
        InOrder(latitudeDeg, longitudeDeg).Where(Cited);

    private IEnumerable<IElevationTile> InOrder(double latitudeDeg, double longitudeDeg)
    {
        var asked = false;
        HgtTile? hgt = null;
        foreach (var tile in _geoTiffs)
        {
            if (!tile.Covers(latitudeDeg, longitudeDeg)) continue;
            if (!asked && Rounded(tile) >= FinestHgt) (hgt, asked) = (_hgt.Covering(latitudeDeg, longitudeDeg), true);
            if (hgt is not null && Before(hgt, tile))
            {
                yield return hgt;
                hgt = null;
            }
            yield return tile;
        }
        if (!asked) hgt = _hgt.Covering(latitudeDeg, longitudeDeg);
        if (hgt is not null) yield return hgt;
    }

    private bool Cited(IElevationTile tile)
    {
        if (tile == _lastCited || _used.ContainsKey(tile.Path)) return true;
        if (tile.Use is not { } use) return false;
        (_used[tile.Path], _lastCited) = (use, tile);
        return true;
    }

    private static bool Before(HgtTile a, GeoTiffTile b) =>
        Rounded(a) != Rounded(b) ? Rounded(a) < Rounded(b) : string.CompareOrdinal(a.Path, b.Path) < 0;

    // Tags round their steps.
    private static double Rounded(IElevationTile tile) => Math.Round(tile.SpacingArcSeconds, 6);

    private static double OnTurn(double longitudeDeg) => longitudeDeg >= 180 ? longitudeDeg - 360 : longitudeDeg < -180 ? longitudeDeg
        + 360 : longitudeDeg;

    // A tenth of a millimetre: a node that is computed from rounded steps still meets the degree line.
    private static double OnDegree(double deg) => Math.Abs(deg - Math.Round(deg)) < 1e-9 ? Math.Round(deg) : deg;
}
