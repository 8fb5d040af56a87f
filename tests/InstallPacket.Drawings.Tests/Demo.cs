using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

/// <summary>The demo jobs, planned, and the measure of the theme's fonts.</summary>
internal static class Demo
{
    public static readonly IReadOnlyList<string> Ids = ["alder-lane", "brook-terrace", "far-meadow"];

    private static readonly string Root = FindRoot();
    private static readonly Dictionary<string, Plan> Plans = Ids.ToDictionary(id => id, Read);

    public static FontSet Fonts { get; } = new(Face("Regular"), Face("Semibold"), Face("It"), Face("Regular"));

    public static ITextMeasure Measure { get; } = new FontTextMeasure(Fonts);

    public static Plan Plan(string id) => Plans[id];

    private static Plan Read(string id)
    {
        var files = new DemoFiles(Path.Combine(Root, "jobs"));
        var findings = new FindingList();
        var parts = PartLibraryReader.Read(files, findings);
        var reading = new JobReader(files, parts).Read(id);
        return Planner.Plan(reading.Job ?? throw new InvalidOperationException($"{id} cannot be read"), parts, null, reading.Findings);
    }

    private static FontFace Face(string style) =>
        new(style, File.ReadAllBytes(Path.Combine(Root, "theme", "fonts", $"SourceSans3-{style}.ttf")));

    private static string FindRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "InstallPacket.sln"))) at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("the tests must lie below the solution");
    }

    private sealed class DemoFiles(string folder) : IJobFiles
    {
        public JobFile Read(string path, int maxBytes)
        {
            var full = Path.Combine(folder, path);
            return File.Exists(full) ? new(path, FileState.Present, File.ReadAllText(full).ReplaceLineEndings("\n")) : new(path, FileState.Absent, "");
        }

        public IReadOnlyList<string> List(string below)
        {
            var full = Path.Combine(folder, below.Length == 0 ? "." : below);
            if (!Directory.Exists(full)) return [];
            return [.. Directory.EnumerateFiles(full, "*", SearchOption.AllDirectories).Select(p => Path.GetRelativePath(folder, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];
        }
    }
}
