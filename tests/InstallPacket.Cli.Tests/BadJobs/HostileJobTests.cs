using System.Text.RegularExpressions;
using CsCheck;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>Whatever reads as a job can be planned: a plan with findings, never a fault.</summary>
public partial class HostileJobTests
{
    private static readonly string[] Ids = ["alder-lane", "brook-terrace", "far-meadow"];
    private static readonly FolderJobFiles Files = new(Repository.Path("jobs"), "");
    private static readonly IReadOnlyList<string> Stations = Files.List("_shared/stations");
    private static readonly PartLibrary Parts = PartLibraryReader.Read(Files, new FindingList());

    [Fact]
    public void Demo_jobs_with_other_numbers_are_planned()
    {
        var change = Gen.Select(Gen.Int[0, 1_000_000], Gen.OneOf("0", "1", "0.05", "2", "7", "12", "19", "45", "89.99", "90", "179.9", "180", "360", "400", "5000"));
        Gen.Select(Gen.OneOf(Ids), change.Array[1, 5]).Sample((id, changes) =>
        {
            var text = Text(id);
            foreach (var (at, number) in changes) text = WithNumber(text, at, number);
            return IsPlannedOrRefused(text);
        }, iter: 80);
    }

    [Fact]
    public void Demo_jobs_with_lines_left_out_or_words_exchanged_are_planned()
    {
        var change = Gen.Select(Gen.Bool, Gen.Int[0, 1_000_000], Gen.Int[0, 1_000_000]);
        Gen.Select(Gen.OneOf(Ids), change.Array[1, 3]).Sample((id, changes) =>
        {
            var text = Text(id);
            foreach (var (line, a, b) in changes) text = line ? WithoutLine(text, a) : WithWord(text, a, b);
            return IsPlannedOrRefused(text);
        }, iter: 80);
    }

    [Fact]
    public void Parts_with_other_numbers_are_planned()
    {
        var job = File.ReadAllText(Repository.Path("tests", "BadJobs", "_base", "house", "job.yaml"));
        var stations = File.ReadAllText(Repository.Path("tests", "BadJobs", "_base", "house", "stations.csv"));
        var parts = File.ReadAllText(Repository.Path("tests", "BadJobs", "_base", "_shared", "parts", "base.yaml"));
        var change = Gen.Select(Gen.Int[0, 1_000_000], Gen.OneOf("0", "0.001", "1", "2", "15", "60", "179", "300", "500", "800", "5000", "-20", "-100"));
        change.Array[1, 6].Sample(changes =>
        {
            var text = parts;
            foreach (var (at, number) in changes) text = WithNumber(text, at, number);
            var files = new FewFiles(("job/job.yaml", job), ("job/stations.csv", stations), ("_shared/parts/base.yaml", text));
            var findings = new FindingList();
            return IsPlannedOrRefused(files, PartLibraryReader.Read(files, findings)) || findings.AnyStop;
        }, iter: 50);
    }

    private static string Text(string id) => File.ReadAllText(Path.Combine(DemoJobs.WrittenOut, id, "job.yaml"));

    private static bool IsPlannedOrRefused(string text) =>
        IsPlannedOrRefused(new FewFiles([("job/job.yaml", text), .. Stations.Select(s => (s, Files.Read(s, int.MaxValue).Text))]), Parts);

    private static bool IsPlannedOrRefused(IJobFiles files, PartLibrary parts)
    {
        var reading = new JobReader(files, parts).Read("job");
        if (reading.Job is null) return reading.Findings.Any(f => f.Severity == Severity.Stop);
        var plan = Planner.Plan(reading.Job, parts, null, reading.Findings);
        var numbers = plan.Cabling.Outlets.SelectMany(o => o.Channels).SelectMany(c => new[] { c.LevelDbm, c.MarginDb });
        return numbers.All(double.IsFinite) && PlanJson.Text(PlanJson.Tree(plan)).Length > 0;
    }

    private static string WithNumber(string text, int at, string number)
    {
        var all = Number().Matches(text);
        var one = all[at % all.Count];
        return string.Concat(text.AsSpan(0, one.Index), number, text.AsSpan(one.Index + one.Length));
    }

    private static string WithoutLine(string text, int at)
    {
        var lines = text.Split('\n').ToList();
        lines.RemoveAt(at % lines.Count);
        return string.Join('\n', lines);
    }

    private static string WithWord(string text, int at, int other)
    {
        var all = Word().Matches(text);
        var one = all[at % all.Count];
        return string.Concat(text.AsSpan(0, one.Index), all[other % all.Count].Value, text.AsSpan(one.Index + one.Length));
    }

    [GeneratedRegex(@"(?<=[\s\[])\d+(\.\d+)?(?= )")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=: |, |\[)[A-Za-z][A-Za-z0-9.-]+(?=[\],\n ])")]
    private static partial Regex Word();

    private sealed class FewFiles(params (string Path, string Text)[] all) : IJobFiles
    {
        public JobFile Read(string path, int maxBytes) => all.FirstOrDefault(f => f.Path == path) is { Path: not null } found
            ? new(path, FileState.Present, found.Text.ReplaceLineEndings("\n")) : new(path, FileState.Absent, "");

        public IReadOnlyList<string> List(string folder) => [.. all.Select(f => f.Path).Where(p => p.StartsWith(folder + "/", StringComparison.Ordinal))];
    }
}
