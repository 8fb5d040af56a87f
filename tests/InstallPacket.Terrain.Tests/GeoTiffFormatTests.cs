using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>Every way of storing that is read gives every sample back.</summary>
public class GeoTiffFormatTests
{
    private static readonly bool[] Both = [false, true];

    // Predictor 3 is for floats, and is not read in big-endian order.
    private static IEnumerable<(bool Tiled, int Compression, int Predictor, bool IsFloat, bool BigEndian)> Stored =>
        from tiled in Both
        from isFloat in Both
        from bigEndian in Both
        from compression in new[] { 1, 5, 8, 32946 }
        from predictor in new[] { 1, isFloat ? 3 : 2 }
        where (compression != 1 || predictor == 1) && !(predictor == 3 && bigEndian)
        select (tiled, compression, predictor, isFloat, bigEndian);

    public static TheoryData<bool, int, int, bool, bool, bool> Combinations =>
        [.. from s in Stored from big in Both select (s.Tiled, s.Compression, s.Predictor, s.IsFloat, s.BigEndian, big)];

    // The library writes neither BigTIFF nor predictor 2 soundly in big-endian order.
    public static TheoryData<bool, int, int, bool, bool, bool> CombinationsOfTheLibrary =>
        [.. from s in Stored from big in Both where !(s.BigEndian && (big || s.Predictor == 2)) select (s.Tiled, s.Compression, s.Predictor, s.IsFloat, s.BigEndian, big)];

    [Fact]
    public void No_combination_is_left_out() => Assert.Equal((100, 72), (Combinations.Count, CombinationsOfTheLibrary.Count));

    [Theory]
    [MemberData(nameof(Combinations))]
    public void Each_combination_gives_every_sample(bool tiled, int compression, int predictor, bool isFloat, bool bigEndian, bool big)
    {
        var tile = new HeightTile { Tiled = tiled, Compression = compression, Predictor = predictor, IsFloat = isFloat, BigEndian = bigEndian, Big = big, Sample = Eighths(isFloat) };
        EverySample(tile, tile.ToBytes());
    }

    // The directory is the library's own here.
    [Theory]
    [MemberData(nameof(CombinationsOfTheLibrary))]
    public void File_of_the_library_gives_every_sample(bool tiled, int compression, int predictor, bool isFloat, bool bigEndian, bool big)
    {
        var tile = new HeightTile { Tiled = tiled, Compression = compression, Predictor = predictor, IsFloat = isFloat, Sample = Eighths(isFloat) };
        EverySample(tile, LibraryFile.Of(tile, (big ? "w8" : "w") + (bigEndian ? "b" : "l")));
    }

    [Theory]
    [InlineData("-9999", -9999, false)]
    [InlineData("-32768", -32768, false)]
    [InlineData(" 0 ", 0, false)]
    [InlineData("-9999.5", -9999.5, true)]
    [InlineData("nan", double.NaN, true)]
    [InlineData("-3.4028234663852886e+38", float.MinValue, true)]
    [InlineData("-1.79769313486231570e+308", double.NegativeInfinity, true)]
    public void No_data_is_a_void_and_never_a_height(string text, double hole, bool isFloat)
    {
        var tile = new HeightTile { IsFloat = isFloat, Sample = (r, c) => r is >= 10 and <= 13 && c is >= 20 and <= 23 ? (float)hole : 100 + r };
        using var terrain = Folder(tile.File().Text(42113, text).ToBytes());
        Assert.Equal(HeightState.Void, At(terrain, tile, 11.5, 21.5).State);
        Assert.Equal(HeightState.Void, At(terrain, tile, 10, 20).State);
        var edge = At(terrain, tile, 9.25, 21.5);
        Assert.Equal(HeightState.Partial, edge.State);
        Assert.Equal(109, edge.HeightM, 9);
        Assert.Equal(HeightState.Known, At(terrain, tile, 9, 21.5).State);
    }

    [Theory]
    [InlineData(-32768, false)]
    [InlineData(9001, false)]
    [InlineData(float.NaN, true)]
    [InlineData(float.PositiveInfinity, true)]
    [InlineData(1e30f, true)]
    public void Height_that_no_ground_has_is_a_void_without_being_declared(float hole, bool isFloat)
    {
        var tile = new HeightTile { IsFloat = isFloat, Sample = (r, c) => r == 10 && c == 20 ? hole : 100 };
        using var terrain = Folder(tile.ToBytes());
        Assert.Equal(HeightState.Void, At(terrain, tile, 10, 20).State);
        Assert.Equal(new GroundHeight(100, HeightState.Partial), At(terrain, tile, 10.5, 20.5));
    }

    [Fact]
    public void Block_that_the_writer_left_out_is_a_void()
    {
        var tile = new HeightTile { Tiled = true, Compression = 8 };
        var file = tile.File();
        file.Blocks[4] = null;
        using var terrain = Folder(file.ToBytes());
        Assert.Equal(HeightState.Void, At(terrain, tile, 20, 20).State);
        Assert.Equal(HeightState.Known, At(terrain, tile, 5, 5).State);
        Assert.Empty(terrain.UnfitTiles);
    }

    [Fact]
    public void Further_directories_are_not_followed()
    {
        var tile = new HeightTile();
        var file = tile.File();
        file.Next = 8; // the first directory again: a ring
        EverySample(tile, file.ToBytes());
    }

    [Fact]
    public void Tile_is_cited_with_hash_of_the_file_spacing_and_datum()
    {
        var tile = new HeightTile();
        (int, int)[][] datums = [[], [(4096, 5773)], [(4096, 3855), (4099, 9001)], [(4096, 5703)], [(4096, 5621), (4099, 9001)], [(4096, 32767)]];
        string[] words = ["not stated", "EGM96 (EPSG 5773)", "EGM2008 (EPSG 3855)", "NAVD88 (EPSG 5703)", "vertical code 5621", "not stated"];
        foreach (var (keys, datum) in datums.Zip(words))
        {
            var bytes = HeightTile.Keys(tile.File(), [(1024, 2), (1025, 1), (2048, 4269), .. keys]).ToBytes();
            using var terrain = Folder(bytes);
            Assert.Equal((1, 0), (terrain.Count, terrain.Used.Count));
            At(terrain, tile, 3, 3);
            Assert.Equal([new("t/a.tif", Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)), tile.Step * 3600, datum)], terrain.Used);
        }
    }

    private static Func<int, int, float> Eighths(bool isFloat) => (r, c) => HeightTile.Rugged(r, c) + (isFloat ? (r + c) % 8 / 8f : 0);

    private static void EverySample(HeightTile tile, byte[] bytes)
    {
        using var terrain = Folder(bytes);
        for (var r = 0; r < tile.Rows; r++)
            for (var c = 0; c < tile.Columns; c++) Assert.Equal(new GroundHeight(tile.Sample(r, c), HeightState.Known), At(terrain, tile, r, c));
        Assert.Empty(terrain.UnfitTiles);
    }

    private static TerrainTiles Folder(byte[] bytes) => new(new TileFiles { ["t/a.tif"] = bytes }, "t");

    private static GroundHeight At(TerrainTiles terrain, HeightTile tile, double row, double column)
    {
        var (latitude, longitude) = tile.Node(0, 0);
        return terrain.At(latitude - row * tile.Step, longitude + column * tile.Step);
    }
}
