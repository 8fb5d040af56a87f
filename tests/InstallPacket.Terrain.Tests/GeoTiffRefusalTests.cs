using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>What is not read is refused by name.</summary>
public class GeoTiffRefusalTests
{
    private const int S = TiffFile.Short, L = TiffFile.Long, D = TiffFile.Double;

    /// <summary>Each reason, and a file that has it.</summary>
    private static readonly Dictionary<string, Func<TiffFile>> Refusals = new()
    {
        ["has compression 50000 (not read); none (1), LZW (5) and deflate (8, 32946) are read"] = () => Plain().Set(259, S, 50000),
        ["has compression 7 (not read); none (1), LZW (5) and deflate (8, 32946) are read"] = () => Plain().Set(259, S, 7),
        ["has 2 bands; one is read"] = () => Plain().Set(277, S, 2).Set(258, S, 16, 16),
        ["has 16-bit unsigned samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Without(339),
        ["has 8-bit unsigned samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Set(258, S, 8).Set(339, S, 1),
        ["has 64-bit float samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Set(258, S, 64).Set(339, S, 3),
        ["has 16-bit float samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Set(339, S, 3),
        ["has 32-bit signed samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Set(258, S, 32),
        ["has 1-bit signed samples; 16-bit signed and 32-bit float samples are read"] = () => Plain().Without(258),
        ["has float32 with predictor 3 in big-endian order; predictor 3 is read in little-endian order"] = () => new HeightTile { IsFloat = true, Compression = 8, BigEndian = true }.File().Set(317, S, 3),
        ["has float32 with predictor 2; predictor 2 with 16-bit signed samples and predictor 3 with float samples are read"] = () => new HeightTile { IsFloat = true, Compression = 8 }.File().Set(317, S, 2),
        ["has int16 with predictor 3; predictor 2 with 16-bit signed samples and predictor 3 with float samples are read"] = () => Packed().Set(317, S, 3),
        ["has predictor 4 (not read); predictor 2 with 16-bit signed samples and predictor 3 with float samples are read"] = () => Packed().Set(317, S, 4),
        ["has predictor 2 without compression; writers differ in what they mean by it"] = () => Plain().Set(317, S, 2),
        ["has photometric interpretation (3); 1 is read"] = () => Plain().Set(262, S, 3),
        ["has fill order (2); 1 is read"] = () => Plain().Set(266, S, 2),
        ["has orientation (4); 1 is read: first row in the north, first column in the west"] = () => Plain().Set(274, S, 4),
        ["has planar configuration 3; 1 and 2 are read"] = () => Plain().Set(284, S, 3),
        ["has a first image that is an overview or a mask (1); the first image holds the heights"] = () => Plain().Set(254, L, 1),

        ["has ImageWidth (tag 256) = 0; 2 to 50000 are read"] = () => Plain().Set(256, L, 0),
        ["has ImageLength (tag 257) = 50001; 2 to 50000 are read"] = () => Plain().Set(257, L, 50001),
        ["has ImageWidth (tag 256) = 4294967295; 2 to 50000 are read"] = () => Plain().Set(256, L, uint.MaxValue),
        ["has no ImageWidth (tag 256); a GeoTIFF tile states it"] = () => Plain().Without(256),
        ["has 2 values of ImageWidth (tag 256); one is read"] = () => Plain().Set(256, L, 48, 48),
        ["has ImageWidth (tag 256) of type 12; the type of the standard is read"] = () => Plain().Set(256, D, 48),
        ["has tiles of 0 x 16 samples; multiples of 16 are read"] = () => Tiled().Set(322, S, 0),
        ["has tiles of 16 x 17 samples; multiples of 16 are read"] = () => Tiled().Set(323, S, 17),
        ["has tiles of 2048 x 1024 samples; at most 1048576 samples are unpacked at once"] = () => Tiled().Set(322, S, 2048).Set(323, S, 1024),
        ["has tiles of 4294967280 x 4294967280 samples; at most 1048576 samples are unpacked at once"] = () => Tiled().Set(322, L, 4294967280).Set(323, L, 4294967280),
        ["has tiles and strips at once; one of them is read"] = () => Tiled().Set(273, L, 8),
        ["has no TileLength (tag 323); a GeoTIFF tile states it"] = () => Tiled().Without(323),
        ["has strips of 0 rows; 1 row or more is read"] = () => Plain().Set(278, L, 0),
        ["has packed strips of 50000 x 48 samples; at most 1048576 samples are unpacked at once"] = () => Packed().Set(257, L, 50000).Set(278, L, uint.MaxValue),
        ["has 9765625 tiles; at most 1000000 are read"] = () => Tiled().Set(256, L, 50000).Set(257, L, 50000),
        ["states 6 places and 6 sizes of 40 strips; one of each is read"] = () => Plain().Set(278, L, 1),
        ["has 671 bytes in strip 0; it takes 672"] = () => WithBlock(Plain(), 0, 671),
        ["has 4000 bytes in strip 1; it takes at most 2368"] = () => WithBlock(Packed(), 1, 4000),

        ["states no coordinate system; a GeoTIFF tile does, in its geographic keys"] = () => Plain().Without(34735),
        ["has an unsound directory of geographic keys; version 1 is read"] = () => Plain().Set(34735, S, 1, 1, 0, 9, 1024, 0, 1, 2),
        ["has an unsound geographic key 1024; each key is stated once, with a value"] = () => Keyed((1024, 2), (1024, 1)),
        ["states no kind of coordinates; geographic coordinates in degrees are read"] = () => Keyed((1025, 1), (2048, 4326)),
        ["has projected coordinates; geographic coordinates in degrees are read"] = () => Keyed((1024, 1), (1025, 1), (3072, 32633)),
        ["has geocentric coordinates; geographic coordinates in degrees are read"] = () => Keyed((1024, 3), (1025, 1), (2048, 4326)),
        ["has coordinates of kind 32767; geographic coordinates in degrees are read"] = () => Keyed((1024, 32767), (1025, 1)),
        ["does not state whether its cells are areas or points; 1 (areas) and 2 (points) are read"] = () => Keyed((1024, 2), (2048, 4326)),
        ["has raster type 3; 1 (areas) and 2 (points) are read"] = () => Keyed((1024, 2), (1025, 3), (2048, 4326)),
        ["states no coordinate system; EPSG 4326, EPSG 4269 or one described in degrees is read"] = () => Keyed((1024, 2), (1025, 1)),
        ["has coordinate system EPSG 4267 (not read); EPSG 4326, EPSG 4269 or one described in degrees is read"] = () => Keyed((1024, 2), (1025, 1), (2048, 4267)),
        ["describes a coordinate system and not its angular unit; degrees (9102) are read"] = () => Keyed((1024, 2), (1025, 1), (2048, 32767)),
        ["has angular unit 9101 (not read); read is 9102"] = () => Keyed((1024, 2), (1025, 1), (2048, 4326), (2054, 9101)),
        ["has datum 6267 (not read); read is 6326, 6269, 32767"] = () => Keyed((1024, 2), (1025, 1), (2048, 32767), (2050, 6267), (2054, 9102)),
        ["has ellipsoid 7008 (not read); read is 7030, 7019, 32767"] = () => Keyed((1024, 2), (1025, 1), (2048, 32767), (2054, 9102), (2056, 7008)),
        ["has prime meridian 8903 (not read); read is 8901"] = () => Keyed((1024, 2), (1025, 1), (2048, 32767), (2051, 8903), (2054, 9102)),
        ["has semi-major axis 6370997; that of WGS 84 is read"] = () => Figured(2057, 6370997),
        ["has inverse flattening 299.15; that of WGS 84 is read"] = () => Figured(2059, 299.15),
        ["has prime meridian 2.5; that of WGS 84 is read"] = () => Figured(2061, 2.5),
        ["has heights in unit 9003; metres (9001) are read"] = () => Keyed((1024, 2), (1025, 1), (2048, 4326), (4096, 5703), (4099, 9003)),
        ["has heights above an ellipsoid (vertical code 5030); heights above sea level are read"] = () => Keyed((1024, 2), (1025, 1), (2048, 4326), (4096, 5030), (4099, 9001)),
        ["has vertical code 6360 without the unit of its heights; 5773, 3855 and 5703 are read without one, and any code with metres (9001)"] = () => Keyed((1024, 2), (1025, 1), (2048, 4326), (4096, 6360)),

        ["has a rotated grid; a north-up grid is read: a pixel scale and one tie point"] = () => Plain().Set(34264, D, 0.1, 0.01, 0, -100, 0.01, -0.1, 0, 44, 0, 0, 0, 0, 0, 0, 0, 1),
        ["has a grid placed by a matrix; a north-up grid is read: a pixel scale and one tie point"] = () => Plain().Set(34264, D, 0.1, 0, 0, -100, 0, -0.1, 0, 44, 0, 0, 0, 0, 0, 0, 0, 1),
        ["has no ModelPixelScale (tag 33550); a GeoTIFF tile states it"] = () => Plain().Without(33550),
        ["has no ModelTiepoint (tag 33922); a GeoTIFF tile states it"] = () => Plain().Without(33922),
        ["has 4 tie points; a north-up grid is read: a pixel scale and one tie point"] = () => Plain().Set(33922, D, new double[24]),
        ["has an unsound ModelTiepoint (tag 33922); 6 finite numbers are read"] = () => Plain().Set(33922, D, 0, 0, 0, double.NaN, 44, 0),
        ["has an unsound ModelPixelScale (tag 33550); 3 finite numbers are read"] = () => Plain().Set(33550, D, 0.001, 0.001),
        ["has rows from south to north; a north-up grid is read: a pixel scale and one tie point"] = () => Plain().Set(33550, D, 0.001, -0.001, 0),
        ["has cells of 0 degrees; 0.01 arc-seconds to 1 degree are read"] = () => Plain().Set(33550, D, 0, 0.001, 0),
        ["has cells of 30 degrees; 0.01 arc-seconds to 1 degree are read"] = () => Plain().Set(33550, D, 30, 30, 0),
        ["has scaled heights (factor 0.3048, offset 0); heights in metres as they are stored are read"] = () => Plain().Set(33550, D, 0.001, 0.001, 0.3048),
        ["has scaled heights (factor 0, offset 12); heights in metres as they are stored are read"] = () => Plain().Set(33922, D, 0, 0, 0, -100, 44, 12),
        ["lies off the globe: rows from 4399999.9995 to 4399999.9605 degrees; latitudes of 90 S to 90 N are read"] = () => Plain().Set(33550, D, 0.001, 0.001, 0).Set(33922, D, 0, 0, 0, 500000, 4400000, 0),
        ["is 362 degrees wide; one turn of longitude is read"] = () => new HeightTile { Step = 1, Columns = 362 }.File(),

        ["has the no-data value 'none'; a number is read"] = () => Plain().Text(42113, "none"),
        ["has 65 values of GdalNoData (tag 42113); at most 64 are read"] = () => Plain().Text(42113, new string('9', 64)),
        ["has scaled heights (scale 0.1); heights in metres as they are stored are read"] = () => Plain().Text(42112, Item("scale", "0.1")),
        ["has scaled heights (offset -20); heights in metres as they are stored are read"] = () => Plain().Text(42112, Item("offset", "-20")),
        ["has heights in 'ft'; metres are read"] = () => Plain().Text(42112, Item("unittype", "ft")),
        ["has heights in '?script? ??? a very long'; metres are read"] = () => Plain().Text(42112, Item("unittype", "&lt;script&gt; [[[ a very long unit")),
        ["has an unsound GdalMetadata (tag 42112); XML is read"] = () => Plain().Text(42112, "<GDALMetadata><Item role=\"scale\">"),
    };

    public static TheoryData<string> Reasons => [.. Refusals.Keys];

    [Theory]
    [MemberData(nameof(Reasons))]
    public void Refusal_names_what_is_not_read(string reason) => Assert.Equal("t/a.tif " + reason, Refusal(Refusals[reason]().ToBytes()));

    [Fact]
    public void Every_change_above_is_the_only_fault_of_its_file()
    {
        foreach (var file in new[] { Plain(), Packed(), Tiled(), Keyed((1024, 2), (1025, 1), (2048, 4326)), Plain().Text(42112, Item("scale", "1")).Text(42113, "7"), Figured(2057, 6378137), Figured(2059, 298.257223563) })
            Assert.Null(Refusal(file.ToBytes()));
    }

    public static TheoryData<string, byte[]> Unsound => new()
    {
        { "holds 0 bytes, too few for a TIFF; fetch it again", [] },
        { "holds 7 bytes, too few for a TIFF; fetch it again", new byte[7] },
        { "does not begin as a TIFF file; TIFF and BigTIFF are read", "<html>404 not found"u8.ToArray() },
        { "does not begin as a TIFF file; TIFF and BigTIFF are read", "II\x2c\0\x8\0\0\0\0\0\0\0"u8.ToArray() },
        { "does not begin as a TIFF file; TIFF and BigTIFF are read", "II\x2b\0\x4\0\0\0\0\0\0\0\0\0\0\0"u8.ToArray() },
        { "is cut short: it states 2 bytes at byte 4294967294 and holds 8 bytes; fetch it again", [(byte)'I', (byte)'I', 42, 0, 0xFE, 0xFF, 0xFF, 0xFF] },
        { "has a directory of 0 tags; 1 to 1000 are read", [(byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0, 0, 0] },
        { "has a directory of 65535 tags; 1 to 1000 are read", [(byte)'I', (byte)'I', 42, 0, 8, 0, 0, 0, 0xFF, 0xFF] },
        { "has a directory of 18446744073709551615 tags; 1 to 1000 are read", [(byte)'M', (byte)'M', 0, 43, 0, 8, 0, 0, 0, 0, 0, 0, 0, 0, 0, 16, .. Enumerable.Repeat((byte)0xFF, 8)] },
        { "is cut short: it states 12000 bytes at byte 10 and holds 10 bytes; fetch it again", [(byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 3, 0xE8] },
    };

    [Theory]
    [MemberData(nameof(Unsound))]
    public void Unsound_file_is_refused(string reason, byte[] bytes) => Assert.Equal("t/a.tif " + reason, Refusal(bytes));

    [Fact]
    public void Tag_twice_is_refused()
    {
        var bytes = Plain().ToBytes();
        bytes[10 + 12] = 0; // the second tag becomes the first again
        Assert.Equal("t/a.tif has tag 256 twice; each is read once", Refusal(bytes));
    }

    [Theory]
    [InlineData(1, "is cut short: strip 5 states 480 bytes at byte ")]
    [InlineData(481, "is cut short: strip 4 states 672 bytes at byte ")]
    [InlineData(4000, "is cut short: it states ")]
    public void File_cut_short_is_refused(int bytes, string reason) => Assert.StartsWith("t/a.tif " + reason, Refusal(Plain().ToBytes()[..^bytes]), StringComparison.Ordinal);

    [Theory]
    [InlineData(273, "states 4294967295 places and 6 sizes of 6 strips; one of each is read")]
    [InlineData(279, "states 6 places and 4294967295 sizes of 6 strips; one of each is read")]
    [InlineData(33550, "has 4294967295 values of ModelPixelScale (tag 33550); at most 16 are read")]
    [InlineData(33922, "has 715827882 tie points; a north-up grid is read: a pixel scale and one tie point")]
    [InlineData(34735, "has 4294967295 values of GeoKeyDirectory (tag 34735); at most 1028 are read")]
    public void Tag_with_more_values_than_the_file_has_bytes_is_refused(int tag, string reason)
    {
        var bytes = Plain().ToBytes();
        var row = Enumerable.Range(0, bytes[8]).Select(i => 10 + 12 * i).First(at => BitConverter.ToUInt16(bytes, at) == tag);
        bytes.AsSpan(row + 4, 4).Fill(0xFF);
        Assert.Equal("t/a.tif " + reason, Refusal(bytes));
    }

    private static string? Refusal(byte[] bytes)
    {
        using var terrain = new TerrainTiles(new TileFiles { ["t/a.tif"] = bytes }, "t");
        Assert.Equal(HeightState.Missing, terrain.UnfitTiles.Count == 0 ? HeightState.Missing : terrain.At(43.99, -99.99).State);
        Assert.Empty(terrain.Used);
        return terrain.UnfitTiles.SingleOrDefault();
    }

    private static TiffFile Plain() => new HeightTile().File();

    private static TiffFile Packed() => new HeightTile { Compression = 8, Predictor = 2 }.File();

    private static TiffFile Tiled() => new HeightTile { Tiled = true }.File();

    private static TiffFile WithBlock(TiffFile file, int block, int bytes)
    {
        file.Blocks[block] = new byte[bytes];
        return file;
    }

    private static TiffFile Keyed(params (int, int)[] keys) => HeightTile.Keys(Plain(), keys);

    private static TiffFile Figured(int key, double value) =>
        Plain().Set(34735, S, 1, 1, 0, 5, 1024, 0, 1, 2, 1025, 0, 1, 1, 2048, 0, 1, 32767, 2054, 0, 1, 9102, key, 34736, 1, 0).Set(34736, D, value);

    private static string Item(string role, string text) => $"<GDALMetadata>\n  <Item name=\"X\" sample=\"0\" role=\"{role}\">{text}</Item>\n</GDALMetadata>";
}
