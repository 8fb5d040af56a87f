using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace InstallPacket.Terrain;

/// <summary>
/// A one-degree tile of 16-bit heights, most significant byte first, rows from north to south, nodes on the degree lines.
/// Rows are read in blocks as a path crosses them, so that memory stays small whatever the tile.
/// </summary>
internal sealed class HgtTile : IElevationTile
{
    private const short Void = -32768;
    private const int BlockRows = 32;
    private const int MostBlocks = 48;

    private readonly Stream _stream;
    private readonly short[]?[] _blocks;
    private readonly Queue<int> _order = new();

    private HgtTile(Stream stream, int rows, int columns, int south, int west, Func<double, TileUse> use)
    {
        (_stream, Rows, Columns, South, West) = (stream, rows, columns, south, west);
        _blocks = new short[]?[rows / BlockRows + 1];
        Use = use(SpacingArcSeconds);
    }

    public string Path => Use.Path;

    public TileUse Use { get; }

    TileUse? IElevationTile.Use => Use;

    public int Rows { get; }

    public int Columns { get; }

    public int South { get; }

    public int West { get; }

    public double SpacingArcSeconds => 3600.0 / (Rows - 1);

    /// <summary>Opens a tile; null when its size is that of no tile.</summary>
    /// <param name="stream">The file, seekable.</param>
    /// <param name="south">Latitude of its south edge [deg].</param>
    /// <param name="west">Longitude of its west edge [deg].</param>
    /// <param name="use">Cites it, given the spacing of its rows [arc-seconds].</param>
    public static HgtTile? Open(Stream stream, int south, int west, Func<double, TileUse> use) => stream.Length switch
    {
        2L * 1201 * 1201 => new(stream, 1201, 1201, south, west, use),
        2L * 3601 * 3601 => new(stream, 3601, 3601, south, west, use),
        2L * 3601 * 1801 => new(stream, 3601, 1801, south, west, use),
        _ => null,
    };

    /// <inheritdoc/>
    /// <remarks>Its outer nodes lie on its edges, so no neighbour is asked.</remarks>
    public GroundHeight At(double latitudeDeg, double longitudeDeg, NodeBeyond beyond) => At(latitudeDeg, longitudeDeg);

    /// <inheritdoc/>
    public GroundHeight? Among(double latitudeDeg, double longitudeDeg) =>
        latitudeDeg >= South && latitudeDeg <= South + 1 && longitudeDeg >= West && longitudeDeg <= West + 1
            ? At(latitudeDeg, longitudeDeg) : null;

    private GroundHeight At(double latitudeDeg, double longitudeDeg)
    {
        var y = Math.Clamp((South + 1 - latitudeDeg) * (Rows - 1), 0, Rows - 1);
        var x = Math.Clamp((longitudeDeg - West) * (Columns - 1), 0, Columns - 1);
        var row = Math.Min((int)y, Rows - 2);
        var column = Math.Min((int)x, Columns - 2);
        var (fy, fx) = (y - row, x - column);
        NodeBlend blend = default;
        blend.Add(Node(row, column), (1 - fy) * (1 - fx));
        blend.Add(Node(row, column + 1), (1 - fy) * fx);
        blend.Add(Node(row + 1, column), fy * (1 - fx));
        blend.Add(Node(row + 1, column + 1), fy * fx);
        return blend.Height;
    }

    private double? Node(int row, int column) => Block(row / BlockRows)[(row % BlockRows * Columns) + column] is not Void and var height
        ? height : null;

    private short[] Block(int index)
    {
        if (_blocks[index] is { } block) return block;
        if (_order.Count >= MostBlocks) _blocks[_order.Dequeue()] = null;
        _order.Enqueue(index);
        return _blocks[index] = ReadBlock(index);
    }

    private short[] ReadBlock(int index)
    {
        var rows = Math.Min(BlockRows, Rows - index * BlockRows);
        var bytes = new byte[rows * Columns * 2];
        _stream.Position = (long)index * BlockRows * Columns * 2;
        _stream.ReadExactly(bytes);
        var block = new short[rows * Columns];
        var raw = MemoryMarshal.Cast<byte, short>(bytes);
        if (BitConverter.IsLittleEndian) BinaryPrimitives.ReverseEndianness(raw, block);
        else raw.CopyTo(block);
        return block;
    }
}
