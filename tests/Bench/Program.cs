using System.Diagnostics;
using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Bench;
using InstallPacket.Calc.Siting;
using InstallPacket.Packets;
using InstallPacket.Plans;
using InstallPacket.Tests;

if (args is ["fuzz", .. var rest]) return FuzzBench.Run(rest);

// Measurements of the main stations. They are printed, never asserted: a busy machine must not fail a build.
var jobs = DemoJobs.Load();
var parts = jobs.Parts();
var theme = Theme.FromFolder(Path.Combine(DemoJobs.Checkout, "theme"));
var builder = new PacketBuilder(theme);
var job = jobs.Job("alder-lane");
using var tiles = new TerrainTiles(jobs, job.Siting.Terrain!.Value.Value);
var plan = Planner.Plan(job, parts, tiles, []);

Measure("geodesic inverse", 20_000, () => Geodesic.Inverse(43.62, -99.14, 43.2943, -99.378));
Measure("magnetic declination", 5_000, () => MagneticModel.At(43.62, -99.14, 0.5, 2026.4));
P1812Bench.Run(Measure);
TerrainBench.Run();
Measure("read a job", 300, () => new JobReader(jobs, parts).Read("alder-lane"));
Measure("plan a job (7 stations, 4 outlets, no terrain)", 300, () => Planner.Plan(job, parts, null, []));
Measure("plan a job (7 stations, 4 outlets, 3 arc-second tiles)", 100, () => Planner.Plan(job, parts, tiles, []));
Measure("build all files of a packet", 30, () => builder.Build(plan));
var words = new InstallPacket.Packets.Language.JobWords(theme.Words(plan.Job.Language), plan.Job.Units == UnitFamily.Us, plan.Job.LevelUnit);
var figures = InstallPacket.Drawings.FigureSet.Of(plan, words, new FontTextMeasure(theme.Fonts));
var files = builder.Build(plan).ToDictionary(f => f.Path, f => f.Bytes);
PacketDocument Document(string name) => new(name, name, System.Text.Encoding.UTF8.GetString(files[name + ".md"]), figures, null, "", words);
Measure("figures of a plan", 30, () => InstallPacket.Drawings.FigureSet.Of(plan, words, new FontTextMeasure(theme.Fonts)));
Measure("PNG of one figure", 30, () => PngPainter.Paint(figures["aim-card"], theme.Fonts, 160));
Measure("PDF of the crew document", 30, () => PdfDocumentWriter.Write(Document("crew"), theme, PageFormat.Letter));
Measure("HTML of the crew document", 30, () => HtmlDocumentWriter.Write(Document("crew"), theme));
Measure("HTML of the workings", 30, () => HtmlDocumentWriter.Write(Document("workings"), theme));
Measure("plan.json", 30, () => PlanJson.Text(PlanJson.Tree(plan)));
Terrain(501);
Terrain(1001);
MeasureParallel("read, plan and build, all cores", 60, () => builder.Build(Planner.Plan(jobs.Job("alder-lane"), parts, null, [])));
return 0;

// Four channels in turn over one rolling path of 100 km, all stages in every call, so that the figure compares with the published program's.
static void Terrain(int points)
{
    var ground = Enumerable.Range(0, points).Select(i => (double)i / (points - 1))
        .Select(t => 300 + 80 * Math.Sin(6 * Math.PI * t + 0.4) + 40 * Math.Sin(22 * Math.PI * t + 1.1) + 15 * Math.Sin(90 * Math.PI * t + 2.3));
    var profile = new TerrainProfile([.. ground], 100e3 / (points - 1));
    ItmSettings[] channels = [.. ((double[])[69, 195, 473, 605]).Select(ItmSettings.Television)];
    var air = ItmAir.AtSeaLevel(301);
    var path = ItmPath.Of(profile, 150, 10, air);
    double sum = 0;
    void All(int i) => sum += IrregularTerrain.Loss(ItmPath.Of(profile, 150 + i % 32, 10, air), channels[i % 4], 90, 50, 50).BasicLossDb;
    void Channel(int i) => sum += IrregularTerrain.Loss(path, channels[i % 4], 90, 50, 50).BasicLossDb;
    Rate($"terrain model, {points} points, all stages", All);
    Rate($"terrain model, {points} points, per channel", Channel);
    if (!double.IsFinite(sum)) throw new InvalidOperationException("The path must have a loss.");
}

static void Rate(string what, Action<int> run)
{
    const int Times = 100_000;
    for (var i = 0; i < Times; i++) run(i);
    // The tiered compiler works in the background; the median of five runs is past it.
    var rates = new double[5];
    var bytes = GC.GetAllocatedBytesForCurrentThread();
    for (var round = 0; round < rates.Length; round++)
    {
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < Times; i++) run(i);
        rates[round] = Times / watch.Elapsed.TotalSeconds;
    }
    bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
    Array.Sort(rates);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-45} {rates[2],10:0} a second, {bytes / (5.0 * Times),6:0.0} bytes each"));
}

static void Measure(string what, int times, Func<object?> run)
{
    for (var i = 0; i < Math.Max(3, times / 10); i++) run();
    var cpu = Process.GetCurrentProcess().TotalProcessorTime;
    var watch = Stopwatch.StartNew();
    for (var i = 0; i < times; i++) run();
    Print(what, times, watch.Elapsed, Process.GetCurrentProcess().TotalProcessorTime - cpu);
}

static void MeasureParallel(string what, int times, Func<object?> run)
{
    run();
    var cpu = Process.GetCurrentProcess().TotalProcessorTime;
    var watch = Stopwatch.StartNew();
    Parallel.For(0, times, _ => run());
    Print(what, times, watch.Elapsed, Process.GetCurrentProcess().TotalProcessorTime - cpu);
}

static void Print(string what, int times, TimeSpan wall, TimeSpan cpu) => Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture, $"{what,-40} {wall.TotalMilliseconds / times,10:0.0000} ms each, {cpu.TotalMilliseconds / times,10:0.0000} ms CPU, {times / wall.TotalSeconds,10:0} a second"));
