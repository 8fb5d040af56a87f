using System.IO.Compression;
using BitMiracle.LibTiff.Classic;

namespace InstallPacket.Terrain.Tests;

/// <summary>
/// Packs a block of samples. Order of bytes and predictors are written here from TIFF 6.0 and its technical note 3, and deflate is the
/// platform's, so that the library that unpacks is checked by something else than itself; of LZW only the bytes are packed by it.
/// </summary>
internal static class PackedBlock
{
    /// <summary>The bytes of a block as they are stored.</summary>
    /// <param name="samples">Rows of samples.</param>
    public static byte[] Of(float[][] samples, bool isFloat, int compression, int predictor, bool bigEndian)
    {
        byte[] bytes = [.. samples.SelectMany(row => predictor switch
        {
            2 => Whole(Differences(row), bigEndian),
            3 => ByteDifferences(Planes(row)),
            _ => isFloat ? Floats(row, bigEndian) : Whole([.. row.Select(s => (ushort)(short)s)], bigEndian),
        })];
        return compression switch { 1 => bytes, 5 => Lzw(bytes), _ => Deflate(bytes) };
    }

    /// <summary>Samples in the order of this machine, as the library takes them.</summary>
    public static byte[] Machine(float[][] samples, bool isFloat) =>
        [.. samples.SelectMany(row => row.SelectMany(s => isFloat ? BitConverter.GetBytes(s) : BitConverter.GetBytes((short)s)))];

    private static ushort[] Differences(float[] row) => [.. row.Select((s, i) => (ushort)((short)s - (i == 0 ? 0 : (short)row[i - 1])))];

    private static byte[] Whole(ushort[] row, bool bigEndian) =>
        [.. row.SelectMany(s => bigEndian ? new[] { (byte)(s >> 8), (byte)s } : [(byte)s, (byte)(s >> 8)])];

    private static byte[] Floats(float[] row, bool bigEndian) => [.. row.SelectMany(s => Most(s, bigEndian))];

    // All first bytes of a row, then all second ones, most significant first.
    private static byte[] Planes(float[] row) => [.. Enumerable.Range(0, 4).SelectMany(plane => row.Select(s => Most(s, true)[plane]))];

    private static byte[] ByteDifferences(byte[] row) => [.. row.Select((b, i) => (byte)(b - (i == 0 ? 0 : row[i - 1])))];

    private static byte[] Most(float sample, bool first)
    {
        var bits = BitConverter.SingleToUInt32Bits(sample);
        byte[] bytes = [(byte)(bits >> 24), (byte)(bits >> 16), (byte)(bits >> 8), (byte)bits];
        return first ? bytes : [.. bytes.Reverse()];
    }

    private static byte[] Deflate(byte[] bytes)
    {
        var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Optimal)) zip.Write(bytes);
        return packed.ToArray();
    }

    private static byte[] Lzw(byte[] bytes)
    {
        var file = new MemoryStream();
        using (var writer = Tiff.ClientOpen("block", "wl", file, new TiffStream()))
        {
            writer.SetField(TiffTag.IMAGEWIDTH, bytes.Length);
            writer.SetField(TiffTag.IMAGELENGTH, 1);
            writer.SetField(TiffTag.BITSPERSAMPLE, 8);
            writer.SetField(TiffTag.SAMPLESPERPIXEL, 1);
            writer.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISBLACK);
            writer.SetField(TiffTag.COMPRESSION, Compression.LZW);
            if (writer.WriteEncodedStrip(0, bytes, bytes.Length) != bytes.Length) throw new InvalidOperationException("The block must be packed whole.");
        }
        using var reader = Tiff.ClientOpen("block", "r", new MemoryStream(file.ToArray()), new TiffStream());
        var packed = new byte[reader.RawStripSize(0)];
        if (reader.ReadRawStrip(0, packed, 0, packed.Length) != packed.Length) throw new InvalidOperationException("The block must be read whole.");
        return packed;
    }
}
