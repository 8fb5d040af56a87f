#:property RestorePackagesWithLockFile=false
#:property PublishAot=false
// Makes the elevation tiles of the demo jobs: invented hills in an invented region, in the form of open 3 arc-second tiles.
// Run `dotnet run make-tiles.cs` in this folder. The heights come from the tables below alone, so a second run gives the same heights.
using System.Buffers.Binary;
using System.IO.Compression;

const int Nodes = 1201;

Make("tamarack", "N43W100", 43, -100, baseM: 503,
[
    new(43.2943, -99.3780, 118, AlongKm: 2.6, AcrossKm: 1.3, TurnDeg: 70),   // Kestrel Ridge, a transmitter site
    new(43.3281, -99.7330, 96, AlongKm: 2.2, AcrossKm: 1.5, TurnDeg: 20),    // Bluestem Hill, a transmitter site
    new(43.5850, -99.1650, 52, AlongKm: 2.2, AcrossKm: 0.8, TurnDeg: 112),   // the Sheepwalk, a rise between the village and Kestrel Ridge
    new(43.5860, -99.2120, 80, AlongKm: 2.4, AcrossKm: 0.55, TurnDeg: 152),  // Alder Ridge, between the village and Bluestem Hill
    new(43.4500, -99.0500, 70, AlongKm: 6.0, AcrossKm: 1.6, TurnDeg: 100),
    new(43.7800, -99.5000, 85, AlongKm: 7.0, AcrossKm: 2.2, TurnDeg: 35),
    new(43.7000, -99.0600, 48, AlongKm: 3.5, AcrossKm: 1.1, TurnDeg: 10),
    new(43.1500, -99.6200, 55, AlongKm: 5.0, AcrossKm: 2.0, TurnDeg: 130),
]);
Make("lindmark", "N56E014", 56, 14, baseM: 117,
[
    new(56.1250, 14.6100, 72, AlongKm: 2.0, AcrossKm: 1.4, TurnDeg: 60),     // Storhammar, a transmitter site
    new(56.3900, 14.0300, -12, AlongKm: 0.5, AcrossKm: 0.4, TurnDeg: 0),     // Vika Quarry, a transmitter site at the rim of a pit
    new(56.2930, 14.2470, 38, AlongKm: 1.6, AcrossKm: 0.5, TurnDeg: 35),     // a rise between the terrace and Storhammar
    new(56.2150, 14.4200, 40, AlongKm: 3.0, AcrossKm: 0.9, TurnDeg: 40),
    new(56.4200, 14.3300, 55, AlongKm: 5.0, AcrossKm: 1.8, TurnDeg: 15),
    new(56.3000, 14.1200, 28, AlongKm: 2.0, AcrossKm: 0.7, TurnDeg: 160),
    new(56.6500, 14.5500, 60, AlongKm: 8.0, AcrossKm: 3.0, TurnDeg: 80),
]);

static void Make(string folder, string name, int south, int west, double baseM, Hill[] hills)
{
    var bytes = new byte[2 * Nodes * Nodes];
    for (var row = 0; row < Nodes; row++)
        for (var column = 0; column < Nodes; column++)
        {
            var (lat, lon) = (south + 1 - row / (Nodes - 1.0), west + column / (Nodes - 1.0));
            var height = baseM + Swell(lat, lon) + hills.Sum(h => h.HeightAt(lat, lon));
            BinaryPrimitives.WriteInt16BigEndian(bytes.AsSpan(2 * (row * Nodes + column)), (short)Math.Round(height));
        }
    var path = Path.Combine(folder, name + ".hgt.zip");
    File.Delete(path);
    using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
    var entry = zip.CreateEntry(name + ".hgt", CompressionLevel.SmallestSize);
    entry.LastWriteTime = new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);
    using var stream = entry.Open();
    stream.Write(bytes);
    Console.WriteLine($"{path} written");
}

// Rolling country: a few long waves of a few metres.
static double Swell(double lat, double lon) =>
    7 * Math.Sin(lat * 61 + lon * 23) + 5 * Math.Sin(lat * 137 - lon * 89 + 1) + 3 * Math.Sin(lat * 331 + lon * 277 + 2) + 1.5 * Math.Sin(lat * 893 - lon * 741 + 3);

internal sealed record Hill(double LatDeg, double LonDeg, double TopM, double AlongKm, double AcrossKm, double TurnDeg)
{
    // A bell, longer along its crest; the crest runs TurnDeg clockwise from north.
    public double HeightAt(double lat, double lon)
    {
        var (north, east) = ((lat - LatDeg) * 111.2, (lon - LonDeg) * 111.3 * Math.Cos(LatDeg * Math.PI / 180));
        var (sin, cos) = Math.SinCos(TurnDeg * Math.PI / 180);
        var (along, across) = (north * cos + east * sin, east * cos - north * sin);
        return TopM * Math.Exp(-0.5 * (along * along / (AlongKm * AlongKm) + across * across / (AcrossKm * AcrossKm)));
    }
}
