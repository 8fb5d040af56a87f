using System.Security.Cryptography;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>
/// A GeoTIFF tile of heights. Its tags are read when the folder is listed; the file is opened again, and hashed, when a place in it is
/// first
/// asked for, so that a folder of many tiles holds few files open.
/// </summary>
internal sealed class GeoTiffTile : IElevationTile, IDisposable
{
    private readonly Func<Stream?> _open;
    private readonly BlockCache _cache;
    private readonly Lazy<TileUse?> _use;
    private Stream? _stream;
    private TiffBlocks? _blocks;
    private string? _fault;

    private GeoTiffTile(string path, GeoTiffHeader header, Func<Stream?> open, BlockCache cache)
    {
        (Path, Header, _open, _cache) = (path, header, open, cache);
        _use = new(Open);
    }

    public string Path { get; }

    public GeoTiffHeader Header { get; }

    public double SpacingArcSeconds => Header.Frame.RowStepDeg * 3600;

    public TileUse? Use => _use.Value;

    /// <summary>What turned out to be wrong with it while its heights were read, or null.</summary>
    public string? Fault => _blocks?.Damaged is { Count: > 0 } damaged
        ? $"has {damaged.Count} damaged {Header.Layout.Block}{(damaged.Count > 1 ? "s" : "")} where heights were asked for, number {damaged.First()} first; their heights are unknown and the others are used"
        : _fault;

    /// <summary>Whether a path is that of such a tile.</summary>
    public static bool IsTile(string path) =>
        path.EndsWith(".tif", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".tiff", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads the tags of a tile.</summary>
    /// <param name="path">Path below the jobs folder.</param>
    /// <param name="open">Opens the file, seekable; null when it cannot be opened.</param>
    /// <param name="cache">Holds the blocks of the folder.</param>
    /// <exception cref="UnfitTileException">It cannot be used.</exception>
    public static GeoTiffTile Read(string path, Func<Stream?> open, BlockCache cache)
    {
        using var stream = open() ?? throw new UnfitTileException("cannot be opened", "a file in the jobs folder is read");
        return new(path, GeoTiffHeader.Read(TiffDirectory.Read(stream)), open, cache);
    }

    /// <summary>Whether a place lies in one of its cells.</summary>
    public bool Covers(double latitudeDeg, double longitudeDeg) => Header.Frame.Covers(latitudeDeg, longitudeDeg);

    /// <inheritdoc/>
    public GroundHeight At(double latitudeDeg, double longitudeDeg, NodeBeyond beyond)
    {
        var (y, x) = Header.Frame.Place(latitudeDeg, longitudeDeg);
        return Blend(y, x, beyond);
    }

    /// <inheritdoc/>
    public GroundHeight? Among(double latitudeDeg, double longitudeDeg) =>
        Header.Frame.Among(latitudeDeg, longitudeDeg) is { } place ? Blend(place.Row, place.Column, (_, _) => null) : null;

    /// <summary>Closes the file.</summary>
    public void Dispose() => _stream?.Dispose();

    private GroundHeight Blend(double y, double x, NodeBeyond beyond)
    {
        var (row, column) = ((int)Math.Floor(y), (int)Math.Floor(x));
        var (fy, fx) = (y - row, x - column);
        NodeBlend blend = default;
        Add(row, column, (1 - fy) * (1 - fx));
        Add(row, column + 1, (1 - fy) * fx);
        Add(row + 1, column, fy * (1 - fx));
        Add(row + 1, column + 1, fy * fx);
        return blend.Height;

        void Add(int nodeRow, int nodeColumn, double share)
        {
            if (share > 0) blend.Add(Node(nodeRow, nodeColumn, beyond), share);
        }
    }

    private double? Node(int row, int column, NodeBeyond beyond)
    {
        var frame = Header.Frame;
        if (row < 0 || row >= frame.Rows || column < 0 || column >= frame.Columns)
        {
            var (latitude, longitude) = frame.Node(row, column);
            return beyond(latitude, longitude);
        }
        var (block, at) = _blocks!.Find(row, column);
        var height = _cache.Get(this, block, _blocks.Read)[at];
        return float.IsNaN(height) ? null : height;
    }

    private TileUse? Open()
    {
        try
        {
            if ((_stream = _open()) is null) return Unfit("cannot be opened again; a file in the jobs folder is read");
            var hash = Convert.ToHexStringLower(SHA256.HashData(_stream));
            var tags = TiffDirectory.Read(_stream);
            if (GeoTiffHeader.Read(tags) != Header) return Unfit("changed while it was read; build again");
            _blocks = new(tags, Header);
            return new(Path, hash, SpacingArcSeconds, Header.Datum);
        }
        catch (Exception e) when (e is IOException or UnfitTileException)
        {
            return Unfit("changed while it was read; build again");
        }
    }

    private TileUse? Unfit(string fault)
    {
        _fault = fault;
        return null;
    }
}
