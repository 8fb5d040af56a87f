using System.Diagnostics;
using System.Globalization;
using System.Text;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Bench;

/// <summary>Plans a job with 60 transmitters over four 1 arc-second tiles that lie in memory, as in the page cache.</summary>
internal static class TerrainBench
{
    private const int Nodes = 3601;

    public static void Run()
    {
        var files = new Country();
        var job = new JobReader(files, files.Demo.Parts()).Read("alder-lane").Job ?? throw new InvalidOperationException("The bench job must read.");
        for (var i = 0; i < 3; i++) Once(files, job);
        var times = Enumerable.Range(0, 5).Select(_ => Once(files, job)).Order().ToArray();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"plan a job, 60 transmitters, 1 arc-second tiles",-52} {times[2].TotalMilliseconds,10:0.0} ms CPU (median of 5)"));
    }

    private static TimeSpan Once(Country files, Job job)
    {
        var before = Process.GetCurrentProcess().TotalProcessorTime;
        using var tiles = new TerrainTiles(files, "_shared/terrain/tamarack");
        var plan = Planner.Plan(job, files.Demo.Parts(), tiles, []);
        if (plan.Reception.Stations.Count(s => s.Budget?.PlannedBy == "itm") < 50) throw new InvalidOperationException("The stations must be judged over the tiles.");
        return Process.GetCurrentProcess().TotalProcessorTime - before;
    }

    /// <summary>The demo job in a country with sixty stations and four fine tiles.</summary>
    private sealed class Country : IJobFiles
    {
        private readonly Dictionary<string, byte[]> _tiles = new(StringComparer.Ordinal);
        private readonly string _stations = Stations();

        public Country()
        {
            foreach (var (lat, lon) in new[] { (43, -100), (43, -99), (44, -100), (44, -99) })
                _tiles[$"_shared/terrain/tamarack/N{lat}W{-lon:000}.hgt"] = Tile(lat, lon);
        }

        public DemoJobs Demo { get; } = DemoJobs.Load();

        public JobFile Read(string path, int maxBytes) =>
            path == "_shared/stations/tamarack.csv" ? new(path, FileState.Present, _stations) : Demo.Read(path, maxBytes);

        public IReadOnlyList<string> List(string folder) => folder == "_shared/terrain/tamarack" ? [.. _tiles.Keys.Order(StringComparer.Ordinal)] : Demo.List(folder);

        public Stream? Open(string path) => _tiles.TryGetValue(path, out var bytes) ? new MemoryStream(bytes, false) : null;

        private static byte[] Tile(int south, int west)
        {
            var bytes = new byte[2 * Nodes * Nodes];
            for (var row = 0; row < Nodes; row++)
                for (var column = 0; column < Nodes; column++)
                {
                    var (lat, lon) = (south + 1 - row / (Nodes - 1.0), west + column / (Nodes - 1.0));
                    var height = (int)(500 + 40 * Math.Sin(lat * 61 + lon * 23) + 20 * Math.Sin(lat * 331 - lon * 277));
                    (bytes[2 * (row * Nodes + column)], bytes[2 * (row * Nodes + column) + 1]) = ((byte)(height >> 8), (byte)height);
                }
            return bytes;
        }

        private static string Stations()
        {
            var text = new StringBuilder(DemoJobs.Load().Read("_shared/stations/tamarack.csv", 1 << 20).Text.TrimEnd('\n')).Append('\n');
            for (var i = 0; i < 53; i++)
            {
                var (angle, far) = (i * 0.61, 0.2 + i % 9 * 0.07);
                text.Append(CultureInfo.InvariantCulture, $"x-{i},Extra {i},Site {i},ATSC 1.0,us-6,{14 + i % 23},,{43.62 + far * Math.Cos(angle):0.0000},{Math.Clamp(-99.14 + far * 1.3 * Math.Sin(angle), -99.99, -98.01):0.0000},50,200,800,horizontal\n");
            }
            return text.ToString();
        }
    }
}
