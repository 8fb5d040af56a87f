using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>Heights stand where the tags put them: against a slope, whose height is known at every place.</summary>
public class GeoTiffPlaceTests
{
    private const double Step = 1 / 1200.0;

    // Falls 3 m a row southward and rises 2 m a column eastward, from 1000 m at 44 N, 100 W.
    private static double Slope(double latitude, double longitude) => 1000 - 3 * (44 - latitude) / Step + 2 * (longitude + 100) / Step;

    // A tile of the slope. The node of the first row and column lies half a cell inside when cells are areas.
    private static HeightTile Sloping(bool point, double north = 44, double west = -100, int rows = 40, int columns = 48)
    {
        var tile = new HeightTile { Point = point, North = north, West = west, Rows = rows, Columns = columns, IsFloat = true };
        return tile with { Sample = (r, c) => (float)Slope(tile.Node(r, c).Latitude, tile.Node(r, c).Longitude) };
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Slope_comes_back_exactly_between_the_outer_nodes(bool point)
    {
        var tile = Sloping(point);
        using var terrain = TileFiles.Folder(("t/a.tif", tile.ToBytes()));
        for (var y = 0.0; y <= 39; y += 0.65)
            for (var x = 0.0; x <= 47; x += 0.47) Known(terrain, tile.Node(0, 0).Latitude - y * Step, tile.Node(0, 0).Longitude + x * Step);
    }

    [Fact]
    public void Areas_and_points_differ_by_half_a_cell()
    {
        // The same samples and the same tie point: only what the tie point means differs.
        var tile = new HeightTile { Sample = (r, c) => 1000 - 3 * r + 2 * c };
        using var area = TileFiles.Folder(("t/a.tif", tile.ToBytes()));
        using var point = TileFiles.Folder(("t/a.tif", (tile with { Point = true }).ToBytes()));
        var (latitude, longitude) = (44 - 10 * Step, -100 + 20 * Step);
        Assert.Equal(1000 - 3 * 9.5 + 2 * 19.5, area.At(latitude, longitude).HeightM, 6);
        Assert.Equal(1000 - 3 * 10 + 2 * 20, point.At(latitude, longitude).HeightM, 6);
    }

    [Fact]
    public void Tie_point_may_lie_anywhere_in_the_grid()
    {
        var tile = Sloping(false);
        var bytes = tile.File().Set(33922, TiffFile.Double, 24, 20, 0, -100 + 24 * Step, 44 - 20 * Step, 0).ToBytes();
        using var terrain = TileFiles.Folder(("t/a.tif", bytes));
        Known(terrain, 44 - 7.3 * Step, -100 + 11.8 * Step);
    }

    [Fact]
    public void Outer_half_cell_of_a_lone_tile_is_known_in_part_and_beyond_it_nothing_is()
    {
        using var terrain = TileFiles.Folder(("t/a.tif", Sloping(false).ToBytes()));
        Assert.Equal(HeightState.Known, terrain.At(44 - 0.5 * Step, -100 + 0.5 * Step).State);
        foreach (var (y, x) in new[] { (0.25, 5.0), (39.75, 5.0), (5.0, 0.25), (5.0, 47.75), (0.0, 0.0), (40.0, 48.0) })
        {
            var ground = terrain.At(44 - y * Step, -100 + x * Step);
            Assert.Equal(HeightState.Partial, ground.State);
            // The nearest nodes carry it: the height where the place meets the line of outer nodes.
            Assert.Equal(Slope(44 - Math.Clamp(y, 0.5, 39.5) * Step, -100 + Math.Clamp(x, 0.5, 47.5) * Step), ground.HeightM, 6);
        }
        Assert.Empty(terrain.MissingTiles);
        Assert.Equal(HeightState.Missing, terrain.At(44 + 0.01 * Step, -100 + 5 * Step).State);
        Assert.Equal(HeightState.Missing, terrain.At(44 - 40.01 * Step, -100 + 5 * Step).State);
        Assert.Equal(HeightState.Missing, terrain.At(44 - 5 * Step, -100 - 0.01 * Step).State);
        Assert.Equal(["N43W100.hgt", "N43W101.hgt", "N44W100.hgt"], terrain.MissingTiles);
    }

    public static TheoryData<bool, int> Seams => new() { { false, 0 }, { true, 0 }, { true, 1 } };

    // Areas meet at an edge; points lie a step apart (0), or the tiles share their outer nodes (1).
    [Theory]
    [MemberData(nameof(Seams))]
    public void Slope_runs_on_over_the_seams_of_four_tiles(bool point, int shared)
    {
        var (south, east) = (44 - (40 - shared) * Step, -100 + (48 - shared) * Step);
        var tiles = new[] { (44.0, -100.0), (44, east), (south, -100), (south, east) }.Select((t, i) => ($"t/{i}.tif", Sloping(point, t.Item1, t.Item2).ToBytes())).ToArray();
        using var terrain = TileFiles.Folder(tiles);
        for (var d = -1.5; d <= 1.5; d += 0.125)
        {
            Known(terrain, south + d * Step, -100 + 20 * Step);
            Known(terrain, 44 - 20 * Step, east + d * Step);
            Known(terrain, south + d * Step, east + d * Step);
            Known(terrain, south + d * Step, east - d * Step);
        }
        Assert.Equal(4, terrain.Used.Count);
    }

    [Fact]
    public void Corner_without_one_of_four_tiles_is_known_in_part()
    {
        var (south, east) = (44 - 40 * Step, -100 + 48 * Step);
        using var terrain = TileFiles.Folder(("t/0.tif", Sloping(false).ToBytes()), ("t/1.tif", Sloping(false, 44, east).ToBytes()), ("t/2.tif", Sloping(false, south).ToBytes()));
        Assert.Equal(HeightState.Partial, terrain.At(south + 0.2 * Step, east - 0.2 * Step).State);
        Assert.Equal(HeightState.Missing, terrain.At(south - 0.2 * Step, east + 0.2 * Step).State);
        Known(terrain, south + 0.2 * Step, east - 0.6 * Step);
    }

    [Fact]
    public void Void_of_the_neighbour_is_a_void_at_the_seam()
    {
        var right = Sloping(false, 44, -100 + 48 * Step);
        using var terrain = TileFiles.Folder(("t/a.tif", Sloping(false).ToBytes()), ("t/b.tif", (right with { Sample = (_, _) => -9999 }).File().Text(42113, "-9999").ToBytes()));
        Assert.Equal(HeightState.Partial, terrain.At(44 - 5 * Step, -100 + 47.8 * Step).State);
        Assert.Equal(HeightState.Partial, terrain.At(44 - 5 * Step, -100 + 48.2 * Step).State);
        Assert.Equal(HeightState.Void, terrain.At(44 - 5 * Step, -100 + 48.7 * Step).State);
    }

    [Fact]
    public void Seam_with_a_one_degree_tile_is_known()
    {
        // The tile of areas ends at 100 W, where the one-degree tile begins.
        var hgt = TerrainTilesTests.Tile(43, -100, Slope);
        using var terrain = TileFiles.Folder(("t/N43W100.hgt", hgt), ("t/a.tif", Sloping(false, 44 - 10 * Step, -100 - 48 * Step).ToBytes()));
        for (var d = -1.0; d <= 1; d += 0.125) Known(terrain, 44 - 30.3 * Step, -100 + d * Step);
        Assert.Equal(["t/N43W100.hgt", "t/a.tif"], terrain.Used.Select(u => u.Path));
    }

    [Theory]
    [InlineData(179.98, 179.995, -179.985)]
    [InlineData(-180.02, 179.995, -179.985)]
    public void Tile_may_cross_the_turn_of_longitude(double west, double left, double right)
    {
        var tile = new HeightTile { West = west, Point = true, Sample = (r, c) => c };
        using var terrain = TileFiles.Folder(("t/a.tif", tile.ToBytes()));
        Assert.Equal((left - 179.98) / Step, terrain.At(43.99, left).HeightM, 6);
        Assert.Equal((right + 360 - 179.98) / Step, terrain.At(43.99, right).HeightM, 6);
    }

    [Fact]
    public void Tiles_on_both_sides_of_the_turn_meet()
    {
        using var terrain = TileFiles.Folder(
            ("t/a.tif", new HeightTile { West = 180 - 48 * Step, Sample = (_, c) => c }.ToBytes()), ("t/b.tif", new HeightTile { West = -180, Sample = (_, c) => 48 + c }.ToBytes()));
        foreach (var d in new[] { -0.4, -0.2, 0, 0.2, 0.4 })
        {
            var ground = terrain.At(43.99, d < 0 ? 180 + d * Step : -180 + d * Step);
            Assert.Equal(HeightState.Known, ground.State);
            Assert.Equal(47.5 + d, ground.HeightM, 6);
        }
    }

    [Fact]
    public void Tile_around_the_globe_meets_itself_and_east_of_Greenwich_may_run_to_360()
    {
        var tile = new HeightTile { North = 60, West = 0, Step = 1, Rows = 10, Columns = 360, Sample = (r, c) => Math.Min(c, 360 - c) };
        using var terrain = TileFiles.Folder(("t/a.tif", tile.ToBytes()));
        Assert.Equal(new GroundHeight(0.5, HeightState.Known), terrain.At(55.5, 0));
        Assert.Equal(99.5, terrain.At(55.5, -99).HeightM, 6);
    }

    private static void Known(TerrainTiles terrain, double latitude, double longitude)
    {
        var ground = terrain.At(latitude, longitude);
        Assert.Equal(HeightState.Known, ground.State);
        // Floats of some thousand metres carry a tenth of a millimetre.
        Assert.Equal(Slope(latitude, longitude), ground.HeightM, 0.0002);
    }
}
