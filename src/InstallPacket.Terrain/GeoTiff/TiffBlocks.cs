using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>
/// The heights of an open file by blocks: a tile or strip, or, where it is stored plainly, a band of rows of one, so that a strip of any
/// size
/// costs little. A height that is not known is NaN.
/// </summary>
/// <param name="tags">The directory of the open file.</param>
/// <param name="header">What its tags say.</param>
internal sealed class TiffBlocks(TiffDirectory tags, GeoTiffHeader header)
{
    private const int BandBytes = 256 * 1024;

    // Deeper than any sea and higher than any summit: a void that the writer did not declare, or damage.
    private const float Lowest = -12_000, Highest = 9_000;

    private readonly TiffLayout _layout = header.Layout;
    private readonly int _bandRows = header.Layout.Plain
        ? Math.Clamp(BandBytes / (header.Layout.BlockColumns * header.Layout.SampleBytes), 1, header.Layout.BlockRows)
        : header.Layout.BlockRows;
    private readonly SortedSet<int> _damaged = [];

    private int Bands => (_layout.BlockRows + _bandRows - 1) / _bandRows;

    /// <summary>Tiles or strips that could not be unpacked so far.</summary>
    public IReadOnlyCollection<int> Damaged => _damaged;

    /// <summary>Where a sample lies: the number of its block, and its place in it.</summary>
    public (int Block, int At) Find(int row, int column)
    {
        var (block, inBlock) = (row / _layout.BlockRows * _layout.Across + column / _layout.BlockColumns, row % _layout.BlockRows);
        return (block * Bands + inBlock / _bandRows, inBlock % _bandRows * _layout.BlockColumns + column % _layout.BlockColumns);
    }

    /// <summary>Reads a block.</summary>
    public float[] Read(int index)
    {
        var (block, band) = (index / Bands, index % Bands);
        var first = band * _bandRows;
        // A tile is whole also where it sticks out of the image; the last strip ends with it.
        var rowsOfBlock = _layout.Tiled ? _layout.BlockRows : Math.Min(_layout.BlockRows, _layout.Rows - block * _layout.BlockRows);
        var rows = Math.Min(_bandRows, rowsOfBlock - first);
        var heights = new float[rows * _layout.BlockColumns];
        if (Fill(heights, block, first, rows)) return heights;
        _damaged.Add(block);
        Array.Fill(heights, float.NaN);
        return heights;
    }

    private bool Fill(float[] heights, int block, int firstRow, int rows)
    {
        try
        {
            var (at, size) = header.Blocks.Entry(tags, block);
            if (at == 0 && size == 0) Array.Fill(heights, float.NaN);
            else if (_layout.Plain) FromFile(tags.Bytes.Read(at + (ulong)((long)firstRow * _layout.BlockColumns * _layout.SampleBytes),
                heights.Length * _layout.SampleBytes), heights);
            else if (TiffDecoder.Unpack(tags.Bytes.Read(at, (int)size), _layout, rows) is { } samples) FromMachine(samples, heights);
            else return false;
            return true;
        }
        catch (Exception e) when (e is IOException or UnfitTileException)
        {
            return false; // a disk that fails, or a file that shrank since it was opened
        }
    }

    private void FromFile(byte[] bytes, float[] heights)
    {
        for (var i = 0; i < heights.Length; i++)
        {
            var sample = bytes.AsSpan(i * _layout.SampleBytes);
            heights[i] = Height((_layout.IsFloat, _layout.BigEndian) switch
            {
                (false, false) => BinaryPrimitives.ReadInt16LittleEndian(sample),
                (false, true) => BinaryPrimitives.ReadInt16BigEndian(sample),
                (true, false) => BinaryPrimitives.ReadSingleLittleEndian(sample),
                (true, true) => BinaryPrimitives.ReadSingleBigEndian(sample),
            });
        }
    }

    private void FromMachine(byte[] bytes, float[] heights)
    {
        for (var i = 0; i < heights.Length; i++)
            heights[i] = Height(_layout.IsFloat ? MemoryMarshal.Cast<byte, float>(bytes)[i] : MemoryMarshal.Cast<byte, short>(bytes)[i]);
    }

    private float Height(float sample) => sample == header.NoData || !(sample >= Lowest && sample <= Highest) ? float.NaN : sample;
}
