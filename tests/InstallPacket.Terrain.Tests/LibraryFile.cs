using BitMiracle.LibTiff.Classic;

namespace InstallPacket.Terrain.Tests;

/// <summary>A tile written wholly by the library, directory and all.</summary>
internal static class LibraryFile
{
    /// <summary>The file.</summary>
    /// <param name="mode">Mode of the library: w, 8 for BigTIFF, b or l for the order of bytes.</param>
    public static byte[] Of(HeightTile tile, string mode)
    {
        var file = new MemoryStream();
        using (var tiff = Tiff.ClientOpen("tile", mode, file, new TiffStream()))
        {
            tiff.MergeFieldInfo(Geographic, Geographic.Length);
            tiff.SetField(TiffTag.IMAGEWIDTH, tile.Columns);
            tiff.SetField(TiffTag.IMAGELENGTH, tile.Rows);
            tiff.SetField(TiffTag.BITSPERSAMPLE, tile.IsFloat ? 32 : 16);
            tiff.SetField(TiffTag.SAMPLEFORMAT, tile.IsFloat ? SampleFormat.IEEEFP : SampleFormat.INT);
            tiff.SetField(TiffTag.SAMPLESPERPIXEL, 1);
            tiff.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISBLACK);
            tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
            tiff.SetField(TiffTag.COMPRESSION, (Compression)tile.Compression);
            if (tile.Predictor != 1) tiff.SetField(TiffTag.PREDICTOR, (Predictor)tile.Predictor);
            if (tile.Tiled)
            {
                tiff.SetField(TiffTag.TILEWIDTH, tile.TileSide);
                tiff.SetField(TiffTag.TILELENGTH, tile.TileSide);
            }
            else tiff.SetField(TiffTag.ROWSPERSTRIP, tile.RowsPerStrip);
            tiff.SetField(TiffTag.GEOTIFF_MODELPIXELSCALETAG, 3, new double[] { tile.Step, tile.Step, 0 });
            tiff.SetField(TiffTag.GEOTIFF_MODELTIEPOINTTAG, 6, new double[] { 0, 0, 0, tile.West, tile.North, 0 });
            tiff.SetField((TiffTag)34735, 16, new short[] { 1, 1, 0, 3, 1024, 0, 1, 2, 1025, 0, 1, (short)(tile.Point ? 2 : 1), 2048, 0, 1, 4326 });
            var number = 0;
            foreach (var block in tile.Blocks())
            {
                var bytes = PackedBlock.Machine(block, tile.IsFloat);
                Assert.Equal(bytes.Length, tile.Tiled ? tiff.WriteEncodedTile(number++, bytes, bytes.Length) : tiff.WriteEncodedStrip(number++, bytes, bytes.Length));
            }
            tiff.WriteDirectory();
            tiff.Flush();
        }
        return file.ToArray();
    }

    private static readonly TiffFieldInfo[] Geographic =
    [
        new(TiffTag.GEOTIFF_MODELPIXELSCALETAG, -1, -1, TiffType.DOUBLE, FieldBit.Custom, true, true, "ModelPixelScale"),
        new(TiffTag.GEOTIFF_MODELTIEPOINTTAG, -1, -1, TiffType.DOUBLE, FieldBit.Custom, true, true, "ModelTiepoint"),
        new((TiffTag)34735, -1, -1, TiffType.SHORT, FieldBit.Custom, true, true, "GeoKeyDirectory"),
    ];
}
