namespace InstallPacket.Terrain.Tests;

/// <summary>A stripped file of 520 MB that nobody stores: header and directory in memory, samples made when they are read. It counts what is read.</summary>
internal sealed class LargeFile : Stream
{
    public const int Rows = 16_250, Columns = 16_000;
    public const double Step = 1 / 16_000.0;

    private readonly byte[] _head;
    private long _position;

    public LargeFile(int rowsPerStrip)
    {
        var strips = (Rows + rowsPerStrip - 1) / rowsPerStrip;
        var start = Head(rowsPerStrip, strips, 0).Length;
        _head = Head(rowsPerStrip, strips, start);
        Length = start + 2L * Rows * Columns;
    }

    public long BytesRead { get; private set; }

    public long HeadBytes => _head.Length;

    public override long Length { get; }

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => false;

    public override long Position
    {
        get => _position;
        set => _position = value;
    }

    /// <summary>The sample at a row and a column.</summary>
    public static short Sample(long row, long column) => (short)((row * 3 + column * 2) % 8000);

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var count = (int)Math.Min(buffer.Length, Length - _position);
        for (var i = 0; i < count; i++, _position++) buffer[i] = At(_position);
        BytesRead += count;
        return count;
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override void Flush()
    {
    }

    private byte At(long position)
    {
        if (position < _head.Length) return _head[position];
        var sample = Sample((position - _head.Length) / 2 / Columns, (position - _head.Length) / 2 % Columns);
        return (byte)((position - _head.Length) % 2 == 0 ? sample : sample >> 8);
    }

    private static byte[] Head(int rowsPerStrip, int strips, long start)
    {
        var file = new HeightTile { Rows = 2, Columns = 2, Step = Step, Point = true }.File().Set(256, TiffFile.Long, Columns).Set(257, TiffFile.Long, Rows).Set(278, TiffFile.Long, rowsPerStrip);
        file.Blocks.Clear();
        file.Set(273, TiffFile.Long, [.. Enumerable.Range(0, strips).Select(i => (double)(start + 2L * i * rowsPerStrip * Columns))]);
        file.Set(279, TiffFile.Long, [.. Enumerable.Range(0, strips).Select(i => 2.0 * Math.Min(rowsPerStrip, Rows - i * rowsPerStrip) * Columns)]);
        return file.ToBytes();
    }
}
