using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>A file of 520 MB costs what a path needs of it. (The hash that cites a tile reads it once; it is not counted here.)</summary>
public class GeoTiffMemoryTests
{
    private const int Band = 256 * 1024;
    private const long Room = 16L * 1024 * 1024;

    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(LargeFile.Rows)]
    public void Directory_and_table_are_all_that_is_read_at_first(int rowsPerStrip)
    {
        using var file = new LargeFile(rowsPerStrip);
        GeoTiffHeader.Read(TiffDirectory.Read(file));
        Assert.InRange(file.BytesRead, 100, file.HeadBytes + 1000);
    }

    [Theory]
    [InlineData(1, 3, 32_000)]
    [InlineData(16, 1, 8 * 32_000)]
    [InlineData(LargeFile.Rows, 1, 8 * 32_000)]
    public void Path_from_west_to_east_reads_the_rows_that_it_touches(int rowsPerStrip, int blocks, int blockBytes)
    {
        using var file = new LargeFile(rowsPerStrip);
        var (at, cache) = Open(file);
        var before = file.BytesRead;
        // From row 8000 to row 8002, all of them in the band of rows 8000 to 8007.
        for (var i = 0; i < 1000; i++)
        {
            var (row, column) = (8000 + i / 500, i * 15);
            Assert.Equal(LargeFile.Sample(row, column), at(row, column));
            Assert.Equal(LargeFile.Sample(row + 1, column + 1), at(row + 1, column + 1));
        }
        // Each block once, with its place and size in the table.
        Assert.Equal(blocks * (blockBytes + 8), file.BytesRead - before);
        Assert.Equal(2L * blocks * blockBytes, cache.Bytes);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(LargeFile.Rows)]
    public void Path_from_north_to_south_reads_every_row_once_and_holds_little(int rowsPerStrip)
    {
        using var file = new LargeFile(rowsPerStrip);
        var (at, cache) = Open(file);
        var before = file.BytesRead;
        for (var row = 3000; row < 3400; row++)
        {
            Assert.Equal(LargeFile.Sample(row, 15_999), at(row, 15_999));
            Assert.Equal(LargeFile.Sample(row + 1, 15_998), at(row + 1, 15_998));
            Assert.InRange(cache.Bytes, 0, Room);
        }
        Assert.InRange(file.BytesRead - before, 400 * 32_000, 400 * 32_000 + 2 * Band);
    }

    [Fact]
    public void Block_unused_longest_is_dropped_first()
    {
        List<int> read = [];
        var cache = new BlockCache(3 * 4 * 10);
        foreach (var index in new[] { 1, 2, 3, 1, 4, 1, 2, 3 }) Assert.Equal(index, cache.Get(this, index, Read)[0]);
        Assert.Equal([1, 2, 3, 4, 2, 3], read);
        Assert.Equal(120, cache.Bytes);
        // Blocks of another tile are others.
        Assert.Equal(2, cache.Get(cache, 2, Read)[0]);
        Assert.Equal(7, read.Count);

        float[] Read(int index)
        {
            read.Add(index);
            return [.. Enumerable.Repeat((float)index, 10)];
        }
    }

    private static (Func<int, int, float> At, BlockCache Cache) Open(Stream file)
    {
        var tags = TiffDirectory.Read(file);
        var blocks = new TiffBlocks(tags, GeoTiffHeader.Read(tags));
        var cache = new BlockCache();
        return ((row, column) =>
        {
            var (block, at) = blocks.Find(row, column);
            return cache.Get(file, block, blocks.Read)[at];
        }, cache);
    }
}
