using System.IO.Compression;
using CsCheck;
using InstallPacket.Calc.Checksums;
using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>One-degree tiles that cannot be used are listed, each with its reason.</summary>
public class HgtTilesTests
{
    private const string Names = "names no corner of a tile; a name begins like N43W100: 90 S to 89 N, 180 W to 179 E";
    private const string Zip = "is not a sound zip archive of one tile; a tile has 2884802, 12970802 or 25934402 bytes (1201 x 1201, 3601 x 1801 or 3601 x 3601 heights)";

    private static readonly byte[] Tile = TerrainTilesTests.Tile(43, -100, (_, _) => 500);

    [Theory]
    [InlineData("N99E999.hgt")]
    [InlineData("N90E000.hgt")]
    [InlineData("S91E000.hgt")]
    [InlineData("N00E180.hgt")]
    [InlineData("N00W181.hgt")]
    [InlineData("N99E999.hgt.zip")]
    [InlineData("kestrel.hgt")]
    public void Tile_that_names_no_corner_is_unfit_before_any_place_is_asked_for(string name)
    {
        using var terrain = TileFiles.Folder(("t/" + name, Tile));
        Assert.Equal([$"t/{name} {Names}"], terrain.UnfitTiles);
        Assert.Equal(0, terrain.Count);
    }

    [Theory]
    [InlineData("S90W180.hgt", -90, -180)]
    [InlineData("N89E179.hgt", 89, 179)]
    public void Outermost_tiles_are_tiles(string name, int south, int west) => Assert.Equal((south, west), TileName.Corner(name));

    [Theory]
    [InlineData(0)]
    [InlineData(2 * 1201 * 1201 - 1)]
    [InlineData(2 * 1201 * 1201 + 1)]
    [InlineData(2 * 3601 * 3601 - 2)]
    public void Empty_or_truncated_tile_is_unfit(int size)
    {
        var reason = $"holds {size} bytes, which is the size of no tile; a tile has 2884802, 12970802 or 25934402 bytes (1201 x 1201, 3601 x 1801 or 3601 x 3601 heights)";
        using var plain = TileFiles.Folder(("t/N43W100.hgt", new byte[size]));
        Assert.Equal(HeightState.Missing, plain.At(43.5, -99.5).State);
        Assert.Equal(["t/N43W100.hgt " + reason], plain.UnfitTiles);
        using var zipped = TileFiles.Folder(("t/N43W100.hgt.zip", Zipped(("N43W100.hgt", new byte[size]))));
        Assert.Equal(HeightState.Missing, zipped.At(43.5, -99.5).State);
        Assert.Equal(["t/N43W100.hgt.zip " + reason], zipped.UnfitTiles);
        Assert.Empty(zipped.Used);
    }

    [Fact]
    public void Archive_that_unpacks_to_more_than_a_tile_is_not_unpacked_to_its_end()
    {
        using var terrain = TileFiles.Folder(("t/N43W100.hgt.zip", Zipped(("N43W100.hgt", new byte[60_000_000]))));
        Assert.Equal(HeightState.Missing, terrain.At(43.5, -99.5).State);
        Assert.InRange(long.Parse(Assert.Single(terrain.UnfitTiles).Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture), 25934403, 25934402 + 81920);
    }

    [Fact]
    public void Archive_of_no_tile_or_of_two_is_unfit()
    {
        byte[][] archives = [[], new byte[500], Zipped(), Zipped(("N43W100.hgt", Tile), ("N44W100.hgt", Tile)), Zipped(("N43W100.hgt", Tile))[..^30]];
        foreach (var archive in archives)
        {
            using var terrain = TileFiles.Folder(("t/N43W100.hgt.zip", archive));
            Assert.Equal(HeightState.Missing, terrain.At(43.5, -99.5).State);
            Assert.Equal(["t/N43W100.hgt.zip " + Zip], terrain.UnfitTiles);
        }
    }

    [Fact]
    public void Archive_of_another_tile_is_unfit()
    {
        using var terrain = TileFiles.Folder(("t/N43W100.hgt.zip", Zipped(("N44W100.hgt", Tile))));
        Assert.Equal(HeightState.Missing, terrain.At(43.5, -99.5).State);
        Assert.Equal(["t/N43W100.hgt.zip holds the tile N44W100; an archive is named as the tile in it"], terrain.UnfitTiles);
    }

    // Whatever byte of the packed heights is damaged: the same heights, or a refusal.
    [Fact]
    public void Damaged_archive_never_gives_other_heights()
    {
        byte[][] archives = [Zipped(CompressionLevel.Optimal, ("N43W100.hgt", Tile)), Zipped(CompressionLevel.NoCompression, ("N43W100.hgt", Tile))];
        Gen.Select(Gen.OneOf(archives), Gen.Int[0, 10_000_000], Gen.Byte).Sample((archive, at, value) =>
        {
            var bytes = archive.ToArray();
            bytes[at % bytes.Length] = value;
            using var terrain = TileFiles.Folder(("t/N43W100.hgt.zip", bytes));
            var ground = terrain.At(43.5, -99.5);
            return terrain.UnfitTiles.Count == 1 ? ground.State == HeightState.Missing : ground == new GroundHeight(500, HeightState.Known);
        }, iter: 100);
    }

    [Fact]
    public void Second_tile_of_a_square_stands_in_for_an_unfit_first_one()
    {
        using var terrain = TileFiles.Folder(("t/N43W100.hgt", new byte[9]), ("t/N43W100.hgt.zip", Zipped(("N43W100.hgt", Tile))));
        Assert.Equal(new GroundHeight(500, HeightState.Known), terrain.At(43.5, -99.5));
        Assert.Equal(["t/N43W100.hgt.zip"], terrain.Used.Select(u => u.Path));
        Assert.StartsWith("t/N43W100.hgt holds 9 bytes", Assert.Single(terrain.UnfitTiles), StringComparison.Ordinal);
    }

    // Recalled check value of CRC-32.
    [Fact]
    public void Checksum_of_the_nine_digits() => Assert.Equal(0xCBF43926u, Crc32.Of("123456789"u8));

    private static byte[] Zipped(params (string Name, byte[] Bytes)[] entries) => Zipped(CompressionLevel.Fastest, entries);

    private static byte[] Zipped(CompressionLevel level, params (string Name, byte[] Bytes)[] entries)
    {
        var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var (name, bytes) in entries)
                using (var entry = archive.CreateEntry(name, level).Open()) entry.Write(bytes);
        return zip.ToArray();
    }
}
