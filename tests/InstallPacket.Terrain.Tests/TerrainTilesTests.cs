using System.Buffers.Binary;
using System.IO.Compression;
using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

public class TerrainTilesTests
{
    private const int Nodes = 1201;

    // A plane: rises 300 m a degree to the north and falls 200 m a degree to the east.
    private static double Plane(double latitude, double longitude) => 500 + 300 * (latitude - 43) - 200 * (longitude + 100);

    internal static byte[] Tile(int south, int west, Func<double, double, double>? height = null, Func<int, int, bool>? hole = null)
    {
        var bytes = new byte[2 * Nodes * Nodes];
        for (var r = 0; r < Nodes; r++)
        {
            for (var c = 0; c < Nodes; c++)
            {
                var h = (height ?? Plane)(south + 1 - r / (Nodes - 1.0), west + c / (Nodes - 1.0));
                BinaryPrimitives.WriteInt16BigEndian(bytes.AsSpan(2 * (r * Nodes + c)), hole?.Invoke(r, c) == true ? (short)-32768 : (short)Math.Round(h));
            }
        }
        return bytes;
    }

    [Fact]
    public void Plane_comes_back_within_the_rounding_of_its_nodes()
    {
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = Tile(43, -100) }, "t");
        foreach (var (lat, lon) in new[] { (43.0, -100.0), (43.99999, -99.00001), (43.5, -99.5), (43.123456, -99.876543), (43.0004, -99.0004) })
        {
            var ground = terrain.At(lat, lon);
            Assert.Equal(HeightState.Known, ground.State);
            Assert.Equal(Plane(lat, lon), ground.HeightM, 0.5);
        }
    }

    [Fact]
    public void Height_between_four_nodes_is_weighted_by_nearness()
    {
        // One node of 100 m in a flat tile: halfway to it in both directions a quarter of it is felt.
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = Tile(43, -100, (lat, lon) => Math.Abs(lat - 43.5) < 1e-4 && Math.Abs(lon + 99.5) < 1e-4 ? 100 : 0) }, "t");
        var cell = 1.0 / (Nodes - 1);
        Assert.Equal(100, terrain.At(43.5, -99.5).HeightM, 6);
        Assert.Equal(25, terrain.At(43.5 + cell / 2, -99.5 - cell / 2).HeightM, 6);
        Assert.Equal(50, terrain.At(43.5, -99.5 + cell / 2).HeightM, 6);
    }

    [Fact]
    public void Seam_gives_the_same_height_from_both_sides()
    {
        using var west = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = Tile(43, -100) }, "t");
        using var east = new TerrainTiles(new TileFiles { ["t/N43W099.hgt"] = Tile(43, -99) }, "t");
        for (var lat = 43.01; lat < 44; lat += 0.083) Assert.Equal(west.At(lat, -99).HeightM, east.At(lat, -99).HeightM);
        Assert.Empty(west.MissingTiles);
    }

    [Fact]
    public void Void_is_never_zero_metres()
    {
        // Rows 600 to 610 and columns 600 to 610 are void.
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = Tile(43, -100, null, (r, c) => r is >= 600 and <= 610 && c is >= 600 and <= 610) }, "t");
        var cell = 1.0 / (Nodes - 1);
        Assert.Equal(HeightState.Void, terrain.At(44 - 605.5 * cell, -100 + 605.5 * cell).State);
        var edge = terrain.At(44 - 599.5 * cell, -100 + 605.5 * cell);
        Assert.Equal(HeightState.Partial, edge.State);
        Assert.Equal(Plane(44 - 599 * cell, -100 + 605.5 * cell), edge.HeightM, 0.6);
    }

    [Fact]
    public void Missing_tile_is_unknown_and_named()
    {
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = Tile(43, -100) }, "t");
        Assert.Equal(HeightState.Missing, terrain.At(44.5, -98.5).State);
        Assert.Equal(HeightState.Missing, terrain.At(-0.5, 0.5).State);
        Assert.Equal(["N44W099.hgt", "S01E000.hgt"], terrain.MissingTiles);
    }

    [Fact]
    public void Used_tile_is_cited_with_its_hash_and_spacing()
    {
        var bytes = Tile(43, -100);
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = bytes }, "t");
        Assert.Empty(terrain.Used);
        terrain.At(43.5, -99.5);
        var use = Assert.Single(terrain.Used);
        Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)), use.Sha256);
        Assert.Equal(3, use.SpacingArcSeconds, 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(14)]
    [InlineData(2 * 1201 * 1201 - 1)]
    public void File_of_no_tile_size_is_unfit_with_its_size(int size)
    {
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.hgt"] = new byte[size] }, "t");
        Assert.Equal(HeightState.Missing, terrain.At(43.5, -99.5).State);
        Assert.Contains($"holds {size} bytes", Assert.Single(terrain.UnfitTiles), StringComparison.Ordinal);
        Assert.Empty(terrain.MissingTiles);
    }

    [Fact]
    public void Zipped_tile_reads_and_a_broken_archive_is_unfit()
    {
        var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        using (var entry = archive.CreateEntry("N43W100.hgt").Open()) entry.Write(Tile(43, -100));
        using var terrain = new TerrainTiles(new TileFiles { ["t/N43W100.SRTMGL3.hgt.zip"] = zip.ToArray(), ["t/N44W100.hgt.zip"] = new byte[500] }, "t");
        Assert.Equal(Plane(43.5, -99.5), terrain.At(43.5, -99.5).HeightM, 0.5);
        Assert.Equal(HeightState.Missing, terrain.At(44.5, -99.5).State);
        Assert.Contains("zip", Assert.Single(terrain.UnfitTiles), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("N38W105.hgt", 38, -105)]
    [InlineData("n38w105.hgt", 38, -105)]
    [InlineData("S14E172.SRTMGL1.hgt.zip", -14, 172)]
    [InlineData("NASADEM_HGT_n38w105.hgt", 38, -105)]
    public void Corner_is_read_from_the_name(string name, int latitude, int longitude) => Assert.Equal((latitude, longitude), TileName.Corner(name));

    [Theory]
    [InlineData("N38W105x.hgt")]
    [InlineData("N99W105.hgt")]
    [InlineData("N38W200.hgt")]
    [InlineData("readme.hgt")]
    [InlineData("N3W105.hgt")]
    public void What_names_no_corner_is_no_tile(string name) => Assert.Null(TileName.Corner(name));
}
