using System.Text;

namespace InstallPacket.Terrain.Tests;

/// <summary>A TIFF file built byte by byte, so that a test can write what no library would: header, directory, values, blocks.</summary>
/// <param name="big">BigTIFF.</param>
/// <param name="bigEndian">Most significant byte first.</param>
internal sealed class TiffFile(bool big = false, bool bigEndian = false)
{
    public const int Ascii = 2, Short = 3, Long = 4, Double = 12, Long8 = 16;

    private readonly SortedDictionary<int, (int Type, ulong Count, byte[] Bytes)> _tags = [];

    /// <summary>Places and sizes go to these tags.</summary>
    public (int Offsets, int Counts) Table { get; set; } = (273, 279);

    /// <summary>The blocks; null for one that is left out.</summary>
    public List<byte[]?> Blocks { get; } = [];

    /// <summary>Where the file says that the next directory lies.</summary>
    public uint Next { get; set; }

    public TiffFile Set(int tag, int type, params double[] values) => Raw(tag, type, (ulong)values.Length, [.. values.SelectMany(v => Bytes(type, v))]);

    public TiffFile Text(int tag, string text) => Raw(tag, Ascii, (ulong)text.Length + 1, [.. Encoding.UTF8.GetBytes(text), 0]);

    /// <summary>Writes a tag as it is told, sound or not.</summary>
    public TiffFile Raw(int tag, int type, ulong count, byte[] bytes)
    {
        _tags[tag] = (type, count, bytes);
        return this;
    }

    public TiffFile Without(params int[] tags)
    {
        foreach (var tag in tags) _tags.Remove(tag);
        return this;
    }

    public byte[] ToBytes()
    {
        var type = big ? Long8 : Long;
        // Places are known once the sizes of all values are: the table is written twice.
        Place(type, 0);
        Place(type, Body().Length);
        var body = Body().ToList();
        foreach (var block in Blocks) body.AddRange(block ?? []);
        return [.. body];
    }

    private void Place(int type, long start)
    {
        if (Blocks.Count == 0) return;
        var (places, sizes, at) = (new List<double>(), new List<double>(), start);
        foreach (var block in Blocks)
        {
            places.Add(block is null ? 0 : at);
            sizes.Add(block?.Length ?? 0);
            at += block?.Length ?? 0;
        }
        Set(Table.Offsets, type, [.. places]);
        Set(Table.Counts, type, [.. sizes]);
    }

    private byte[] Body()
    {
        var (head, row, field) = big ? (16, 20, 8) : (8, 12, 4);
        var start = head + (big ? 8 : 2) + row * _tags.Count + field;
        List<byte> bytes = [.. Encoding.ASCII.GetBytes(bigEndian ? "MM" : "II"), .. Bytes(Short, big ? 43 : 42)];
        if (big) bytes.AddRange([.. Bytes(Short, 8), .. Bytes(Short, 0)]);
        bytes.AddRange([.. Bytes(big ? Long8 : Long, head), .. Bytes(big ? Long8 : Short, _tags.Count)]);
        List<byte> values = [];
        foreach (var (tag, (type, count, data)) in _tags)
        {
            bytes.AddRange([.. Bytes(Short, tag), .. Bytes(Short, type), .. Bytes(big ? Long8 : Long, count)]);
            if (data.Length <= field) bytes.AddRange([.. data, .. new byte[field - data.Length]]);
            else
            {
                bytes.AddRange(Bytes(big ? Long8 : Long, start + values.Count));
                values.AddRange(data);
            }
        }
        bytes.AddRange(Bytes(big ? Long8 : Long, Next));
        return [.. bytes, .. values];
    }

    private byte[] Bytes(int type, double value)
    {
        byte[] bytes = type switch
        {
            Short => BitConverter.GetBytes((ushort)value),
            Long => BitConverter.GetBytes((uint)value),
            Long8 => BitConverter.GetBytes((ulong)value),
            Double => BitConverter.GetBytes(BitConverter.DoubleToInt64Bits(value)),
            _ => [(byte)value],
        };
        if (bigEndian == BitConverter.IsLittleEndian) Array.Reverse(bytes);
        return bytes;
    }
}
