using CsCheck;
using InstallPacket.Terrain.GeoTiff;

namespace InstallPacket.Terrain.Tests;

/// <summary>Any bytes as a tile give heights or a refusal; never a crash, and never more memory than the largest blocks take.</summary>
public class GeoTiffHostileTests
{
    // Four blocks: packed bytes, the file of one strip around them, samples, heights; and room for the test itself.
    private const long MostAllocated = 100L * 1024 * 1024;

    private static readonly byte[][] Seeds =
    [
        .. from tiled in new[] { false, true }
           from s in new[] { (1, 1, false), (5, 2, false), (8, 2, false), (5, 1, true), (8, 3, true), (32946, 1, true) }
           from form in new (bool Big, bool BigEndian)[] { (false, false), (true, false), (false, true), (true, true) }
           where !(s.Item2 == 3 && form.BigEndian)
           select new HeightTile { Rows = 20, Columns = 24, Tiled = tiled, Compression = s.Item1, Predictor = s.Item2, IsFloat = s.Item3, Big = form.Big, BigEndian = form.BigEndian }.File().Text(42113, "-9999")
               .Text(42112, "<GDALMetadata><Item name=\"OFFSET\" sample=\"0\" role=\"offset\">0</Item></GDALMetadata>").ToBytes(),
    ];

    private static readonly Gen<byte> Byte = Gen.Frequency((2, Gen.Byte), (1, Gen.OneOf(new byte[] { 0, 1, 2, 3, 4, 8, 16, 127, 128, 255 })));

    [Fact]
    public void Changed_bytes() =>
        Gen.Select(Gen.OneOf(Seeds), Gen.Select(Gen.Int[0, 1_000_000], Byte).Array[1, 12]).Sample((seed, changes) =>
        {
            var bytes = seed.ToArray();
            foreach (var (at, value) in changes) bytes[at % bytes.Length] = value;
            return HeightsOrRefusal(bytes);
        }, iter: 800);

    // Most of the file is blocks: here every change falls on header, directory and values.
    [Fact]
    public void Changed_tags() =>
        Gen.Select(Gen.OneOf(Seeds), Gen.Select(Gen.Int[2, 700], Byte).Array[1, 4]).Sample((seed, changes) =>
        {
            var bytes = seed.ToArray();
            foreach (var (at, value) in changes) bytes[at % bytes.Length] = value;
            return HeightsOrRefusal(bytes);
        }, iter: 800);

    // The packed bytes alone: the decoders meet every kind of damage.
    [Fact]
    public void Changed_blocks() =>
        Gen.Select(Gen.OneOf(Seeds), Gen.Select(Gen.Int[0, 1_000_000], Byte).Array[1, 40]).Sample((seed, changes) =>
        {
            var bytes = seed.ToArray();
            var half = bytes.Length * 2 / 3;
            foreach (var (at, value) in changes) bytes[half + at % (bytes.Length - half)] = value;
            return HeightsOrRefusal(bytes);
        }, iter: 800);

    [Fact]
    public void Cut_files() => Gen.Select(Gen.OneOf(Seeds), Gen.Int[0, 1_000_000]).Sample((seed, at) => HeightsOrRefusal(seed[..(at % seed.Length)]), iter: 1500);

    [Fact]
    public void Random_bytes() => Gen.Select(Gen.OneOf(new[] { "II*\0", "MM\0*", "II+\0", "MM\0+", "" }), Gen.Byte.Array[0, 300]).Sample((start, rest) => HeightsOrRefusal([.. start.Select(c => (byte)c), .. rest]), iter: 2500);

    private static bool HeightsOrRefusal(byte[] bytes)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sound = Sound(bytes);
        return sound && GC.GetAllocatedBytesForCurrentThread() - before < MostAllocated;
    }

    private static bool Sound(byte[] bytes)
    {
        using var terrain = new TerrainTiles(new TileFiles { ["t/a.tif"] = bytes }, "t");
        if (terrain.Count == 0) return terrain.UnfitTiles is [['t', '/', 'a', '.', 't', 'i', 'f', ' ', .. var reason]] && reason.Contains("; ", StringComparison.Ordinal);
        // Where the changed tags put the tile.
        var frame = GeoTiffTile.Read("t/a.tif", () => new MemoryStream(bytes, false), new BlockCache()).Header.Frame;
        foreach (var (y, x) in new[] { (0.0, 0.0), (-0.5, -0.5), (0.5, 0.5), (9.5, 15.5), (frame.Rows - 1, frame.Columns - 1), (frame.Rows - 0.6, frame.Columns / 2.0), (frame.Rows / 3.0, frame.Columns / 3.0) })
        {
            var ground = terrain.At(frame.NorthDeg - y * frame.RowStepDeg, frame.WestDeg + x * frame.ColumnStepDeg);
            if (ground.State is HeightState.Known or HeightState.Partial && !(ground.HeightM is >= -12_000 and <= 9_000)) return false;
        }
        return terrain.UnfitTiles.Count <= 1;
    }
}
