using System.Buffers.Binary;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>The bytes of a TIFF file in its own byte order. Nothing is read beyond the end, whatever the file states.</summary>
/// <param name="stream">The file, seekable.</param>
/// <param name="bigEndian">Whether the most significant byte comes first.</param>
internal sealed class TiffBytes(Stream stream, bool bigEndian)
{
    public bool BigEndian => bigEndian;

    /// <summary>Size of the file [bytes].</summary>
    public long Length { get; } = stream.Length;

    /// <summary>Whether so many bytes lie there.</summary>
    public bool Holds(ulong at, ulong count) => at <= (ulong)Length && count <= (ulong)Length - at;

    /// <summary>Reads bytes; refuses the file when they are not all there. The caller bounds the count.</summary>
    public byte[] Read(ulong at, int count)
    {
        if (!Holds(at, (ulong)count)) throw CutShort(at, (ulong)count);
        var bytes = new byte[count];
        stream.Position = (long)at;
        stream.ReadExactly(bytes);
        return bytes;
    }

    public ushort UInt16(ReadOnlySpan<byte> bytes) => bigEndian ? BinaryPrimitives.ReadUInt16BigEndian(bytes)
        : BinaryPrimitives.ReadUInt16LittleEndian(bytes);

    public uint UInt32(ReadOnlySpan<byte> bytes) => bigEndian ? BinaryPrimitives.ReadUInt32BigEndian(bytes)
        : BinaryPrimitives.ReadUInt32LittleEndian(bytes);

    public ulong UInt64(ReadOnlySpan<byte> bytes) => bigEndian ? BinaryPrimitives.ReadUInt64BigEndian(bytes)
        : BinaryPrimitives.ReadUInt64LittleEndian(bytes);

    public double Double(ReadOnlySpan<byte> bytes) => BitConverter.UInt64BitsToDouble(UInt64(bytes));

    /// <summary>An unsigned whole number of 2, 4 or 8 bytes.</summary>
    public ulong Whole(ReadOnlySpan<byte> bytes) => bytes.Length switch { 2 => UInt16(bytes), 4 => UInt32(bytes), _ => UInt64(bytes) };

    private UnfitTileException CutShort(ulong at, ulong count) =>
        new($"is cut short: it states {count} bytes at byte {at} and holds {Length} bytes", "fetch it again");
}
