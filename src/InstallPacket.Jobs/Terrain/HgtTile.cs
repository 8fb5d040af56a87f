using System.Buffers.Binary;

namespace InstallPacket.Jobs.Terrain;

/// <summary>
/// A one-degree tile of 16-bit heights, most significant byte first, rows from north to south, nodes on the degree lines.
/// Rows are read in blocks as a path crosses them, so that memory stays small whatever the tile.
/// </summary>
internal sealed class HgtTile
{
    private const short Void = -32768;
    private const int BlockRows = 32;
    private const int MostBlocks = 48;

    private readonly Stream _stream;
    private readonly Dictionary<int, short[]> _blocks = [];
    private readonly Queue<int> _order = new();

    private HgtTile(Stream stream, int rows, int columns, int south, int west) =>
        (_stream, Rows, Columns, South, West) = (stream, rows, columns, south, west);

    public int Rows { get; }

    public int Columns { get; }

    public int South { get; }

    public int West { get; }

    public double SpacingArcSeconds => 3600.0 / (Rows - 1);

    /// <summary>Opens a tile; null when its size is that of no tile.</summary>
    /// <param name="stream">The file, seekable.</param>
    /// <param name="south">Latitude of its south edge [deg].</param>
    /// <param name="west">Longitude of its west edge [deg].</param>
    public static HgtTile? Open(Stream stream, int south, int west) => stream.Length switch
    {
        2L * 1201 * 1201 => new(stream, 1201, 1201, south, west),
        2L * 3601 * 3601 => new(stream, 3601, 3601, south, west),
        2L * 3601 * 1801 => new(stream, 3601, 1801, south, west),
        _ => null,
    };

    /// <summary>The height between four nodes, weighted by nearness; void nodes leave their weight to the others.</summary>
    public GroundHeight At(double latitudeDeg, double longitudeDeg)
    {
        var y = Math.Clamp((South + 1 - latitudeDeg) * (Rows - 1), 0, Rows - 1);
        var x = Math.Clamp((longitudeDeg - West) * (Columns - 1), 0, Columns - 1);
        var row = Math.Min((int)y, Rows - 2);
        var column = Math.Min((int)x, Columns - 2);
        var (fy, fx) = (y - row, x - column);
        double sum = 0, weight = 0;
        var voids = 0;
        Add(Node(row, column), (1 - fy) * (1 - fx));
        Add(Node(row, column + 1), (1 - fy) * fx);
        Add(Node(row + 1, column), fy * (1 - fx));
        Add(Node(row + 1, column + 1), fy * fx);
        return weight <= 0 ? new(0, HeightState.Void) : new(sum / weight, voids > 0 ? HeightState.Partial : HeightState.Known);

        void Add(short node, double share)
        {
            if (share <= 0) return;
            if (node == Void) { voids++; return; }
            sum += node * share;
            weight += share;
        }
    }

    private short Node(int row, int column) => Block(row / BlockRows)[(row % BlockRows * Columns) + column];

    private short[] Block(int index)
    {
        if (_blocks.TryGetValue(index, out var block)) return block;
        if (_blocks.Count >= MostBlocks) _blocks.Remove(_order.Dequeue());
        _blocks[index] = block = ReadBlock(index);
        _order.Enqueue(index);
        return block;
    }

    private short[] ReadBlock(int index)
    {
        var rows = Math.Min(BlockRows, Rows - index * BlockRows);
        var bytes = new byte[rows * Columns * 2];
        _stream.Position = (long)index * BlockRows * Columns * 2;
        _stream.ReadExactly(bytes);
        var block = new short[rows * Columns];
        for (var i = 0; i < block.Length; i++) block[i] = BinaryPrimitives.ReadInt16BigEndian(bytes.AsSpan(i * 2));
        return block;
    }
}
