namespace InstallPacket.Terrain.GeoTiff;

/// <summary>Where the tiles or strips of a file lie. The table stays in the file; an entry is read when its block is.</summary>
/// <param name="Offsets">First bytes.</param>
/// <param name="Counts">Sizes.</param>
internal sealed record BlockTable(TiffArray Offsets, TiffArray Counts)
{
    private const int MostBlocks = 1_000_000;
    private const int Chunk = 8192;

    /// <summary>Finds the table and checks every entry against the size of the file.</summary>
    /// <exception cref="UnfitTileException">It has another number of blocks than the image, or one lies beyond the end.</exception>
    public static BlockTable Of(TiffDirectory tags, TiffLayout layout)
    {
        var table = new BlockTable(
            tags.Wholes(layout.Tiled ? TiffTag.TileOffsets : TiffTag.StripOffsets),
                tags.Wholes(layout.Tiled ? TiffTag.TileByteCounts : TiffTag.StripByteCounts));
        var blocks = (ulong)((long)layout.Across * layout.Down);
        if (blocks > MostBlocks) throw new UnfitTileException($"has {blocks} {layout.Block}s", $"at most {MostBlocks} are read");
        if (table.Offsets.Count != blocks || table.Counts.Count != blocks)
            throw new UnfitTileException($"states {table.Offsets.Count} places and {table.Counts.Count} sizes of {blocks} {layout.Block}s",
                "one of each is read");
        table.Check(tags, layout);
        return table;
    }

    /// <summary>Place and size of a block.</summary>
    public (ulong At, ulong Bytes) Entry(TiffDirectory tags, int block) =>
        (tags.Value(Offsets, (ulong)block), tags.Value(Counts, (ulong)block));

    private void Check(TiffDirectory tags, TiffLayout layout)
    {
        for (ulong first = 0; first < Offsets.Count; first += Chunk)
        {
            var (places, sizes) = (Part(tags, Offsets, first), Part(tags, Counts, first));
            for (var i = 0; i < places.Length; i++) CheckBlock(tags.Bytes, layout, (int)first + i, places[i], sizes[i]);
        }
    }

    private static ulong[] Part(TiffDirectory tags, TiffArray array, ulong first)
    {
        var many = (int)Math.Min(Chunk, array.Count - first);
        var bytes = tags.Bytes.Read(array.At + first * (ulong)array.Bytes, many * array.Bytes);
        return [.. Enumerable.Range(0, many).Select(i => tags.Bytes.Whole(bytes.AsSpan(i * array.Bytes, array.Bytes)))];
    }

    private static void CheckBlock(TiffBytes bytes, TiffLayout layout, int block, ulong at, ulong size)
    {
        if (at == 0 && size == 0) return; // left out by the writer: it holds no height
        if (!bytes.Holds(at,
            size)) throw new UnfitTileException($"is cut short: {layout.Block} {block} states {size} bytes at byte {at}, and the file holds {bytes.Length} bytes", "fetch it again");
        var rows = layout.Tiled ? layout.BlockRows : Math.Min(layout.BlockRows, layout.Rows - block * layout.BlockRows);
        var unpacked = (ulong)((long)rows * layout.BlockColumns * layout.SampleBytes);
        if (layout.Plain ? size < unpacked : size == 0) throw new UnfitTileException($"has {size} bytes in {layout.Block} {block}",
            layout.Plain ? $"it takes {unpacked}" : "a packed one has some");
        // Neither packing grows data to twice its size.
        if (!layout.Plain && size > 2 * unpacked + 1024) throw new UnfitTileException($"has {size} bytes in {layout.Block} {block}",
            $"it takes at most {2 * unpacked + 1024}");
    }
}
