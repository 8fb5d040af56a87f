using System.Buffers.Binary;
using BitMiracle.LibTiff.Classic;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>
/// Unpacks one tile or strip. The library sees a file of one strip that is written here, around the packed bytes, so that no directory of a
/// stranger reaches it.
/// </summary>
internal static class TiffDecoder
{
    private const ushort Short = 3, Long = 4;

    static TiffDecoder() => Tiff.SetErrorHandler(new Silent());

    /// <summary>The samples as bytes in the order of this machine; null when the packed bytes are damaged.</summary>
    /// <param name="packed">The block as it is stored.</param>
    /// <param name="layout">How it is stored.</param>
    /// <param name="rows">Rows that it holds.</param>
    public static byte[]? Unpack(byte[] packed, TiffLayout layout, int rows)
    {
        using var file = new MemoryStream(Wrap(packed, layout, rows), false);
        var samples = new byte[rows * layout.BlockColumns * layout.SampleBytes];
        try
        {
            using var tiff = Tiff.ClientOpen("block", "r", file, new TiffStream());
            return tiff is not null && tiff.ReadEncodedStrip(0, samples, 0, samples.Length) == samples.Length ? samples : null;
        }
        catch (Exception e) when (e is IndexOutOfRangeException or ArgumentException or InvalidDataException)
        {
            return null; // a slip of the library on damaged data must not end the run
        }
    }

    private static byte[] Wrap(byte[] packed, TiffLayout layout, int rows)
    {
        (TiffTag Tag, ushort Type, int Value)[] tags =
        [
            (TiffTag.ImageWidth, Long, layout.BlockColumns),
            (TiffTag.ImageLength, Long, rows),
            (TiffTag.BitsPerSample, Short, 8 * layout.SampleBytes),
            (TiffTag.Compression, Short, layout.Compression),
            (TiffTag.PhotometricInterpretation, Short, 1),
            (TiffTag.StripOffsets, Long, 0),
            (TiffTag.SamplesPerPixel, Short, 1),
            (TiffTag.RowsPerStrip, Long, rows),
            (TiffTag.StripByteCounts, Long, packed.Length),
            (TiffTag.Predictor, Short, layout.Predictor),
            (TiffTag.SampleFormat, Short, layout.IsFloat ? 3 : 2),
        ];
        var start = 8 + 2 + 12 * tags.Length + 4;
        var bytes = new byte[start + packed.Length];
        var write = new Writer(bytes, layout.BigEndian);
        bytes.AsSpan(0, 2).Fill((byte)(layout.BigEndian ? 'M' : 'I'));
        write.Short(2, 42);
        write.Long(4, 8);
        write.Short(8, tags.Length);
        for (var (i, at) = (0, 10); i < tags.Length; i++, at += 12)
        {
            var (tag, type, value) = tags[i];
            write.Short(at, (int)tag);
            write.Short(at + 2, type);
            write.Long(at + 4, 1);
            if (type == Short) write.Short(at + 8, value);
            else write.Long(at + 8, tag == TiffTag.StripOffsets ? start : value);
        }
        packed.CopyTo(bytes, start);
        return bytes;
    }

    private readonly struct Writer(byte[] bytes, bool bigEndian)
    {
        public void Short(int at, int value)
        {
            if (bigEndian) BinaryPrimitives.WriteUInt16BigEndian(bytes.AsSpan(at), (ushort)value);
            else BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), (ushort)value);
        }

        public void Long(int at, int value)
        {
            if (bigEndian) BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at), value);
            else BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(at), value);
        }
    }

    // By default the library writes to the console.
    private sealed class Silent : TiffErrorHandler
    {
        public override void ErrorHandler(Tiff tif, string method, string format, params object[] args)
        {
        }

        public override void ErrorHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
        {
        }

        public override void WarningHandler(Tiff tif, string method, string format, params object[] args)
        {
        }

        public override void WarningHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
        {
        }
    }
}
