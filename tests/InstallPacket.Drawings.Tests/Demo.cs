using System.Collections.Concurrent;
using InstallPacket.Jobs;
using InstallPacket.Packets.Language;
using InstallPacket.Packets.Themes;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Drawings.Tests;

/// <summary>The demo jobs, planned with their tiles, and the measure of the theme's fonts.</summary>
internal static class Demo
{
    public static readonly IReadOnlyList<string> Ids = ["alder-lane", "brook-terrace", "far-meadow", "mill-yard", "pine-corner", "quay-loft"];

    private static readonly Theme Theme = Theme.FromFolder(Path.Combine(DemoJobs.Checkout, "theme"));

    private static readonly ConcurrentDictionary<Plan, Lazy<IReadOnlyDictionary<string, Drawing>>> Drawn = new(ReferenceEqualityComparer.Instance);

    private static readonly Dictionary<string, Plan> Plans = Ids.ToDictionary(id => id, Read);

    public static FontSet Fonts { get; } = new(Face("Regular"), Face("Semibold"), Face("It"), Face("Regular"));

    public static ITextMeasure Measure { get; } = new FontTextMeasure(Fonts);

    public static Plan Plan(string id) => Plans[id];

    /// <summary>A plan with the words of its language.</summary>
    public static SheetPlan On(Plan plan) => new(plan, Words(plan));

    /// <summary>All figures of a plan, drawn once.</summary>
    public static IReadOnlyDictionary<string, Drawing> Figures(Plan plan) => Drawn.GetOrAdd(plan, p => new(() => Redrawn(p))).Value;

    /// <summary>All figures of a plan, drawn anew.</summary>
    public static IReadOnlyDictionary<string, Drawing> Redrawn(Plan plan) => FigureSet.Of(plan, Words(plan), Measure);

    private static JobWords Words(Plan plan) => new(Theme.Words(plan.Job.Language), plan.Job.Units == UnitFamily.Us, plan.Job.LevelUnit);

    /// <summary>A house with an antenna for each band.</summary>
    public static Plan TwoAntennas { get; } = Read("alder-lane", InstallPacket.Tests.TwoAntennas.Joined(""));

    private static Plan Read(string id) => Read(id, DemoJobs.Load());

    private static Plan Read(string id, DemoJobs jobs)
    {
        var parts = jobs.Parts();
        var reading = new JobReader(jobs, parts).Read(id);
        var job = reading.Job ?? throw new InvalidOperationException($"{id} cannot be read");
        using var terrain = job.Siting.Terrain is { } folder ? new TerrainTiles(jobs, folder.Value) : null;
        return Planner.Plan(job, parts, terrain, reading.Findings);
    }

    private static FontFace Face(string style) =>
        new(style, File.ReadAllBytes(Path.Combine(DemoJobs.Checkout, "theme", "fonts", $"SourceSans3-{style}.ttf")));
}
