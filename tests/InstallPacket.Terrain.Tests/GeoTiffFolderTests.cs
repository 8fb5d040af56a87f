using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>Which tile of a folder answers, and what the folder says of its tiles.</summary>
public class GeoTiffFolderTests
{
    // Flat tiles around 43.97 N, 99.97 W.
    private static byte[] Flat(float height, double spacing, Func<int, int, bool>? hole = null) =>
        new HeightTile { Step = spacing / 3600, Rows = (int)(180 / spacing), Columns = (int)(180 / spacing), Compression = 8, Sample = (r, c) => hole?.Invoke(r, c) == true ? -9999 : height }.File().Text(42113, "-9999").ToBytes();

    [Fact]
    public void Finest_tile_answers_then_the_first_by_path()
    {
        (string, byte[])[] tiles = [("t/a.tif", Flat(100, 3)), ("t/c.tif", Flat(300, 1)), ("t/b.TIFF", Flat(200, 1)), ("t/d.tif", Flat(400, 2))];
        using var all = TileFiles.Folder(tiles);
        Assert.Equal(200, all.At(43.97, -99.97).HeightM);
        Assert.Equal(["t/b.TIFF"], all.Used.Select(u => u.Path));
        Assert.Equal(1, all.SpacingArcSeconds, 9);
        using var rest = TileFiles.Folder(tiles[0], tiles[3]);
        Assert.Equal(400, rest.At(43.97, -99.97).HeightM);
    }

    [Theory]
    [InlineData("t/A.tif", 3, "t/A.tif")]
    [InlineData("t/a.tif", 3, "t/N43W100.hgt")]
    [InlineData("t/a.tif", 1, "t/a.tif")]
    [InlineData("t/A.tif", 5, "t/N43W100.hgt")]
    public void One_degree_tile_stands_in_the_same_order(string path, double spacing, string answers)
    {
        using var terrain = TileFiles.Folder((path, Flat(100, spacing)), ("t/N43W100.hgt", TerrainTilesTests.Tile(43, -100, (_, _) => 700)));
        Assert.Equal(answers == path ? 100 : 700, terrain.At(43.97, -99.97).HeightM);
        Assert.Equal([answers], terrain.Used.Select(u => u.Path));
    }

    [Fact]
    public void Place_that_is_void_in_the_finer_tile_is_taken_from_the_coarser_one()
    {
        using var terrain = TileFiles.Folder(("t/a.tif", Flat(100, 1, (r, c) => r is > 50 and < 60)), ("t/b.tif", Flat(200, 3)));
        Assert.Equal(new GroundHeight(100, HeightState.Known), terrain.At(44 - 40.5 / 3600, -99.97));
        Assert.Equal(new GroundHeight(200, HeightState.Known), terrain.At(44 - 55.5 / 3600, -99.97));
        Assert.Equal(new GroundHeight(200, HeightState.Known), terrain.At(44 - 51.2 / 3600, -99.97));
        Assert.Equal(["t/a.tif", "t/b.tif"], terrain.Used.Select(u => u.Path));
    }

    [Fact]
    public void Refused_tile_is_listed_at_once_and_the_others_are_used()
    {
        using var terrain = TileFiles.Folder(("t/photo.tif", new HeightTile().File().Without(34735).ToBytes()), ("t/b.tif", Flat(200, 3)));
        Assert.Equal(["t/photo.tif states no coordinate system; a GeoTIFF tile does, in its geographic keys"], terrain.UnfitTiles);
        Assert.Equal(1, terrain.Count);
        Assert.Equal(200, terrain.At(43.97, -99.97).HeightM);
    }

    [Fact]
    public void Damaged_block_is_a_void_and_told_once_while_the_others_are_used()
    {
        var tile = new HeightTile { Compression = 8, Sample = (r, c) => 100 };
        var file = tile.File();
        file.Blocks[2] = [.. Enumerable.Repeat((byte)0xEE, 40)];
        file.Blocks[4] = [1];
        using var terrain = TileFiles.Folder(("t/a.tif", file.ToBytes()));
        Assert.Equal(HeightState.Known, At(10).State);
        Assert.Empty(terrain.UnfitTiles);
        Assert.Equal(HeightState.Void, At(16).State);
        Assert.Equal(["t/a.tif has 1 damaged strip where heights were asked for, number 2 first; their heights are unknown and the others are used"], terrain.UnfitTiles);
        Assert.Equal(HeightState.Void, At(30).State);
        Assert.Equal(["t/a.tif has 2 damaged strips where heights were asked for, number 2 first; their heights are unknown and the others are used"], terrain.UnfitTiles);

        GroundHeight At(int row) => terrain.At(44 - (row + 0.5) * tile.Step, -100 + 5.5 * tile.Step);
    }

    [Fact]
    public void Tile_that_changes_while_it_is_read_is_unfit()
    {
        var files = new TileFiles { ["t/a.tif"] = Flat(100, 3) };
        using var terrain = new TerrainTiles(files, "t");
        files["t/a.tif"] = Flat(100, 1);
        Assert.Equal(HeightState.Missing, terrain.At(43.97, -99.97).State);
        Assert.Equal(["t/a.tif changed while it was read; build again"], terrain.UnfitTiles);
        Assert.Empty(terrain.Used);
    }

    [Fact]
    public void Tile_that_is_gone_is_unfit()
    {
        var files = new TileFiles { ["t/a.tif"] = Flat(100, 3) };
        using var terrain = new TerrainTiles(files, "t");
        files.Clear();
        Assert.Equal(HeightState.Missing, terrain.At(43.97, -99.97).State);
        Assert.Equal(["t/a.tif cannot be opened again; a file in the jobs folder is read"], terrain.UnfitTiles);
    }

    [Theory]
    [InlineData("t/a.tif", true)]
    [InlineData("t/a.TIFF", true)]
    [InlineData("t/N43W100.hgt", true)]
    [InlineData("t/N43W100.SRTMGL1.hgt.zip", true)]
    [InlineData("t/a.tif.aux.xml", false)]
    [InlineData("t/a.zip", false)]
    public void Tile_is_known_by_the_end_of_its_name(string path, bool tile) => Assert.Equal(tile, TerrainTiles.IsTile(path));
}
