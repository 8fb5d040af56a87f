using InstallPacket.Cli.Console;
using InstallPacket.Terrain;
using InstallPacket.Terrain.Tests;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged elevation tile, GeoTIFF or one-degree: opened, and heights asked for.</summary>
internal sealed class TileKind : FuzzKind
{
    private const int HgtBytes = 2884802;
    private static readonly (string Path, byte[] Bytes)[] Sound =
    [
        .. from compression in new[] { 1, 5, 8 }
           from tiled in new[] { false, true }
           from big in new[] { false, true }
           select ("t/a.tif", new HeightTile { Compression = compression, Predictor = compression == 1 ? 1 : 2, Tiled = tiled, Big = big,
               BigEndian = tiled != big, Point = big }.ToBytes()),
        ("t/a.tif", new HeightTile { IsFloat = true, Compression = 8, Predictor = 3 }.ToBytes()),
    ];

    private readonly byte[] _zipped = File.ReadAllBytes(Path.Combine(DemoJobs.Checkout, "jobs/_shared/terrain/tamarack/N43W100.hgt.zip"));

    public override string Depth => "read, heights";

    public override int Share => 400;

    public override int InTests => 200;

    protected override int Try(Random random, ITerminal terminal)
    {
        var (path, bytes) = Tile(random);
        using var tiles = TileFiles.Folder((path, bytes));
        for (var i = 0; i < 24; i++)
        {
            var (latitude, longitude) = (44 - random.NextDouble() * 0.04, -100 + random.NextDouble() * 0.05);
            if (i % 8 == 7) (latitude, longitude) = (random.Next(-90, 91), random.Next(-180, 181));
            var ground = tiles.At(latitude, longitude);
            Promise(ground.State is HeightState.Void or HeightState.Missing || double.IsFinite(ground.HeightM),
                "a known height is no number");
        }
        foreach (var reason in tiles.UnfitTiles) terminal.Error.WriteLine(FindingPrinter.Safe(reason));
        return tiles.UnfitTiles.Count > 0 ? 1 : 0;
    }

    private (string Path, byte[] Bytes) Tile(Random random)
    {
        var damage = new Damage(random, []);
        switch (random.Next(200))
        {
            case 0: return ("t/N43W100.hgt", new byte[HgtBytes + random.Next(-1, 2)]);
            case 1: return ("t/N43W100.hgt.zip", damage.OfBytes(_zipped, 60));
            case < 8: return ("t/N43W100.hgt.zip", damage.OfBytes(_zipped[..200], 60));
            default:
                var (path, bytes) = Pick(random, Sound);
                return (path, damage.OfBytes(bytes, 400));
        }
    }
}
